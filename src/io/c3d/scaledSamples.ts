/** Samples times a factor, without those that only fill up the last frame; not finite ones become gaps. */
export function scaledSamples(
  samples: Float64Array,
  factor: number,
  exact: number | undefined,
): Float64Array {
  const length = Math.min(exact ?? samples.length, samples.length);
  const scaled = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    // A turned sign makes −0 of 0; adding 0 takes that back.
    const value = (samples[i] as number) * factor + 0;
    scaled[i] = value - value === 0 ? value : Number.NaN;
  }
  return scaled;
}
