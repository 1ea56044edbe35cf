/** Frames in which a marker was not seen. */
export interface MarkerGaps {
  readonly missing: number;
  readonly gaps: number;
  readonly longest: number;
}

/**
 * Counts the frames without a value, the stretches they make, and the longest of these.
 *
 * @param samples - One coordinate of a marker: all three are blank together.
 * @example
 * markerGaps(new Float64Array([1, NaN, NaN, 2, NaN])) // { missing: 3, gaps: 2, longest: 2 }
 */
export function markerGaps(samples: Float64Array): MarkerGaps {
  let missing = 0;
  let gaps = 0;
  let longest = 0;
  let current = 0;
  for (let i = 0; i < samples.length; i++) {
    if (!Number.isNaN(samples[i])) {
      current = 0;
      continue;
    }
    missing++;
    current++;
    if (current === 1) gaps++;
    if (current > longest) longest = current;
  }
  return { missing, gaps, longest };
}
