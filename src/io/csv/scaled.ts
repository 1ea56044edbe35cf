import { fail } from "../../units/index.js";
import type { Column } from "./columns.js";

/** Brings a column to SI, in place: the array is the reader's own. */
export function scaled(
  samples: Float64Array,
  { factor, label }: Column,
  lineOf: (row: number) => number,
): Float64Array {
  if (factor === 1) return samples;
  for (let i = 0; i < samples.length; i++) {
    const value = (samples[i] as number) * factor;
    if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY) {
      const where = `line ${lineOf(i)}, ${label}`;
      fail("not-finite", `${where} holds ${samples[i]}, which is too large a number in SI units`, { where });
    }
    samples[i] = value;
  }
  return samples;
}
