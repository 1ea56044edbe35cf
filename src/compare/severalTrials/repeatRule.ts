import {
  type Interval,
  type MeanInterval,
  mean,
  meanInterval,
  smallestDetectableChange,
} from "../../statistics/index.js";
import type { SmallestDetectableChange } from "../comparison.js";
import type { DifferenceRule, FoundDifference, IntervalUse } from "../differenceRule.js";
import { type Settings, SMALLEST_DETECTABLE_SHARE } from "../options.js";
import { strideRule } from "../strideRule.js";
import type { OfBoth } from "../strideSeries.js";
import { pooledDeviation } from "./pooledDeviation.js";
import type { TrialGroups } from "./trialGroups.js";

type Series = OfBoth<readonly number[]>;
type Groups = OfBoth<readonly (readonly number[])[]>;
type Use = Omit<IntervalUse, "purpose">;

/**
 * The rule where one condition was recorded twice and the other once, as the baseline before and after the change.
 *
 * One difference between two trials of a condition tells next to nothing of their standard deviation: Student's t at 99 % with one
 * degree of freedom is 63.7. So the single trial must lie beyond each of the two by the rule of the strides: the interval
 * reaches over those of both differences, which are the strides' own. And the difference from the mean of the two must
 * exceed {@link SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides and the smallest detectable change that the two tell of,
 * 1.96 √2 SEM with SEM = |A₂ − A₁|/√2. Of rules tried on simulated trials that vary by 0 to 2 standard deviations of strides this one
 * had the fewest false alarms (0, 2.0, 8.8, 15 % at 0, 0.5, 1, 2; with strides correlated by 0.3: 0, 0.8, 7.5, 15 %) for its power: without the two terms added,
 * 3.7 and 15 % at 0.5 and 1; with three times the difference 1.6 and 6.7 %, and half the power.
 */
export function repeatRule(groupsOf: TrialGroups, settings: Settings): DifferenceRule {
  const strides = strideRule(settings);
  const pairsOf = ({ baseline, changed }: Groups): Series[] =>
    baseline.flatMap((one) => changed.map((other) => ({ baseline: one, changed: other })));
  const change = (use: Use): SmallestDetectableChange => {
    const groups = groupsOf(use);
    const between = repeatDifference(groups);
    const floor =
      SMALLEST_DETECTABLE_SHARE * (pooledDeviation([...groups.baseline, ...groups.changed]) ?? 0) +
      smallestDetectableChange(between / Math.SQRT2);
    const beyondEach = Math.max(
      ...pairsOf(groups).map((series) => {
        const found = strides.differ(series, { ...use, purpose: "reading" });
        return found === null ? 0 : strides.smallestChange(series, found, use).value + between / 2;
      }),
    );
    return floor >= beyondEach
      ? {
          value: floor,
          source: `${SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides and 1.96 times what the two trials of one condition differ by`,
        }
      : {
          value: beyondEach,
          source: "what strides alone ask for, beyond each of the two trials of one condition",
        };
  };
  return {
    differ: (_, use) => {
      const groups = groupsOf(use);
      return overBoth(groups, (series) => strides.differ(series, use)?.interval ?? null, pairsOf(groups));
    },
    otherMethod: () => null,
    spread: (which, _, use) => spreadOf(groupsOf(use)[which], settings.shownLevel),
    floor: (_, use) => {
      const { baseline, changed } = groupsOf(use);
      return {
        value: SMALLEST_DETECTABLE_SHARE * (pooledDeviation([...baseline, ...changed]) ?? 0),
        source: `${SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides within trials`,
      };
    },
    smallestChange: (_, __, use) => change(use),
    drift: () => null,
    advice: (what) =>
      `each condition recorded three times or more for ${what}, so that the trials themselves tell how they vary`,
  };
}

/** By how much the means of the two trials of one condition differ, whichever it is. */
function repeatDifference({ baseline, changed }: Groups): number {
  const [one, other] = (baseline.length === 2 ? baseline : changed).map((values) => mean(values));
  return Math.abs((other as number) - (one as number));
}

/** The difference of the means of trial means, its interval reaching over those of every pair of trials. */
function overBoth(
  { baseline, changed }: Groups,
  intervalOf: (series: Series) => Interval | null,
  pairs: readonly Series[],
): FoundDifference | null {
  if (pairs.some((pair) => pair.baseline.length < 2 || pair.changed.length < 2)) return null;
  const intervals = pairs.map(intervalOf);
  const [first] = intervals;
  if (first == null || intervals.some((interval) => interval === null)) return null;
  const known = intervals.filter((interval) => interval !== null);
  return {
    difference: meanOfMeans(changed) - meanOfMeans(baseline),
    interval: {
      low: Math.min(...known.map(({ low }) => low)),
      high: Math.max(...known.map(({ high }) => high)),
      level: first.level,
    },
  };
}

function meanOfMeans(trials: readonly (readonly number[])[]): number {
  return mean(trials.map((values) => mean(values)));
}

/** The mean of trial means, the spread of strides within trials, and an interval that reaches over those of the trials. */
function spreadOf(trials: readonly (readonly number[])[], level: number): MeanInterval {
  const intervals = trials.map((values) => meanInterval(values, level).interval);
  const known = intervals.filter((interval) => interval !== null);
  return {
    n: trials.reduce((sum, values) => sum + values.length, 0),
    mean: meanOfMeans(trials),
    sd: pooledDeviation(trials),
    interval:
      known.length < trials.length
        ? null
        : {
            low: Math.min(...known.map(({ low }) => low)),
            high: Math.max(...known.map(({ high }) => high)),
            level,
          },
  };
}
