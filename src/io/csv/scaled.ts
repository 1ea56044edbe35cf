import { fail } from "../../units/index.js";
import { refuseAbsurd } from "../largestValue.js";
import type { Column } from "./columns.js";

/** Brings a column to SI, in place: the array is the reader's own. A number that no recording holds is refused. */
export function scaled(
  samples: Float64Array,
  { factor, label, role, unit }: Column,
  lineOf: (row: number) => number,
): Float64Array {
  const whereOf = (row: number) => `line ${lineOf(row)}, ${label}`;
  for (let i = 0; i < samples.length; i++) {
    // Adding 0 makes 0 of −0, which a turned sign gives and people do not mean.
    const value = (samples[i] as number) * factor + 0;
    if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY) {
      const where = whereOf(i);
      fail("not-finite", `${where} holds ${samples[i]}, which is too large a number in SI units`, { where });
    }
    samples[i] = value;
  }
  if (role.kind !== "other") refuseAbsurd(samples, unit, "units", whereOf);
  return samples;
}
