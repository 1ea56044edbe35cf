import { valueAt } from "../../filters/index.js";

/** Share of a sample by which a window's end may miss a sample and still count it in: rounding of times. */
const ROUNDING = 1e-6;

/**
 * Gives the largest slope between successive samples of which both lie in a window, of the samples or of their
 * negatives. Where the window holds no two samples, it is the slope between its ends.
 *
 * @param samples - The samples.
 * @param sampleRate - Hz.
 * @param from - Start of the window, s.
 * @param to - End of the window, s, above `from`, within the samples.
 * @param sign - 1 for the samples, −1 for their negatives.
 */
export function largestSlope(
  samples: Float64Array,
  sampleRate: number,
  from: number,
  to: number,
  sign: 1 | -1,
): number {
  const first = Math.ceil(from * sampleRate - ROUNDING);
  const last = Math.floor(to * sampleRate + ROUNDING);
  if (last <= first) {
    return (sign * (valueAt(samples, sampleRate, to) - valueAt(samples, sampleRate, from))) / (to - from);
  }
  let largest = Number.NEGATIVE_INFINITY;
  for (let i = first; i < last; i++) {
    const rise = sign * ((samples[i + 1] as number) - (samples[i] as number));
    if (rise > largest) largest = rise;
  }
  return largest * sampleRate;
}
