import { gammaRatio } from "./gammaRatio.js";
import { mean } from "./mean.js";
import { requireValues, type Values } from "./requireValues.js";
import { standardDeviation } from "./standardDeviation.js";

/**
 * Gives Hedges' g: the difference of two means in pooled standard deviations, freed of its bias in small samples.
 *
 * Formula: g = J (m₁ − m₂) / s, s² = [(n₁ − 1) s₁² + (n₂ − 1) s₂²] / ν, ν = n₁ + n₂ − 2,
 * J = Γ(ν/2) / [√(ν/2) Γ((ν − 1)/2)].
 * Units: none.
 * Limits: at least two values on each side; `null` where neither side spreads. A size, not a proof: it says nothing of
 * how sure the difference is.
 * Source: Hedges 1981, J. Educ. Stat. 6:107 (exact J), from memory; SciPy's gamma function gives the same.
 * @param first - Finite numbers, at least two.
 * @param second - Finite numbers, at least two; subtracted.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number.
 * @example
 * hedgesG([3, 4, 5, 6], [1, 2, 3, 4]).toFixed(3) // "1.346"
 */
export function hedgesG(first: Values, second: Values): number | null {
  requireValues("first", first, 2);
  requireValues("second", second, 2);
  const df = first.length + second.length - 2;
  const squares =
    (first.length - 1) * standardDeviation(first) ** 2 + (second.length - 1) * standardDeviation(second) ** 2;
  if (squares === 0) return null;
  const correction = gammaRatio((df - 1) / 2) / Math.sqrt(df / 2);
  return (correction * (mean(first) - mean(second))) / Math.sqrt(squares / df);
}
