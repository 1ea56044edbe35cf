import { requireNumber } from "../units/index.js";
import { effectiveNumberOf } from "./effectiveNumberOf.js";
import { mean } from "./mean.js";
import { requireValues, type Values } from "./requireValues.js";
import { standardDeviation } from "./standardDeviation.js";
import { studentTQuantile } from "./studentTQuantile.js";

/** An interval and the share of repeats it is meant to cover. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Such as 0.95. */
  readonly level: number;
}

/** A mean, the spread of the values, and the interval of the mean. */
export interface MeanInterval {
  readonly n: number;
  readonly mean: number;
  /** Standard deviation of the values; `null` with fewer than two. */
  readonly sd: number | null;
  /** `null` with fewer than two values, or where they are worth fewer than two independent ones. */
  readonly interval: Interval | null;
}

/**
 * Gives the mean of values that follow one another in time, with their spread and the interval of the mean.
 *
 * Formula: m ± t s / √nₑ, s the standard deviation, nₑ the values' {@link effectiveNumberOf}, t Student's quantile with
 * nₑ − 1 degrees of freedom. With r₁ ≤ 0 it is the textbook interval.
 * Units: those of the values.
 * Limits: needs roughly normal values and a correlation that dies out as r₁, r₁², r₁³ …; r₁ is itself estimated, and too
 * low in short series, so that with fewer than some 40 correlated values the interval covers less often than its level.
 * Source: definition of Student's interval; effective number after Zwiers & von Storch 1995, J. Climate 8:336, from memory.
 * @param values - Finite numbers in their order of time, at least one.
 * @param level - Share of repeats the interval is meant to cover, above 0 and below 1.
 * @throws GaitKineticsError `too-short`: no value; `out-of-range`: the level; `not-finite`, `wrong-type`: a value or level
 *   that is no finite number.
 * @example
 * meanInterval([4, 6, 4, 6, 5, 5], 0.95).interval?.low.toFixed(3) // "4.061"
 */
export function meanInterval(values: Values, level: number): MeanInterval {
  requireValues("values", values, 1);
  requireNumber("level", level, { above: 0, below: 1 });
  const n = values.length;
  const centre = mean(values);
  if (n < 2) return { n, mean: centre, sd: null, interval: null };
  const sd = standardDeviation(values);
  const effective = effectiveNumberOf(values);
  if (effective < 2) return { n, mean: centre, sd, interval: null };
  const reach = studentTQuantile((1 + level) / 2, effective - 1) * (sd / Math.sqrt(effective));
  return { n, mean: centre, sd, interval: { low: centre - reach, high: centre + reach, level } };
}
