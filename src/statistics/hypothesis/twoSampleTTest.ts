import { type Complete, requireOneOf, withDefaults } from "../../units/index.js";
import { type Sample, type SampleSummary, summaryOf } from "./sample.js";
import { type TTest, type TTestOptions, tTestOf, tTestSettings } from "./tTest.js";

/** Whether two samples are taken to spread alike. */
export type Variances = "unequal" | "equal";

/** As {@link TTestOptions}, and whether spreads are pooled. */
export interface TwoSampleTTestOptions extends TTestOptions {
  /** `unequal`: Welch's test; `equal`: Student's with pooled variance. */
  readonly variances?: Variances | undefined;
}

/** Welch's test: it costs next to nothing where the spreads are equal. */
export const TWO_SAMPLE_T_TEST_DEFAULTS: Complete<TwoSampleTTestOptions> = {
  against: 0,
  side: "two-sided",
  level: 0.95,
  variances: "unequal",
};

/**
 * Tests the difference of two means of independent values by Welch's or Student's t.
 *
 * Formula: unequal variances: t = (m₁ − m₂ − d₀)/√(v₁ + v₂), vᵢ = sᵢ²/nᵢ, degrees of freedom
 * (v₁ + v₂)²/[v₁²/(n₁ − 1) + v₂²/(n₂ − 1)]; equal: standard error s √(1/n₁ + 1/n₂) with the pooled variance
 * s² = [(n₁ − 1) s₁² + (n₂ − 1) s₂²]/(n₁ + n₂ − 2).
 * Units: those of the values.
 * Limits: at least two values each, independent: two groups of runners, say. Strides of one runner are not:
 * {@link differenceInterval} counts their correlation.
 * Source: Welch 1947, Biometrika 34:28, from memory; published examples and SciPy give the same.
 * @param first - Values, or their number, mean and standard deviation.
 * @param second - The same; subtracted.
 * @param options - {@link TWO_SAMPLE_T_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`: no such samples; `out-of-range`: an option outside its
 *   range; `unknown-option`.
 * @example
 * twoSampleTTest({ n: 4, mean: 25, sd: 0.8185 }, { n: 8, mean: 21, sd: 4.208 }).p?.toFixed(4) // "0.0320"
 */
export function twoSampleTTest(first: Sample, second: Sample, options: TwoSampleTTestOptions = {}): TTest {
  const { variances, ...rest } = withDefaults<TwoSampleTTestOptions>(TWO_SAMPLE_T_TEST_DEFAULTS, options);
  requireOneOf("variances", variances, ["unequal", "equal"]);
  const settings = tTestSettings(rest);
  const one = summaryOf("first", first);
  const other = summaryOf("second", second);
  const { standardError, degreesOfFreedom } = errorOfDifference(one, other, variances);
  return tTestOf(one.mean - other.mean, standardError, degreesOfFreedom, settings);
}

/** Standard error of a difference of means, and its degrees of freedom. */
function errorOfDifference(
  one: SampleSummary,
  other: SampleSummary,
  variances: Variances,
): { standardError: number; degreesOfFreedom: number } {
  const [df1, df2] = [one.n - 1, other.n - 1];
  if (variances === "equal") {
    const pooled = Math.sqrt((df1 * one.sd ** 2 + df2 * other.sd ** 2) / (df1 + df2));
    return { standardError: pooled * Math.sqrt(1 / one.n + 1 / other.n), degreesOfFreedom: df1 + df2 };
  }
  const v1 = one.sd ** 2 / one.n;
  const v2 = other.sd ** 2 / other.n;
  const all = v1 + v2;
  if (all === 0) return { standardError: 0, degreesOfFreedom: df1 + df2 };
  return {
    standardError: Math.sqrt(all),
    degreesOfFreedom: 1 / ((v1 / all) ** 2 / df1 + (v2 / all) ** 2 / df2),
  };
}
