/** Smallest and largest sample and the number of those without a value. */
export interface SampleRange {
  readonly least: number | null;
  readonly most: number | null;
  readonly blank: number;
}

/**
 * Finds the range of a series; NaN counts as blank.
 *
 * @param samples - In any unit.
 * @example
 * sampleRange(new Float64Array([3, NaN, -1])) // { least: -1, most: 3, blank: 1 }
 */
export function sampleRange(samples: Float64Array): SampleRange {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  let blank = 0;
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i] as number;
    if (Number.isNaN(value)) blank++;
    else {
      if (value < least) least = value;
      if (value > most) most = value;
    }
  }
  return blank === samples.length ? { least: null, most: null, blank } : { least, most, blank };
}
