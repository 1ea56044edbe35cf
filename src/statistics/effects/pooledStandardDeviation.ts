import { type Sample, summaryOf } from "../hypothesis/sample.js";

/**
 * Gives the standard deviation of two samples about their own means.
 *
 * Formula: s² = [(n₁ − 1) s₁² + (n₂ − 1) s₂²]/(n₁ + n₂ − 2).
 * Units: those of the values.
 * Limits: at least two values each; of use where both spread alike.
 * Source: definition; the NIST/SEMATECH e-Handbook, 1.3.5.3, prints the same.
 * @param first - Values, or their number, mean and standard deviation.
 * @param second - The same.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `out-of-range`: no such samples.
 * @example
 * pooledStandardDeviation({ n: 249, mean: 20.14458, sd: 6.4147 }, { n: 79, mean: 30.48101, sd: 6.10771 }).toFixed(4) // "6.3426"
 */
export function pooledStandardDeviation(first: Sample, second: Sample): number {
  const one = summaryOf("first", first);
  const other = summaryOf("second", second);
  const [df1, df2] = [one.n - 1, other.n - 1];
  return Math.sqrt((df1 * one.sd ** 2 + df2 * other.sd ** 2) / (df1 + df2));
}
