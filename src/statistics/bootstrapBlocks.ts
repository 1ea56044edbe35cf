import type { Values } from "./requireValues.js";

/** A series with the sums of all its blocks, which run on from its end to its beginning. */
export interface BlockSeries {
  readonly mean: number;
  /** Of the mean, from the spread of the means of all blocks. */
  readonly standardError: number;
  /** Mean of the block that starts at each place, less the mean of the series. */
  readonly deviations: Float64Array;
  /** Blocks that one resample takes. */
  readonly count: number;
}

/**
 * Sums up the circular blocks of a series once for all resamples.
 *
 * Standard error: √{l Σ (bᵢ − m)² / [n (n − l)]}, bᵢ the means of the n blocks of length l; with l = 1 it is s/√n.
 */
export function blockSeries(values: Values, length: number): BlockSeries {
  const n = values.length;
  let mean = 0;
  for (let i = 0; i < n; i++) mean += (values[i] as number) / n;
  const deviations = new Float64Array(n);
  let sum = 0;
  for (let i = 0; i < length; i++) sum += (values[i] as number) - mean;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const deviation = sum / length;
    deviations[i] = deviation;
    squares += deviation * deviation;
    sum += (values[(i + length) % n] as number) - (values[i] as number);
  }
  return {
    mean,
    standardError: Math.sqrt((length / n) * (squares / (n - length))),
    deviations,
    count: Math.ceil(n / length),
  };
}

/** A resample's mean less the series', and the variance of that mean from the resample's own blocks. */
interface Resample {
  deviation: number;
  variance: number;
}

/** A ratio that no resample reaches. */
export const FAR = 1e9;

/**
 * Draws resamples of two series and gives (d* − d) / s* of each, d the difference of the means. Without a spread of its own
 * a resample tells nothing: it counts as {@link FAR} beyond both ends in turn.
 */
export function studentisedRatios(
  first: BlockSeries,
  second: BlockSeries,
  resamples: number,
  uniform: () => number,
): Float64Array {
  const a: Resample = { deviation: 0, variance: 0 };
  const b: Resample = { deviation: 0, variance: 0 };
  const least = 1e-12 * Math.hypot(first.standardError, second.standardError);
  const ratios = new Float64Array(resamples);
  for (let i = 0; i < resamples; i++) {
    draw(first, uniform, a);
    draw(second, uniform, b);
    const own = Math.sqrt(a.variance + b.variance);
    ratios[i] = own > least ? (a.deviation - b.deviation) / own : i % 2 === 0 ? FAR : -FAR;
  }
  return ratios;
}

/** Draws blocks with replacement; `into` is filled and no object made. */
function draw({ deviations, count }: BlockSeries, uniform: () => number, into: Resample): void {
  const n = deviations.length;
  let sum = 0;
  let squares = 0;
  for (let k = 0; k < count; k++) {
    const deviation = deviations[Math.floor(uniform() * n)] as number;
    sum += deviation;
    squares += deviation * deviation;
  }
  into.deviation = sum / count;
  // Deviations are about zero already, so that the difference of squares loses no digits that matter.
  into.variance = Math.max(0, squares - (sum * sum) / count) / (count * (count - 1));
}
