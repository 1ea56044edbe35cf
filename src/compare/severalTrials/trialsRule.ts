import {
  type GroupedDifference,
  groupedDifference,
  type Interval,
  type MeanInterval,
  mean,
  type SharedCorrelationOptions,
  studentTQuantile,
} from "../../statistics/index.js";
import type { ComparedValues, SmallestDetectableChange } from "../comparison.js";
import type { DifferenceRule, IntervalUse } from "../differenceRule.js";
import { READING_CORRELATION, type Settings } from "../options.js";
import type { OfBoth } from "../strideSeries.js";
import { pooledDeviation } from "./pooledDeviation.js";
import type { TrialGroups } from "./trialGroups.js";

type Groups = OfBoth<readonly (readonly number[])[]>;
type Use = Omit<IntervalUse, "purpose">;

/** Standard errors of the difference that it must exceed, as in a smallest detectable change at 95 %. */
const MULTIPLIER = 1.96;
/** Trials of each condition beyond which an estimate of how many would settle a difference is no advice. */
const MOST_TRIALS = 20;

/**
 * The rule where four trials or more, or three and one, tell how trials vary: two degrees of freedom or more.
 *
 * Intervals are {@link groupedDifference}'s: Student's of the trial means, or that of the strides where it is wider. Beside
 * them a difference must exceed 1.96 of its standard errors by the same spread of trials, which its interval always asks more than.
 * Whatever the trials vary by, at most 1.3 of 100 components without a true change read lower or higher (2 + 2, 3 + 3, 5 + 5 trials, 3600 components each).
 */
export function trialsRule(groupsOf: TrialGroups, settings: Settings): DifferenceRule {
  const { shownLevel, readingLevel } = settings;
  const change = (use: Use): SmallestDetectableChange => ({
    value: MULTIPLIER * standardError(groupsOf(use)),
    source: `${MULTIPLIER} standard errors of the difference by the spread of the trial means`,
  });
  return {
    differ: (_, use) => {
      const reading = use.purpose === "reading";
      const found = differenceOf(
        groupsOf(use),
        reading ? readingLevel : shownLevel,
        reading ? READING_CORRELATION : {},
      );
      return found === null || found.interval === null
        ? null
        : { difference: found.difference, interval: found.interval };
    },
    otherMethod: () => null,
    spread: (which, _, use) => spreadOf(which, groupsOf(use), shownLevel),
    floor: (_, use) => change(use),
    smallestChange: (_, __, use) => change(use),
    drift: () => null,
    advice: (what, _, values) => adviceFor(what, values, groupsOf.trials),
  };
}

/** `null` where a trial has no value. */
function differenceOf(
  { baseline, changed }: Groups,
  level: number,
  correlation: SharedCorrelationOptions,
): GroupedDifference | null {
  const empty = [...baseline, ...changed].some((values) => values.length === 0);
  return empty ? null : groupedDifference(changed, baseline, level, correlation);
}

/** Of the difference, by the spread of trial means about their condition's. */
function standardError(groups: Groups): number {
  const found = differenceOf(groups, 0.95, {});
  if (found === null || found.fromGroups === null) return 0;
  return halfWidth(found.fromGroups) / studentTQuantile(0.975, found.groupDegreesOfFreedom);
}

function halfWidth({ low, high }: Interval): number {
  return (high - low) / 2;
}

/** The mean of trial means, the spread of strides within trials, and the condition's part of the difference's interval. */
function spreadOf(which: keyof Groups, groups: Groups, level: number): MeanInterval {
  const own = groups[which];
  const n = own.reduce((sum, values) => sum + values.length, 0);
  const centre = mean(own.map((values) => mean(values)));
  const interval = differenceOf(groups, level, {})?.interval ?? null;
  const share = 1 / own.length / (1 / groups.baseline.length + 1 / groups.changed.length);
  const reach = interval === null ? 0 : halfWidth(interval) * Math.sqrt(share);
  return {
    n,
    mean: centre,
    sd: pooledDeviation(own),
    interval: interval === null ? null : { low: centre - reach, high: centre + reach, level },
  };
}

/** As many trials of each condition as would settle the difference, if it and the spread of trials stay as they are. */
function adviceFor(
  what: string,
  { difference, readingInterval, margin }: ComparedValues,
  { baseline, changed }: OfBoth<number>,
): string {
  const size = Math.abs(difference);
  const quantile = (df: number) => studentTQuantile((1 + readingInterval.level) / 2, df);
  const spread =
    halfWidth(readingInterval) / (quantile(baseline + changed - 2) * Math.sqrt(1 / baseline + 1 / changed));
  for (let k = Math.max(2, Math.min(baseline, changed) + 1); k <= MOST_TRIALS; k++) {
    const reach = quantile(2 * k - 2) * spread * Math.sqrt(2 / k);
    if (reach < size || reach < margin.value - size)
      return `about ${k} trials of each condition for ${what}, if its difference and the spread of trials stay as they are`;
  }
  return `trials that vary less for ${what}: its difference is small against how they vary, and more of them alone decide little`;
}
