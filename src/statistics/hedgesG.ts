import { hedgesCorrection } from "./effects/hedgesCorrection.js";
import { type Sample, summaryOf } from "./hypothesis/sample.js";

/**
 * Gives Hedges' g: the difference of two means in pooled standard deviations, freed of its bias in small samples.
 *
 * Formula: g = J (m₁ − m₂) / s, s² = [(n₁ − 1) s₁² + (n₂ − 1) s₂²] / ν, ν = n₁ + n₂ − 2,
 * J the {@link hedgesCorrection}.
 * Units: none.
 * Limits: at least two values on each side; `null` where neither side spreads. A size, not a proof: it says nothing of
 * how sure the difference is.
 * Source: Hedges 1981, J. Educ. Stat. 6:107 (exact J), from memory; SciPy's gamma function gives the same.
 * @param first - Finite numbers, at least two, or their number, mean and standard deviation.
 * @param second - The same; subtracted.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`, `out-of-range`: no such sample.
 * @example
 * hedgesG([3, 4, 5, 6], [1, 2, 3, 4]).toFixed(3) // "1.346"
 */
export function hedgesG(first: Sample, second: Sample): number | null {
  const one = summaryOf("first", first);
  const other = summaryOf("second", second);
  const df = one.n + other.n - 2;
  const squares = (one.n - 1) * one.sd ** 2 + (other.n - 1) * other.sd ** 2;
  if (squares === 0) return null;
  return (hedgesCorrection(df) * (one.mean - other.mean)) / Math.sqrt(squares / df);
}
