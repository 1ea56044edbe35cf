import {
  type Complete,
  type Fraction,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { chiSquareQuantile } from "../distributions/chiSquareQuantile.js";
import type { Interval } from "../meanInterval.js";
import { type MeanSquares, meanSquares } from "./meanSquares.js";
import { type AgreementTable, requireTable } from "./table.js";

/** Which error, and how sure. */
export interface StandardErrorOfMeasurementOptions {
  /** `agreement` counts what all subjects of a trial share; `consistency` does not. */
  readonly type?: "agreement" | "consistency" | undefined;
  /** Share of repeats the interval is meant to cover. */
  readonly level?: Fraction | undefined;
}

/** What another day's number may be off by, whatever the cause. */
export const STANDARD_ERROR_OF_MEASUREMENT_DEFAULTS: Complete<StandardErrorOfMeasurementOptions> = {
  type: "agreement",
  level: 0.95,
};

/** A standard error of measurement with its interval. */
export interface StandardErrorOfMeasurement {
  readonly value: number;
  readonly interval: Interval;
}

/**
 * Gives the standard error of measurement: the standard deviation of a subject's single trial about its own level.
 *
 * Formula: consistency √E; agreement √[E + (J − E)/n], which is √W: E, J, W the {@link meanSquares} of error, between trials
 * and within subjects. Interval of consistency: √(E ν/χ²) at both ends, χ² quantiles of ν = (n − 1)(k − 1) degrees of
 * freedom. Of agreement, a sum of the parts vᵢ = J/n with k − 1 and E (n − 1)/n with (n − 1)(k − 1): √{W ∓ √Σ [vᵢ (1 − νᵢ/χ²ᵢ)]²},
 * which is the same where there is one part. A single subject's is the standard deviation of its trials, ν = k − 1.
 * Units: those of the values.
 * Limits: at least two trials; consistency needs two subjects. From mean squares and not from √(1 − ICC), which depends
 * on which correlation and which standard deviation. With few trials shared by all, agreement's interval is wide upwards: 95 %
 * intervals cover 95 to 97 in 100 (simulated, 5 to 20 subjects, 2 to 5 trials). For the mean of m trials divide by √m.
 * Source: Weir 2005, J. Strength Cond. Res. 19:231 (abstract), from mean squares; interval of a sum after Graybill &
 * Wang 1980, J. Am. Stat. Assoc. 75:869, from memory, its coverage simulated in the tests.
 * @param table - Rows of subjects, columns of trials.
 * @param options - {@link STANDARD_ERROR_OF_MEASUREMENT_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`, `too-short`, `unequal-lengths`, `not-finite`: no full table of finite numbers with two
 *   columns or more, or a single row for `consistency`; `out-of-range`: type or level; `unknown-option`.
 * @example
 * const trials = [[146, 140], [148, 152], [170, 152], [90, 99], [157, 145], [156, 153], [176, 167], [205, 218]];
 * standardErrorOfMeasurement(trials, { type: "consistency" }).value.toFixed(1) // "7.6"
 */
export function standardErrorOfMeasurement(
  table: AgreementTable,
  options: StandardErrorOfMeasurementOptions = {},
): StandardErrorOfMeasurement {
  const { type, level } = withDefaults<StandardErrorOfMeasurementOptions>(
    STANDARD_ERROR_OF_MEASUREMENT_DEFAULTS,
    options,
  );
  requireOneOf("type", type, ["agreement", "consistency"]);
  requireNumber("level", level, { above: 0, below: 1 });
  if (type === "consistency") requireTable(table, 2);
  const parts = partsOf(meanSquares(table), type);
  const variance = parts.reduce((sum, part) => sum + part.variance, 0);
  const reach = (p: number) =>
    Math.hypot(...parts.map(({ variance: part, df }) => part * (1 - df / chiSquareQuantile(p, df))));
  return {
    value: Math.sqrt(variance),
    interval: {
      low: Math.sqrt(Math.max(0, variance - reach((1 + level) / 2))),
      high: Math.sqrt(variance + reach((1 - level) / 2)),
      level,
    },
  };
}

/** The independent parts that the variance is a sum of, with their degrees of freedom. */
function partsOf(
  { subjects: n, trials: k, withinSubjects, betweenTrials, error }: MeanSquares,
  type: "agreement" | "consistency",
): readonly { readonly variance: number; readonly df: number }[] {
  if (error === null) return [{ variance: withinSubjects, df: k - 1 }];
  const df = (n - 1) * (k - 1);
  if (type === "consistency") return [{ variance: error, df }];
  return [
    { variance: betweenTrials / n, df: k - 1 },
    { variance: (error * (n - 1)) / n, df },
  ];
}
