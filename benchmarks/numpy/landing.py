"""Touchdown and take-off distance on a belt by the balance of angular momentum over a stride, on the unfiltered force."""
import numpy as np

CHUNK = 512
G = 9.80665
FOOT_LEVEL = 250.0


def touches(up, fs, start, end, threshold):
    """Times at which the force leaves zero, reaches the foot level, falls below it and is back at zero."""
    middle = threshold + (FOOT_LEVEL - threshold) / 3
    loaded = np.flatnonzero(up >= FOOT_LEVEL)
    from_, to = np.floor((start - 0.02) * fs), np.ceil((end + 0.02) * fs)
    rise = loaded[np.searchsorted(loaded, from_)]
    fall = loaded[np.searchsorted(loaded, to, side="right") - 1]
    rising, falling = [], []
    for level in (threshold, middle, FOOT_LEVEL):
        below = np.flatnonzero(up < level)
        out = below[np.searchsorted(below, rise) - 1]
        rising.append((out + 1 - (up[out + 1] - level) / (up[out + 1] - up[out])) / fs)
        out = below[np.searchsorted(below, fall)]
        falling.append((out - 1 + (up[out - 1] - level) / (up[out - 1] - up[out])) / fs)
    return zero(*rising, threshold, middle), rising[2], falling[2], zero(*falling, threshold, middle)


def zero(low, between, high, threshold, middle):
    span = high - low
    straight = low - span * threshold / (FOOT_LEVEL - threshold)
    a, b, c = np.sqrt([threshold, middle, FOOT_LEVEL])
    bent = low - span * a / (c - a)
    line, parabola = (middle - threshold) / (FOOT_LEVEL - threshold), (b - a) / (c - a)
    weight = np.clip(((between - low) / span - line) / (parabola - line), 0, 1)
    return straight + weight * (bent - straight)


def place_at(up, moment, fs, time, since, belt):
    before = np.floor(time * fs).astype(np.int64)
    part = time * fs - before
    here, there = (1 - part) * up[before], part * up[before + 1]
    turning = (1 - part) * moment[before] + part * moment[before + 1]
    return turning / (here + there) + belt * ((before + there / (here + there)) / fs - since)


def landing(forward, up, moment, fs, start, end, threshold, speed, height, balance):
    """Both distances, NaN for the last two contacts."""
    n = start.size
    first, loaded, unloading, last = touches(up, fs, start, end, threshold)
    begin, lifted = np.ceil(first * fs).astype(np.int64), np.ceil(last * fs).astype(np.int64)
    touchdown, take_off = np.full(n, np.nan), np.full(n, np.nan)
    for k in range(0, n - 2, CHUNK):
        s, t = slice(k, min(k + CHUNK, n - 2)), slice(k + 2, min(k + CHUNK, n - 2) + 2)
        place, velocity, later = law(
            forward, up, moment, fs, begin[s], lifted[s], begin[t], lifted[t],
            first[t] - first[s], last[s] * fs, height, balance,
        )
        body_first = place - velocity * (begin[s] / fs - first[s])
        landed = place_at(up, moment, fs, loaded[s], first[s], speed)
        left = place_at(up, moment, fs, unloading[s], first[s], speed)
        touchdown[s] = landed - body_first
        take_off[s] = later + speed * (last[s] - first[s]) - left
    return touchdown, take_off


def law(forward, up, moment, fs, start, lifted, following, end, duration, read_at, height, balance):
    h = 1 / fs
    rows = np.arange(start.size)
    columns = np.arange(int((end - start).max()) + 1)
    index = np.minimum(start[:, None] + columns, end[:, None])
    inside = start[:, None] + columns <= end[:, None]
    force = np.where(inside, up[index], 0.0)
    push = np.where(inside, forward[index], 0.0) - balance * force
    turning = np.where(inside, moment[index], 0.0)
    lift, next_, stop = lifted - start, following - start, end - start
    mean_up = np.where(columns < next_[:, None], force, 0.0).sum(axis=1) / (fs * duration)
    mass = (mean_up / G)[:, None]

    def twice(a):
        v, p = np.zeros_like(a), np.zeros_like(a)
        np.cumsum(h * (a[:, :-1] + a[:, 1:]) / 2, axis=1, out=v[:, 1:])
        np.cumsum(h * (v[:, :-1] + h * (2 * a[:, :-1] + a[:, 1:]) / 6), axis=1, out=p[:, 1:])
        return p

    p, y = twice(push / mass), twice((force - mean_up[:, None]) / mass)
    time = columns * h
    sums = [
        np.cumsum(part, axis=1)
        for part in (force, force * time, turning - p * force, y * push, push * time, push)
    ]
    to_first = [part[rows, lift - 1] for part in sums]
    to_next = [part[rows, next_ - 1] for part in sums]
    to_end = [part[rows, stop] for part in sums]
    total = next_ * h
    drift = y[rows, next_] / total
    mean_height = np.where(columns < next_[:, None], y, 0.0).sum(axis=1) / next_
    above = height - mean_height + drift * (total - h) / 2

    def solve(to, since=(0.0,) * 6):
        load, by_time, turn, lifted_push, push_by_time, pushed = (q - r for q, r in zip(to, since))
        return (turn + lifted_push - drift * push_by_time + above * pushed) / load, by_time / load

    whole, one, two = solve(to_next), solve(to_first), solve(to_end, to_next)
    velocity = (two[0] - one[0]) / (two[1] - one[1])
    place = whole[0] - velocity * whole[1]
    at = read_at - start
    before = np.floor(at).astype(np.int64)
    reached = p[rows, before] + (at - before) * (p[rows, before + 1] - p[rows, before])
    return place, velocity, place + velocity * at * h + reached
