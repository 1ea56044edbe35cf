/**
 * Gives the largest sample between two times, of the samples or of their negatives; −Infinity where none lies there.
 *
 * @param samples - The samples.
 * @param sampleRate - Hz.
 * @param from - s from the first sample.
 * @param to - s, within the samples.
 * @param sign - 1 for the samples, −1 for their negatives.
 */
export function largestSample(
  samples: Float64Array,
  sampleRate: number,
  from: number,
  to: number,
  sign: 1 | -1,
): number {
  const last = Math.floor(to * sampleRate);
  let largest = Number.NEGATIVE_INFINITY;
  for (let i = Math.ceil(from * sampleRate); i <= last; i++) {
    const value = sign * (samples[i] as number);
    if (value > largest) largest = value;
  }
  return largest;
}
