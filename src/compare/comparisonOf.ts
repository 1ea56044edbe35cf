import type { Metric } from "../metrics/index.js";
import { effectiveNumberOf } from "../statistics/index.js";
import { LEAST_SHARE_OF_CONTACTS, type Trial } from "../trial/index.js";
import { VERSION } from "../units/index.js";
import { absenceOf } from "./absenceOf.js";
import { alternativesFor } from "./alternatives/alternativesFor.js";
import { compareMetric, type MetricPair } from "./compareMetric.js";
import type {
  ComparedTrial,
  Comparison,
  ComparisonDesign,
  ComparisonSettings,
  ComponentName,
} from "./comparison.js";
import { comparisonCautions } from "./comparisonCautions.js";
import { contactsLost } from "./contactsLost.js";
import { describeComponent } from "./describeComponent.js";
import type { DifferenceRule } from "./differenceRule.js";
import { gaitUnread } from "./gaitUnread.js";
import { type Obstacle, scalesApart, together } from "./obstacles.js";
import { oneFootOnly } from "./oneFootOnly.js";
import {
  CORRELATED_ABOVE,
  LEAST_MEAN_FOR_PERCENT,
  MASS_RATIO_TOLERANCE,
  READING_CORRELATION,
  type Settings,
  SLOW_DRIFT_SHARE,
  SMALLEST_DETECTABLE_SHARE,
  THIRDS_LEVEL,
} from "./options.js";
import type { RisenMetric } from "./overallSentence.js";
import { type ComponentState, readPrimary } from "./readComponent.js";
import { readOverall } from "./readOverall.js";
import { readWork } from "./readWork.js";
import { type CalledTrial, sameData } from "./sameData.js";
import { speedObstacle } from "./speedObstacle.js";
import type { OfBoth, PairedTrial, StrideSeries } from "./strideSeries.js";
import { type TrialDifference, trialDifferences } from "./trialDifferences.js";
import { forceOf, listed, sentence } from "./wording.js";

const COMPONENTS: readonly ComponentName[] = ["vertical", "anteroposterior", "mediolateral"];

/** What a comparison is made from; designs differ in it. */
export interface ComparisonParts {
  readonly trials: OfBoth<PairedTrial>;
  /** What was recorded of each, in its order. */
  readonly recorded: OfBoth<readonly Trial[]>;
  /** Stride values of a metric in both conditions. */
  readonly seriesOf: (metric: Metric) => OfBoth<StrideSeries>;
  readonly rule: DifferenceRule;
  readonly design: ComparisonDesign;
  /** How intervals are made, in words. */
  readonly interval: string;
  /** In what else than the technique the trials differ; where left out, that of the two trials. */
  readonly differences?: readonly TrialDifference[];
  /** What stands in the way of reading a metric, `null` for work; where left out, that of the two trials. */
  readonly obstacleOf?: (pair: MetricPair | null) => Obstacle | null;
}

/** Puts a comparison together. */
export function comparisonOf(parts: ComparisonParts, settings: Settings): Comparison {
  const { trials, seriesOf, rule, design, interval } = parts;
  const [baseline, changed] = [trials.baseline.trial, trials.changed.trial];
  const pairs = settings.metrics.map((metric) =>
    compareMetric(metric, trials, seriesOf(metric), settings, rule),
  );
  const obstacleOf =
    parts.obstacleOf ?? ((pair) => together(obstaclesBetween(baseline, changed, settings, pair)));
  const states = COMPONENTS.map((component): ComponentState => {
    const pair = primaryOf(pairs, (metric) => metric.component === component);
    if (pair === null || pair.reason?.code === "not-in-both")
      return { component, primary: null, absence: absenceOf(component, pair, trials) };
    const series = { baseline: pair.baseline.values, changed: pair.changed.values };
    const what = forceOf([component]);
    const primary = readPrimary(pair, pair.comparison, series, what, obstacleOf(pair), settings, rule);
    return { component, primary, absence: null };
  });
  const differences = parts.differences ?? trialDifferences(baseline, changed, settings);
  const aside = asideOf(differences);
  const work = primaryOf(pairs, ({ family }) => family === "work");
  const primaries = states.flatMap(({ primary }) => (primary === null ? [] : [primary.pair]));
  const same = sameData(calledTrials(parts.recorded), settings.metrics);
  const asides = [...same.map(({ message }) => sentence(message)), aside, speedTakenOff(pairs)]
    .filter((sentence) => sentence !== "")
    .join(" ");
  const overall = readOverall(states, risenMetrics(pairs), asides);
  return {
    schema: "gait-kinetics/comparison/1",
    settings: settingsSaid(trials, design, interval, settings),
    baseline: comparedTrial(
      baseline,
      primaries.map((pair) => pair.baseline),
    ),
    changed: comparedTrial(
      changed,
      primaries.map((pair) => pair.changed),
    ),
    metrics: pairs.flatMap(({ comparison }) => comparison ?? []),
    notCompared: pairs.flatMap(({ reason }) => reason ?? []),
    components: states.map(describeComponent),
    overall,
    work: readWork(work, trials, obstacleOf(null), aside, settings, rule),
    alternatives: alternativesFor({ baseline, changed }, overall.reading, overall.higher),
    cautions: [...same, ...comparisonCautions({ trials, design, pairs, primaries, differences }, settings)],
  };
}

