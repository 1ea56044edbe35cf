"""An equal of analyseTrial for a run on a belt, in NumPy and SciPy: contacts, every metric of every step, means with
intervals, both sides, mean curves. Whole arrays at a time: what a contact has is summed by reduceat, what a stride has is
worked out on matrices of 512 strides. Force alone is taken on trust; what analyseTrial checks beside is not done here."""
import numpy as np
from scipy import signal, stats

G = 9.80665
CHUNK = 512


class Spans:
    """Stretches between two times, with the samples that lie within."""

    def __init__(self, fs, start, end):
        self.fs, self.start, self.end = fs, start, end
        self.a, self.b = start * fs, end * fs
        self.i, self.j = np.ceil(self.a).astype(np.int64), np.floor(self.b).astype(np.int64)
        self.edges = np.column_stack((self.i, self.j + 1)).ravel()

    def sum(self, x):
        return np.add.reduceat(x, self.edges)[::2]

    def max(self, x):
        return np.maximum.reduceat(x, self.edges)[::2]

    def inner(self, areas):
        """Sum of what lies between successive samples of the stretch; `areas` has one number a pair."""
        return np.add.reduceat(areas, np.column_stack((self.i, self.j)).ravel())[::2]

    def ends(self, x, mean):
        first, last = at(x, self.a), at(x, self.b)
        return (self.i - self.a) * mean(first, x[self.i]) + (self.b - self.j) * mean(x[self.j], last)

    def integral(self, x):
        inner = self.sum(x) - (x[self.i] + x[self.j]) / 2
        return (inner + self.ends(x, lambda p, q: (p + q) / 2)) / self.fs

    def parts(self, x):
        """Integrals of what lies above and below 0, on the straight lines between samples."""
        positive = (self.inner(above_zero(x[:-1], x[1:])) + self.ends(x, above_zero)) / self.fs
        return positive, self.integral(x) - positive


def at(x, place):
    before = place.astype(np.int64)
    return x[before] + (place - before) * (x[np.minimum(before + 1, x.size - 1)] - x[before])


def above_zero(p, q):
    """Mean over a straight line from p to q of what lies above 0."""
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = np.maximum(p, q) ** 2 / (2 * np.abs(p - q))
    return np.where(p * q >= 0, np.maximum((p + q) / 2, 0), crossing)


def contacts_of(up, fs, threshold, fall_level):
    above = up >= threshold
    change = np.flatnonzero(above[1:] != above[:-1])
    times = (change + (threshold - up[change]) / (up[change + 1] - up[change])) / fs
    rises = ~above[change]
    rise, fall = times[rises], times[~rises]
    gap_from = change[~rises] + 1
    if above[0]:
        fall, gap_from = fall[1:], gap_from[1:]
    if above[-1]:
        rise = rise[:-1]
    low = np.minimum.reduceat(up, gap_from)[: rise.size - 1]
    closed = (rise[1:] - fall[:-1] >= 0.03) & (low < fall_level)
    start = rise[np.concatenate(([True], closed))]
    end = fall[np.concatenate((closed, [True]))]
    long = end - start >= 0.08
    return start[long], end[long]


def slope(x, fs, start, end, sign):
    i = np.ceil(start * fs - 1e-6).astype(np.int64)
    j = np.floor(end * fs + 1e-6).astype(np.int64)
    inside = np.maximum.reduceat(sign * np.diff(x), np.column_stack((i, np.maximum(j, i + 1))).ravel())[::2] * fs
    whole = sign * (at(x, end * fs) - at(x, start * fs)) / (end - start)
    return np.where(j <= i, whole, inside)


def impact_peaks(up, fs, start, end, needed):
    """First local maximum in the window that drops by `needed` before the force exceeds it; −1 where there is none."""
    rising = up[1:] > up[:-1]
    earliest = np.maximum(1, np.floor((start + 0.005) * fs).astype(np.int64) + 1)
    latest = (start + 0.35 * (end - start)) * fs
    candidate = np.flatnonzero(rising[:-1] & ~(up[2:] > up[1:-1])) + 1
    owner = np.searchsorted(earliest, candidate, side="right") - 1
    keep = (owner >= 0) & (candidate < latest[np.maximum(owner, 0)])
    candidate, owner = candidate[keep], owner[keep]
    last = np.floor(end * fs).astype(np.int64)[owner]
    ahead = candidate[:, None] + np.arange(1, int((last - candidate).max()) + 1)
    force = up[np.minimum(ahead, up.size - 1)]
    peak = up[candidate][:, None]
    over = (force > peak) | (ahead > last[:, None])
    force[np.maximum.accumulate(over, axis=1)] = np.inf
    passes = up[candidate] - force.min(axis=1) >= needed
    found = np.full(start.size, -1)
    contacts, first = np.unique(owner[passes], return_index=True)
    found[contacts] = candidate[passes][first]
    return found


def braking_minima(forward, fs, spans, peak):
    low = np.flatnonzero((forward[1:-1] < forward[:-2]) & (forward[2:] > forward[1:-1])) + 1
    owner = np.searchsorted(spans.i, low, side="right") - 1
    keep = (owner >= 0) & (low <= spans.j[np.maximum(owner, 0)])
    low, owner = low[keep], owner[keep]
    deep = forward[low] <= -0.5 * peak[owner]
    found = np.full(spans.i.size, -1)
    contacts, first = np.unique(owner[deep], return_index=True)
    found[contacts] = low[deep][first]
    return found


