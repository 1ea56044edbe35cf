import { requireNumber } from "../units/index.js";
import { effectiveNumbersOf, type SharedCorrelationOptions } from "./effectiveNumbersOf.js";
import { mean } from "./mean.js";
import type { Interval } from "./meanInterval.js";
import { requireValues, type Values } from "./requireValues.js";
import { standardDeviation } from "./standardDeviation.js";
import { studentTQuantile } from "./studentTQuantile.js";

/** The difference of two means and how sure it is. */
export interface DifferenceInterval {
  /** Mean of the first less mean of the second. */
  readonly difference: number;
  readonly standardError: number;
  /** Welch's, from the effective numbers; `null` where a side is worth fewer than two independent ones. */
  readonly degreesOfFreedom: number | null;
  /** `null` where the degrees of freedom are. */
  readonly interval: Interval | null;
}

/**
 * Gives the difference of the means of two series, each in its own order of time, with its interval.
 *
 * Formula: m₁ − m₂ ± t √(v₁ + v₂), vᵢ = sᵢ² / nᵢ with nᵢ the {@link effectiveNumbersOf} the series; t Student's quantile
 * with Welch's ν = (v₁ + v₂)² / [v₁² / (n₁ − 1) + v₂² / (n₂ − 1)] from the same effective numbers.
 * The spreads are not pooled, for a change of technique may change the spread as well as the mean, and Welch's form costs
 * next to nothing where they are equal. The degrees of freedom take the effective numbers, not the counts, since
 * correlated values tell less of the spread too; nᵢ − 1 is on the careful side of what they tell (a spread alone would have
 * about n (1 − r₁²)/(1 + r₁²)) and so makes up in part for r₁ being an estimate. With r₁ ≤ 0 on both sides it is
 * Welch's textbook interval.
 * Units: those of the values.
 * Limits: as for {@link meanInterval}: too narrow in short, correlated series unless `correctBias` and `shared` are
 * set. Two series without any spread give an interval of no width.
 * Source: Welch 1947, Biometrika 34:28, from memory; effective number after Zwiers & von Storch 1995, J. Climate 8:336,
 * from memory.
 * @param first - Finite numbers in their order of time, at least two.
 * @param second - The same; subtracted.
 * @param level - Share of repeats the interval is meant to cover, above 0 and below 1.
 * @param options - `correctBias` frees r₁ of its bias in short series, `shared` takes the larger one for both;
 *   {@link SHARED_CORRELATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two values; `out-of-range`: the level; `not-finite`, `wrong-type`: a
 *   value or level that is no finite number.
 * @example
 * differenceInterval([4, 6, 4, 6], [1, 3, 1, 3], 0.95).difference // 3
 */
export function differenceInterval(
  first: Values,
  second: Values,
  level: number,
  options: SharedCorrelationOptions = {},
): DifferenceInterval {
  requireValues("first", first, 2);
  requireValues("second", second, 2);
  requireNumber("level", level, { above: 0, below: 1 });
  const [n1, n2] = effectiveNumbersOf(first, second, options);
  const v1 = standardDeviation(first) ** 2 / n1;
  const v2 = standardDeviation(second) ** 2 / n2;
  const difference = mean(first) - mean(second);
  const standardError = Math.sqrt(v1 + v2);
  if (n1 < 2 || n2 < 2) return { difference, standardError, degreesOfFreedom: null, interval: null };
  const degreesOfFreedom = welch(v1, n1 - 1, v2, n2 - 1);
  const reach = standardError === 0 ? 0 : studentTQuantile((1 + level) / 2, degreesOfFreedom) * standardError;
  return {
    difference,
    standardError,
    degreesOfFreedom,
    interval: { low: difference - reach, high: difference + reach, level },
  };
}

/** Written with shares of the variance, so that very small and very large values neither vanish nor overflow. */
function welch(v1: number, df1: number, v2: number, df2: number): number {
  const all = v1 + v2;
  if (all === 0) return df1 + df2;
  return 1 / ((v1 / all) ** 2 / df1 + (v2 / all) ** 2 / df2);
}
