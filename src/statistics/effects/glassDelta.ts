import { requireOneOf } from "../../units/index.js";
import { type Sample, summaryOf } from "../hypothesis/sample.js";

/**
 * Gives Glass's delta: the difference of two means in standard deviations of one of the samples, the one that was left
 * alone.
 *
 * Formula: Δ = (m₁ − m₂)/s of the sample named by `by`.
 * Units: none.
 * Limits: of independent samples; `null` where that sample does not spread. For where a change alters the spread too.
 * Source: Glass 1976, from memory; a published example and NumPy give the same.
 * @param first - Values, or their number, mean and standard deviation.
 * @param second - The same; subtracted.
 * @param by - Whose standard deviation; the second is the baseline where the first is what changed.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `out-of-range`: no such samples, or another `by`.
 * @example
 * glassDelta({ n: 40, mean: 7.5, sd: 2.038 }, { n: 40, mean: 2.725, sd: 2.592 }, "first").toFixed(2) // "2.34"
 */
export function glassDelta(first: Sample, second: Sample, by: "first" | "second" = "second"): number | null {
  requireOneOf("by", by, ["first", "second"]);
  const one = summaryOf("first", first);
  const other = summaryOf("second", second);
  const sd = (by === "first" ? one : other).sd;
  return sd === 0 ? null : (one.mean - other.mean) / sd;
}