/** "changed trial 2"; without a number where there is one of the condition. */
function calledTrials({ baseline, changed }: OfBoth<readonly Trial[]>): CalledTrial[] {
  const called = (name: string, trials: readonly Trial[]) =>
    trials.map((trial, k) => ({ name: trials.length === 1 ? name : `${name} ${k + 1}`, trial }));
  return [...called("baseline trial", baseline), ...called("changed trial", changed)];
}

/** What stands between two trials, of one metric or, `null`, of work. */
export function obstaclesBetween(
  baseline: Trial,
  changed: Trial,
  settings: Settings,
  pair: MetricPair | null,
): readonly (Obstacle | null)[] {
  return [
    gaitUnread(baseline, changed),
    oneFootOnly(baseline, changed),
    contactsLost(baseline, changed),
    speedObstacle(baseline, changed, settings, pair),
    scalesApart(baseline, changed),
  ];
}

function settingsSaid(
  trials: OfBoth<PairedTrial>,
  design: ComparisonDesign,
  interval: string,
  settings: Settings,
): ComparisonSettings {
  const [one, other] = [trials.baseline.trial.settings, trials.changed.trial.settings];
  return {
    version: VERSION,
    design,
    method: settings.method,
    bootstrap: { resamples: settings.resamples, seed: settings.seed },
    shownLevel: settings.shownLevel,
    readingLevel: settings.readingLevel,
    interval,
    readingCorrelation: READING_CORRELATION,
    leastShareOfContacts: LEAST_SHARE_OF_CONTACTS,
    minimumStrides: settings.minimumStrides,
    minimumStridesCorrelated: settings.minimumStridesCorrelated,
    correlatedAbove: CORRELATED_ABOVE,
    smallestDetectableShare: SMALLEST_DETECTABLE_SHARE,
    slowDriftShare: SLOW_DRIFT_SHARE,
    thirdsLevel: THIRDS_LEVEL,
    similarMargin: settings.similarMargin,
    speedTolerance: settings.speedTolerance,
    speedEffect: settings.speedEffect,
    massRatioTolerance: MASS_RATIO_TOLERANCE,
    leastMeanForPercent: LEAST_MEAN_FOR_PERCENT,
    threshold: one.events.threshold === other.events.threshold ? one.events.threshold : null,
    filter: one.filter,
  };
}

/** The metric that speaks for a component or for work. */
function primaryOf(pairs: readonly MetricPair[], speaksFor: (metric: Metric) => boolean): MetricPair | null {
  return pairs.find(({ metric }) => metric.primary === true && speaksFor(metric)) ?? null;
}

/** Secondary metrics of which the shown interval lies on the side of more load. */
function risenMetrics(pairs: readonly MetricPair[]): RisenMetric[] {
  return pairs.flatMap(({ metric, comparison }) => {
    if (comparison === null || metric.primary === true || metric.moreLoad === "none") return [];
    const { low, high } = comparison.interval;
    const risen = metric.moreLoad === "higher" ? low > 0 : high < 0;
    return risen ? [{ metric, comparison }] : [];
  });
}

/** That differences are not those of the means alone is part of the answer. */
function speedTakenOff(pairs: readonly MetricPair[]): string {
  const those = pairs.filter(({ comparison }) => comparison?.speedAlone?.takenOff === true);
  return those.length === 0
    ? ""
    : `What the difference in speed alone does in other runners was taken off: ${listed(those.map(({ metric }) => metric.name))}.`;
}

/** What differs beside the technique and could have moved the load as well. */
function asideOf(differences: readonly TrialDifference[]): string {
  const asides = differences.flatMap(({ aside }) => aside ?? []);
  return asides.length === 0 ? "" : `The trials differ in more than the technique: ${asides.join("; ")}.`;
}

function comparedTrial({ settings, summary }: Trial, primaries: readonly StrideSeries[]): ComparedTrial {
  const effective = primaries.flatMap(({ values }) => (values.length < 2 ? [] : [effectiveNumberOf(values)]));
  return {
    strides: summary.strides,
    effectiveStrides: Math.min(summary.strides, ...effective),
    speed: settings.speed,
    mass: settings.mass,
    massByForce: settings.massByForce,
    threshold: settings.events.threshold,
  };
}
