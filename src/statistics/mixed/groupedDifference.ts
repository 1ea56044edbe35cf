import { fail, requireNumber, withDefaults } from "../../units/index.js";
import { effectiveNumberOf } from "../effectiveNumberOf.js";
import { SHARED_CORRELATION_DEFAULTS, type SharedCorrelationOptions } from "../effectiveNumbersOf.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { requireValues, type Values } from "../requireValues.js";
import { standardDeviation } from "../standardDeviation.js";
import { studentTQuantile } from "../studentTQuantile.js";

/** The difference of two conditions of several groups each, such as trials, and what its interval rests on. */
export interface GroupedDifference {
  /** Mean of the group means of the first less that of the second. */
  readonly difference: number;
  /** The wider of the two below; `null` where there is neither. */
  readonly interval: Interval | null;
  /** From the spread of the group means; `null` with one group a condition. */
  readonly fromGroups: Interval | null;
  /** Groups less conditions: the degrees of freedom of `fromGroups`. */
  readonly groupDegreesOfFreedom: number;
  /** From the values within groups alone; `null` where a group has fewer than two, or is worth fewer than two independent ones. */
  readonly fromValues: Interval | null;
  /**
   * Standard deviation of a group's true mean about its condition's, 0 or more: what the values within groups do not explain of
   * the spread of the group means. `null` with one group a condition.
   */
  readonly betweenGroups: number | null;
}

/**
 * Gives the difference of two conditions that were each measured in several groups of values, such as trials of strides, with
 * an interval that has the variation from group to group in it.
 *
 * Formula: d = M₁ − M₂, M the mean of a condition's group means mⱼ. From groups: d ± t s √(1/k₁ + 1/k₂), s² the variance of the mⱼ
 * about their condition's M, pooled, t Student's quantile with k₁ + k₂ − 2 degrees of freedom. From values: d ± t √Σ vⱼ/k²,
 * vⱼ = sⱼ²/nⱼ with nⱼ the {@link effectiveNumberOf} the group, t with Welch's and Satterthwaite's degrees of freedom. The wider one
 * holds. Between groups: √(s² − mean of vⱼ). With one group a condition only the second is there: {@link differenceInterval}.
 * Units: those of the values.
 * Limits: the variation between groups is taken as alike in both conditions; with few groups the first interval is wide, as
 * it must be: t is 63.7 with one degree of freedom at 99 %, 9.9 with two, 4.6 with four, 3.4 with eight. With
 * three groups in all it is of no use. Groups of any length count alike.
 * Source: Student's two-sample form on group means (a nested analysis of variance), from memory; held to SciPy.
 * @param first - One list of finite numbers a group, each in its order of time.
 * @param second - The same; subtracted.
 * @param level - Share of repeats the interval is meant to cover, above 0 and below 1.
 * @param options - `correctBias` and `shared` (the smallest share of all groups) as in {@link differenceInterval}.
 * @throws GaitKineticsError `too-short`: a condition without a group, or a group without a value; `out-of-range`: the level;
 *   `not-finite`, `wrong-type`: a value or level that is no finite number; `unknown-option`.
 * @example
 * groupedDifference([[3, 5], [5, 7]], [[1, 3], [2, 4]], 0.95).difference // 2.5
 */
export function groupedDifference(
  first: readonly Values[],
  second: readonly Values[],
  level: number,
  options: SharedCorrelationOptions = {},
): GroupedDifference {
  requireGroups("first", first);
  requireGroups("second", second);
  requireNumber("level", level, { above: 0, below: 1 });
  const settings = withDefaults<SharedCorrelationOptions>(SHARED_CORRELATION_DEFAULTS, options);
  const conditions = [first, second].map((groups) => Array.from(groups, (values) => mean(values))) as [
    number[],
    number[],
  ];
  const [m1, m2] = conditions.map((means) => mean(means)) as [number, number];
  const difference = m1 - m2;
  const df = first.length + second.length - 2;
  const squares = sumOfSquares(conditions[0], m1) + sumOfSquares(conditions[1], m2);
  const around = (reach: number): Interval => ({ low: difference - reach, high: difference + reach, level });
  const parts = within([first, second], settings);
  const spread = df === 0 ? 0 : Math.sqrt(squares / df);
  const groupReach =
    df === 0
      ? null
      : spread === 0
        ? 0
        : studentTQuantile((1 + level) / 2, df) * spread * Math.sqrt(1 / first.length + 1 / second.length);
  const valueReach = parts === null ? null : reachOf(parts, level);
  const reaches = [groupReach, valueReach].filter((reach) => reach !== null);
  const own = parts === null ? 0 : parts.reduce((sum, { ofMean }) => sum + ofMean / parts.length, 0);
  return {
    difference,
    interval: reaches.length === 0 ? null : around(Math.max(...reaches)),
    fromGroups: groupReach === null ? null : around(groupReach),
    groupDegreesOfFreedom: df,
    fromValues: valueReach === null ? null : around(valueReach),
    betweenGroups: df === 0 ? null : Math.sqrt(Math.max(0, spread ** 2 - own)),
  };
}

function requireGroups(argument: string, groups: readonly Values[]): void {
  if (!Array.isArray(groups) || groups.length === 0) {
    fail("too-short", `${argument} holds no group; at least one list of numbers is needed`, { argument });
  }
  groups.forEach((values, i) => {
    requireValues(`${argument}[${i}]`, values, 1);
  });
}

function sumOfSquares(values: readonly number[], centre: number): number {
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
}

interface Part {
  /** Variance of the group's mean by its own values. */
  readonly ofMean: number;
  /** Its share in the variance of the difference. */
  readonly variance: number;
  readonly df: number;
}

/** What each group's values make of the variance of the difference; `null` where a group cannot tell. */
function within(
  conditions: readonly (readonly Values[])[],
  { correctBias, shared }: { readonly correctBias: boolean; readonly shared: boolean },
): Part[] | null {
  const groups = conditions.flatMap((of) => of.map((values) => ({ values, k: of.length })));
  if (groups.some(({ values }) => values.length < 2)) return null;
  const shares = groups.map(({ values }) => effectiveNumberOf(values, { correctBias }) / values.length);
  const least = Math.min(...shares);
  const parts = groups.map(({ values, k }, i): Part => {
    const n = values.length * (shared ? least : (shares[i] as number));
    const ofMean = standardDeviation(values) ** 2 / n;
    return { ofMean, variance: ofMean / k ** 2, df: n - 1 };
  });
  return parts.some(({ df }) => df < 1) ? null : parts;
}

function reachOf(parts: readonly Part[], level: number): number {
  const all = parts.reduce((sum, { variance }) => sum + variance, 0);
  if (all === 0) return 0;
  const df = 1 / parts.reduce((sum, part) => sum + (part.variance / all) ** 2 / part.df, 0);
  return studentTQuantile((1 + level) / 2, df) * Math.sqrt(all);
}