class Knots:
    """The samples of stretches with their ends, one row a stretch; behind its end a row stays where it is."""

    def __init__(self, fs, a, b):
        length = int(np.ceil(b - a).max()) + 1
        first = np.floor(a).astype(np.int64)[:, None] + 1
        self.places = np.concatenate((a[:, None], np.minimum(first + np.arange(length), b[:, None])), axis=1)
        self.h = np.diff(self.places, axis=1) / fs
        self.before = self.places.astype(np.int64)
        self.part = self.places - self.before

    def read(self, x):
        here = x[self.before]
        return here + self.part * (x[self.before + 1] - here)


def begin(knots, force, mass, mean_velocity):
    """Mean force over the stretch, and the velocity at its start that makes the mean velocity what is stated."""
    h = knots.h
    impulse = np.cumsum(h * (force[:, :-1] + force[:, 1:]) / 2, axis=1)
    earlier = np.concatenate((np.zeros((h.shape[0], 1)), impulse[:, :-1]), axis=1)
    way = (h * (earlier + h * (2 * force[:, :-1] + force[:, 1:]) / 6)).sum(axis=1)
    total = h.sum(axis=1)
    mean = impulse[:, -1] / total
    return mean, mean_velocity - (way - mean * total * total / 2) / (mass * total)


def move(knots, force, mass, mean, velocity):
    h = knots.h
    a = (force - mean[:, None]) / mass
    v = np.empty_like(a)
    v[:, 0] = velocity
    np.cumsum(h * (a[:, :-1] + a[:, 1:]) / 2, axis=1, out=v[:, 1:])
    v[:, 1:] += velocity[:, None]
    p = np.zeros_like(a)
    np.cumsum(h * (v[:, :-1] + h * (2 * a[:, :-1] + a[:, 1:]) / 6), axis=1, out=p[:, 1:])
    return a, v, p


def rises(energy):
    return np.maximum(np.diff(energy, axis=1), 0).sum(axis=1)


def motion_metrics(forward, up, right, fs, mass, speed, start, end):
    n = start.size
    names = (
        "verticalOscillation mediolateralExcursion positiveWorkVertical positiveWorkForward positiveWorkLateral "
        "positiveExternalWork drop push"
    ).split()
    out = {name: np.full(n, np.nan) for name in names}
    for k in range(0, n - 2, CHUNK):
        s = slice(k, min(k + CHUNK, n - 2))
        a, to = start[s] * fs, end[s] * fs
        following, stride = start[s.start + 1 : s.stop + 1] * fs, start[s.start + 2 : s.stop + 2] * fs
        whole = Knots(fs, a, stride)
        begins = [begin(whole, whole.read(x), mass, v) for x, v in ((forward, speed), (up, 0.0), (right, 0.0))]
        sideways = move(whole, whole.read(right), mass, *begins[2])[2]
        out["mediolateralExcursion"][s] = sideways.max(axis=1) - sideways.min(axis=1)
        step = Knots(fs, a, following)
        (_, vf, _), (_, vu, pu), (_, vr, _) = (
            move(step, step.read(x), mass, *b) for x, b in zip((forward, up, right), begins)
        )
        out["verticalOscillation"][s] = pu.max(axis=1) - pu.min(axis=1)
        vertical = mass * (vu * vu / 2 + G * pu)
        along = mass * (vf * vf / 2)
        out["positiveWorkVertical"][s] = rises(vertical)
        out["positiveWorkForward"][s] = rises(along)
        out["positiveWorkLateral"][s] = rises(mass * (vr * vr / 2))
        out["positiveExternalWork"][s] = rises(along + vertical)
        contact = Knots(fs, a, to)
        (af, vf, _), (au, vu, pu) = (
            move(contact, contact.read(x), mass, *b) for x, b in zip((forward, up), begins)
        )
        rate = af * vf + (au + G) * vu
        p, q = rate[:, :-1], rate[:, 1:]
        with np.errstate(divide="ignore", invalid="ignore"):
            share = np.where((p > 0) == (q > 0), (p > 0) * 1.0, np.maximum(p, q) / np.abs(p - q))
        out["push"][s] = (contact.h * share).sum(axis=1)
        out["drop"][s] = -pu.min(axis=1)
    return out


def free_moment(y, load, spans, fs):
    forward, up, right, about_forward, about_up, about_right = y
    valid = (up >= 40) & (load >= 40)
    with np.errstate(divide="ignore", invalid="ignore"):
        moment = np.where(valid, about_up + (about_forward * forward + about_right * right) / up, 0.0)
    p, q = moment[:-1], moment[1:]
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = (p * p + q * q) / (2 * np.abs(p - q))
    areas = np.where(p * q >= 0, np.abs(p + q) / 2, crossing)
    areas[~(valid[:-1] & valid[1:])] = 0
    return spans.max(np.abs(moment)), spans.inner(areas) / fs


def half_sine(up, spans, impulse):
    lengths = spans.j - spans.i + 1
    offsets = np.concatenate(([0], np.cumsum(lengths)[:-1]))
    flat = np.arange(lengths.sum()) + np.repeat(spans.i - offsets, lengths)
    force = up[flat]
    duration = spans.end - spans.start
    peak = np.pi / 2 * impulse / duration
    phase = (flat / spans.fs - np.repeat(spans.start, lengths)) * np.repeat(np.pi / duration, lengths)
    mean = np.add.reduceat(force, offsets) / lengths
    missed = np.add.reduceat((force - np.repeat(peak, lengths) * np.sin(phase)) ** 2, offsets)
    return 1 - missed / np.add.reduceat((force - np.repeat(mean, lengths)) ** 2, offsets)
