/**
 * Gives the value at a place between samples, on the straight line that joins its neighbours.
 *
 * @param samples - The samples.
 * @param place - In sample numbers, within the samples; not checked, so that it can stand in a loop.
 */
export function sampleAt(samples: Float64Array, place: number): number {
  const before = Math.floor(place);
  const part = place - before;
  const value = samples[before] as number;
  return before + 1 < samples.length ? value + part * ((samples[before + 1] as number) - value) : value;
}
