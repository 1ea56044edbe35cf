import type { Interval, MeanInterval } from "../statistics/index.js";
import type { ComparedValues, SmallestDetectableChange } from "./comparison.js";
import { detectableChange, type Given } from "./detectableChange.js";
import type { DifferenceRule, FoundDifference, IntervalUse } from "./differenceRule.js";
import { LEAST_MEAN_FOR_PERCENT, type Settings } from "./options.js";
import type { OfBoth } from "./strideSeries.js";

/**
 * Sets the values of two trials against each other. `null` where one of them has fewer than two, or strides so
 * alike that they are worth fewer than two independent ones: there is no difference without an interval.
 */
export function compareValues(
  series: OfBoth<readonly number[]>,
  use: Omit<IntervalUse, "purpose">,
  given: Given,
  rule: DifferenceRule,
  settings: Settings,
): ComparedValues | null {
  const { baseline, changed } = series;
  if (baseline.length < 2 || changed.length < 2) return null;
  const shown = less(rule.differ(series, { ...use, purpose: "shown" }), given.takenOff);
  const reading = less(rule.differ(series, { ...use, purpose: "reading" }), given.takenOff);
  if (shown === null || reading === null) return null;
  const before = rule.spread("baseline", series, use);
  const smallestDetectableChange = detectableChange(given, before.mean, () =>
    rule.smallestChange(series, reading, use),
  );
  const margin =
    given.margin === null
      ? defaultMargin(
          before.mean,
          detectableChange(given, before.mean, () => rule.floor(series, use)),
          settings.similarMargin,
        )
      : given.margin(before.mean);
  const { low, high } = reading.interval;
  const { moreLoad } = use.metric;
  return {
    baseline: before,
    changed: rule.spread("changed", series, use),
    difference: reading.difference,
    percent: nearZero(before) ? null : (100 * reading.difference) / Math.abs(before.mean),
    interval: shown.interval,
    readingInterval: reading.interval,
    smallestDetectableChange,
    margin,
    noRiseBeyondMargin:
      moreLoad === "none" ? null : moreLoad === "higher" ? high < margin.value : low > -margin.value,
  };
}

/** Interval of the difference alone, for values that are shown and not read. */
export function shownDifference(
  series: OfBoth<readonly number[]>,
  use: Omit<IntervalUse, "purpose">,
  takenOff: number,
  rule: DifferenceRule,
): FoundDifference | null {
  if (series.baseline.length < 2 || series.changed.length < 2) return null;
  return less(rule.differ(series, { ...use, purpose: "shown" }), takenOff);
}

/** An interval moved. */
export function moveInterval({ low, high, level }: Interval, by: number): Interval {
  return { low: low + by, high: high + by, level };
}

function less(found: FoundDifference | null, takenOff: number): FoundDifference | null {
  if (found === null || takenOff === 0) return found;
  return { difference: found.difference - takenOff, interval: moveInterval(found.interval, -takenOff) };
}

/** Whether a difference as a share of the mean would tell nothing. */
function nearZero({ mean, sd }: MeanInterval): boolean {
  return mean === 0 || Math.abs(mean) < LEAST_MEAN_FOR_PERCENT * (sd ?? 0);
}

/** The larger of what more strides do not make smaller and a share of the baseline's mean. */
function defaultMargin(
  mean: number,
  floor: SmallestDetectableChange,
  share: number,
): SmallestDetectableChange {
  const value = share * Math.abs(mean);
  return floor.value > value
    ? floor
    : { value, source: `${Number((100 * share).toPrecision(4))} % of the baseline's mean, a judgement` };
}
