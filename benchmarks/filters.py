"""SciPy's side of the filter benchmark: reads the samples once, then runs one case a line and prints the seconds of
processor time it took, so that what else runs on the machine does not count."""
import json
import sys
import time

import numpy as np
import scipy
from scipy import signal

six = np.fromfile(sys.argv[1]).reshape(6, -1)
one = six[0]
columns = np.ascontiguousarray(six.T)
sixty = np.ascontiguousarray(six[:, :100_000].reshape(60, 10_000))
short = np.ascontiguousarray(one[:3_000_000].reshape(10_000, 300))
sos = signal.butter(2, 62.0228, fs=1000, output="sos")

cases = {
    "one": lambda: signal.sosfiltfilt(sos, one),
    "six": lambda: signal.sosfiltfilt(sos, six),
    "columns": lambda: signal.sosfiltfilt(sos, columns, axis=0),
    "sixty": lambda: signal.sosfiltfilt(sos, sixty),
    "short": lambda: signal.sosfiltfilt(sos, short),
    "calls": lambda: [signal.sosfiltfilt(sos, row) for row in short],
    "design": lambda: [signal.butter(4, 20 + k % 100, fs=1000, output="sos") for k in range(1000)],
    "welch": lambda: signal.welch(one, 1000, nperseg=1024),
    "welch1000": lambda: signal.welch(one, 1000, nperseg=1000),
    "derivative": lambda: np.gradient(one, 0.001, edge_order=2),
    "resample": lambda: signal.resample_poly(one, 6, 25, padtype="antireflect"),
    "copy": lambda: six.copy(),
}

print(json.dumps(dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__)), flush=True)
for line in sys.stdin:
    start = time.process_time()
    cases[line.strip()]()
    print(time.process_time() - start, flush=True)
