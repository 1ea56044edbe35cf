"""Reads the samples of a run once, then analyses it for every line of its input: prints the seconds of processor and of
wall time and the largest memory; for the line "numbers" it writes what it found."""
import json
import resource
import sys
import time

import numpy as np
import scipy
from scipy import signal, stats

import analyse_trial as one
from landing import landing

BY_WEIGHT = "N,N s,N/s,N m,N m s".split(",")


def analyse(x, meta):
    fs, speed, threshold = meta["sampleRate"], meta["speed"], meta["threshold"]
    sos = signal.butter(2, one_way(50, fs), fs=fs, output="sos")
    y = signal.sosfiltfilt(sos, x)
    forward, up, right = y[:3]
    start, end = one.contacts_of(up, fs, threshold, threshold / 2)
    n = start.size
    side = np.where(np.arange(n) % 2 == 0, 1, -1) * (1 if meta["firstFoot"] == "right" else -1)
    spans = one.Spans(fs, start, end)
    step = np.append(np.diff(start), np.nan)
    stride = np.append(start[2:] - start[:-2], [np.nan, np.nan])
    strides = one.Spans(fs, start[:1], start[(n - 1) // 2 * 2 : (n - 1) // 2 * 2 + 1])
    support = strides.integral(up)[0]
    mass = support / (strides.end - strides.start)[0] / one.G
    balance = strides.integral(forward)[0] / support
    time_ = end - start
    v = {"contactTime": time_, "stepTime": step, "strideTime": stride, "cadence": 60 / step}
    v["aerialTime"] = np.append(start[1:] - end[:-1], np.nan)
    v["dutyFactor"] = time_ / stride

    turn = np.flatnonzero((forward[:-1] < 0) & (forward[1:] > 0))
    turn = (turn + forward[turn] / (forward[turn] - forward[turn + 1])) / fs
    last = turn[np.searchsorted(turn, end) - 1]
    v["brakingTime"] = np.where(last > start, last - start, np.nan)
    v["propulsiveTime"] = time_ - v["brakingTime"]

    v["peakVerticalForce"] = spans.max(up)
    v["verticalImpulse"] = spans.integral(up)
    v["meanVerticalForce"] = v["verticalImpulse"] / time_
    v["halfSineFit"] = one.half_sine(up, spans, v["verticalImpulse"])
    peak = one.impact_peaks(up, fs, start, end, 0.02 * mass * one.G)
    has = peak >= 0
    v["impactPeak"] = np.where(has, up[peak], np.nan)
    rise = np.where(has, peak / fs - start, 0.01)
    v["timeToImpactPeak"] = np.where(has, rise, np.nan)
    mean = lambda p, q: (one.at(up, q * fs) - one.at(up, p * fs)) / (q - p)
    v["averageLoadingRate"] = np.where(has, mean(start + 0.2 * rise, start + 0.8 * rise), np.nan)
    v["earlyLoadingRate"] = mean(start + 0.03 * time_, start + 0.12 * time_)
    fast = one.slope(up, fs, start + 0.2 * rise, start + 0.8 * rise, 1)
    v["instantaneousLoadingRate"] = np.where(has, fast, np.nan)

    pushed, braked = spans.parts(forward)
    v["brakingImpulse"], v["propulsiveImpulse"], v["netForwardImpulse"] = -braked, pushed, pushed + braked
    v["peakBrakingForce"] = np.maximum(spans.max(-forward), 0)
    v["peakPropulsiveForce"] = np.maximum(spans.max(forward), 0)
    low = one.braking_minima(forward, fs, spans, v["peakBrakingForce"])
    braking = np.where(low >= 0, low / fs - start, 0.01)
    steep = one.slope(forward, fs, start + 0.2 * braking, start + 0.8 * braking, -1)
    v["brakingLoadingRate"] = np.where(low >= 0, steep, np.nan)

    rightward, leftward = spans.parts(right)
    v["mediolateralImpulse"] = rightward - leftward
    v["medialImpulse"] = np.where(side > 0, -leftward, rightward)
    v["lateralImpulse"] = np.where(side > 0, rightward, -leftward)
    most_right, most_left = np.maximum(spans.max(right), 0), np.maximum(spans.max(-right), 0)
    v["peakMedialForce"] = np.where(side > 0, most_left, most_right)
    v["peakLateralForce"] = np.where(side > 0, most_right, most_left)

    v["peakResultantForce"] = np.sqrt(spans.max(forward**2 + up**2 + right**2))
    v["peakFreeMoment"], v["freeMomentImpulse"] = one.free_moment(y, x[1], spans, fs)
    v["touchdownDistance"], v["takeOffDistance"] = landing(
        x[0], x[1], x[5], fs, start, end, threshold, speed, 0.55 * meta["height"], balance
    )
    v["stepLength"], v["strideLength"] = speed * step, speed * stride
    middle = one.Spans(fs, start + 0.25 * time_, start + 0.75 * time_)
    cop = -middle.sum(y[3]) / middle.sum(up)
    v["stepWidth"] = np.append(-side[:-1] * np.diff(cop), np.nan)

    moved = one.motion_metrics(forward, up, right, fs, mass, speed, start, end)
    drop, push = moved.pop("drop"), moved.pop("push")
    v.update(moved)
    force = np.maximum(v["peakVerticalForce"], threshold)
    leg, half = 0.53 * meta["height"], speed * time_ / 2
    v["verticalStiffness"], v["elasticEnergy"] = force / drop, force * drop / 2
    v["legStiffness"] = force / (leg - np.sqrt(leg * leg - half * half) + drop)
    v["pushToBrakeTimeRatio"] = push / (time_ - push)
    return {
        "start": start, "end": end, "side": side, "values": v,
        "summary": {name: summary(name, v, side, meta) for name in meta["metrics"]},
        "curves": {d: curves(c, spans, side) for d, c in zip(("forward", "up", "right"), y)},
    }


def one_way(cutoff, fs):
    """Cutoff of one of two passes, so that both together are at −3 dB where one asks."""
    return fs / np.pi * np.arctan(np.tan(np.pi * cutoff / fs) / (np.sqrt(2) - 1) ** 0.25)


def spread(x):
    x = x[~np.isnan(x)]
    mean, sd = x.mean(), x.std(ddof=1)
    d = x - mean
    r = max(0.0, (d[:-1] * d[1:]).sum() / (d * d).sum())
    n = x.size * (1 - r) / (1 + r)
    reach = stats.t.ppf(0.975, n - 1) * sd / np.sqrt(n)
    return [mean, sd, mean - reach, mean + reach]


def summary(name, v, side, meta):
    pairs = v[name].size // 2 * 2
    stride = v[name][:pairs].reshape(-1, 2).mean(axis=1)
    unit, mass = meta["metrics"][name], meta["mass"]
    divisor = mass * one.G if unit in BY_WEIGHT else mass
    if unit == "J" and name != "elasticEnergy":
        divisor = mass * meta["speed"] * v["stepTime"][:pairs].reshape(-1, 2).mean(axis=1)
    return [spread(part) for part in (stride, stride / divisor, v[name][side < 0], v[name][side > 0])]


def curves(x, spans, side):
    share = np.arange(101) / 100
    force = one.at(x, spans.a[:, None] + share * (spans.b - spans.a)[:, None])
    return [[force[side == s].mean(axis=0), force[side == s].std(axis=0, ddof=1)] for s in (-1, 1)]


def main(folder):
    with open(f"{folder}/run.json") as file:
        meta = json.load(file)
    x = np.fromfile(f"{folder}/samples.f64").reshape(6, -1)
    versions = dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__)
    print(json.dumps(versions), flush=True)
    for line in sys.stdin:
        processor, wall = time.process_time(), time.perf_counter()
        found = analyse(x, meta)
        taken = [time.process_time() - processor, time.perf_counter() - wall]
        if line.strip() == "numbers":
            plain = lambda value: value.tolist() if isinstance(value, np.ndarray) else float(value)
            with open(f"{folder}/numpy.json", "w") as file:
                json.dump(found, file, default=plain)
        memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024
        print(json.dumps(dict(processor=taken[0], wall=taken[1], memory=memory)), flush=True)


main(sys.argv[1])
