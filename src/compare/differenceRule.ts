import type { Metric } from "../metrics/index.js";
import type { Interval, MeanInterval } from "../statistics/index.js";
import type { ComparedValues, Drift, SmallestDetectableChange } from "./comparison.js";
import type { OfBoth } from "./strideSeries.js";

/** What an interval is made for. */
export interface IntervalUse {
  readonly metric: Metric;
  readonly per: "step" | "kilometre" | "metre" | "normalised";
  readonly purpose: "shown" | "reading";
}

/** A difference, changed − baseline, with its interval. */
export interface FoundDifference {
  readonly difference: number;
  readonly interval: Interval;
}

/**
 * How differences are made and what they must exceed. One trial each takes all of it from strides; other designs take the
 * variation from trial to trial from their trials.
 */
export interface DifferenceRule {
  /** `null` where there is no interval. */
  readonly differ: (series: OfBoth<readonly number[]>, use: IntervalUse) => FoundDifference | null;
  /** At the reading level by the method that readings do not take; `null` where there is none. */
  readonly otherMethod: (series: OfBoth<readonly number[]>) => Interval | null;
  /** Mean and spread of one condition, with the interval that is shown. */
  readonly spread: (
    which: keyof OfBoth<unknown>,
    series: OfBoth<readonly number[]>,
    use: Omit<IntervalUse, "purpose">,
  ) => MeanInterval;
  /** What a margin is made of where no change is given: the part that more strides do not make smaller. */
  readonly floor: (
    series: OfBoth<readonly number[]>,
    use: Omit<IntervalUse, "purpose">,
  ) => SmallestDetectableChange;
  /** What a difference must exceed where no change is given, from its interval for readings. */
  readonly smallestChange: (
    series: OfBoth<readonly number[]>,
    found: FoundDifference,
    use: Omit<IntervalUse, "purpose">,
  ) => SmallestDetectableChange;
  /** Within each trial; `null` where the series are not of one trial each. `floor` as that of the metric. */
  readonly drift: (
    series: OfBoth<readonly number[]>,
    floor: number,
  ) => { readonly baseline: Drift; readonly changed: Drift } | null;
  /** What would settle an unsettled difference, as a sentence's part. */
  readonly advice: (what: string, series: OfBoth<readonly number[]>, values: ComparedValues) => string;
}
