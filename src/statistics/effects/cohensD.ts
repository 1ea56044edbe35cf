import { type Sample, summaryOf } from "../hypothesis/sample.js";
import { pooledStandardDeviation } from "./pooledStandardDeviation.js";

/**
 * Gives Cohen's d: the difference of two means in pooled standard deviations.
 *
 * Formula: d = (m₁ − m₂)/s, s the {@link pooledStandardDeviation}.
 * Units: none.
 * Limits: of independent samples; `null` where neither spreads. Too large on average in small samples: {@link hedgesG} is
 * not.
 * Source: Cohen 1988, Statistical Power Analysis, from memory; a published example and NumPy give the same.
 * @param first - Values, or their number, mean and standard deviation.
 * @param second - The same; subtracted.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `out-of-range`: no such samples.
 * @example
 * cohensD({ n: 40, mean: 7.5, sd: 2.038 }, { n: 40, mean: 2.725, sd: 2.592 }).toFixed(2) // "2.05"
 */
export function cohensD(first: Sample, second: Sample): number | null {
  const sd = pooledStandardDeviation(first, second);
  if (sd === 0) return null;
  return (summaryOf("first", first).mean - summaryOf("second", second).mean) / sd;
}
