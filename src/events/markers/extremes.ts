/**
 * Place of the largest sample between two indices, on the parabola through it and its neighbours; `null` where the
 * largest is one of the two ends, so that the curve does not turn between them.
 */
export function largestBetween(samples: Float64Array, first: number, last: number): number | null {
  const from = Math.max(0, first);
  const to = Math.min(samples.length - 1, last);
  let at = from;
  for (let i = from + 1; i <= to; i++) if ((samples[i] as number) > (samples[at] as number)) at = i;
  return at <= from || at >= to ? null : at + turn(samples, at);
}

/** The samples upside down: their largest is the smallest, their rise the fall. */
export function negated(samples: Float64Array): Float64Array {
  return samples.map((value) => -value);
}

/** First place after `first` and up to `last` where the samples rise through zero, on the line between two of them. */
export function firstRise(samples: Float64Array, first: number, last: number): number | null {
  for (let i = Math.max(1, first + 1); i <= Math.min(samples.length - 1, last); i++) {
    const before = samples[i - 1] as number;
    const now = samples[i] as number;
    if (before < 0 && now >= 0) return i - 1 + before / (before - now);
  }
  return null;
}

/** Last place after `first` and up to `last` where the samples rise through zero, as {@link firstRise}. */
export function lastRise(samples: Float64Array, first: number, last: number): number | null {
  for (let i = Math.min(samples.length - 1, last); i > Math.max(0, first); i--) {
    const before = samples[i - 1] as number;
    const now = samples[i] as number;
    if (before < 0 && now >= 0) return i - 1 + before / (before - now);
  }
  return null;
}

/** How far from a largest sample, in samples, the parabola through it and its neighbours turns; within ±0.5. */
function turn(samples: Float64Array, at: number): number {
  const before = samples[at - 1] as number;
  const after = samples[at + 1] as number;
  const bend = before - 2 * (samples[at] as number) + after;
  return bend < 0 ? (0.5 * (before - after)) / bend : 0;
}
