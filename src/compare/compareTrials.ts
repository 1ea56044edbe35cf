import type { Metric } from "../metrics/index.js";
import { effectiveNumberOf } from "../statistics/index.js";
import { LEAST_SHARE_OF_CONTACTS, type Trial } from "../trial/index.js";
import { type Caution, VERSION } from "../units/index.js";
import { absenceOf } from "./absenceOf.js";
import { compareMetric, type MetricPair } from "./compareMetric.js";
import type { ComparedTrial, Comparison, ComponentName } from "./comparison.js";
import { contactsLost } from "./contactsLost.js";
import { describeComponent } from "./describeComponent.js";
import { gaitUnread } from "./gaitUnread.js";
import { scalesApart, speedsApart, together } from "./obstacles.js";
import { oneFootOnly } from "./oneFootOnly.js";
import {
  CORRELATED_ABOVE,
  type CompareTrialsOptions,
  LEAST_MEAN_FOR_PERCENT,
  MASS_RATIO_TOLERANCE,
  READING_CORRELATION,
  type Settings,
  SMALLEST_DETECTABLE_SHARE,
} from "./options.js";
import type { RisenMetric } from "./overallSentence.js";
import { type ComponentState, readPrimary } from "./readComponent.js";
import { readOverall } from "./readOverall.js";
import { readWork } from "./readWork.js";
import { requireComparable } from "./requireComparable.js";
import { settingsOf } from "./settingsOf.js";
import { paired, type StrideSeries, strideSeries } from "./strideSeries.js";
import { type TrialDifference, trialDifferences } from "./trialDifferences.js";
import { forceOf } from "./wording.js";

const COMPONENTS: readonly ComponentName[] = ["vertical", "anteroposterior", "mediolateral"];

/**
 * Compares two trials of one runner: what a change did to every component of the force, to the load as a whole, and to
 * the mechanical work, each with its uncertainty.
 *
 * Formula: stride values (mean of two successive contacts) of both trials; changed − baseline with Student's t interval,
 * Welch's degrees of freedom and the effective number of strides n (1 − r₁)/(1 + r₁), for readings with r₁ freed of its
 * bias in short series ({@link READING_CORRELATION}). A component's primary metric reads
 * `lower` or `higher` where the 99 % interval lies on one side of zero and the difference exceeds the smallest detectable
 * change; `similar` where that interval lies inside the margin (the larger of the smallest detectable change and 10 % of
 * the baseline's mean); else `unsettled`. Fewer than 20 strides with it (40 where r₁ exceeds 0.5), speeds more than
 * 2 % apart, forces on different scales (mass by force ÷ stated mass more than 1 % apart, where both are stated), one foot
 * alone, or more than 5 % of a trial's contacts left out as several in one, or missed, leave it `unsettled` whatever the
 * numbers. Per kilometre: each stride's value ÷ (speed × its mean step time) × 1000, by the
 * same rule; the answer names every component that reads otherwise there. The load as a whole: `shifted`, `reduced`,
 * `raised`, `unsettled` or `no clear change`, by the readings per step, of which `reduced` alone needs proof for every
 * recorded component, per kilometre too. Readings speak of load: `lower` of a metric that grows where the load falls is
 * a rise.
 * Units: each metric's own; percentages of the size of the baseline's mean, `null` where that is within
 * {@link LEAST_MEAN_FOR_PERCENT} standard deviations between strides of zero.
 * Limits: strides cannot show how much a runner varies from trial to trial: record the baseline again after the change
 * (A–B–A), or give sourced smallest detectable changes. Another slope, surface or mass is no obstacle; the answer says
 * it. In short series the shown intervals are somewhat too narrow.
 * A secondary metric that rose is named by its 95 % interval alone, of which one in forty does so by chance. Trials
 * analysed with different filters are refused; different thresholds are a `Caution`: analyse both with the larger.
 * Source: Student's t and Welch's form; effective number after Zwiers & von Storch 1995, J. Climate 8:336, from memory;
 * the readings and their limits are judgements, exported one by one.
 * @param baseline - The usual technique, as `analyseTrial` gives it.
 * @param changed - The changed one, analysed with the same filter and threshold.
 * @param options - {@link COMPARE_TRIALS_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-comparable`: different filters; `wrong-type`: no trial, or an option of another kind, such
 *   as ids in place of metrics; `out-of-range`, `not-finite`,
 *   `unit-mismatch`, `missing-value`, `unknown-option`: an option outside what it allows.
 * @example
 * compareTrials(baseline, baseline).overall.reading // "no clear change"
 */
export function compareTrials(
  baseline: Trial,
  changed: Trial,
  options: CompareTrialsOptions = {},
): Comparison {
  const settings = settingsOf(options);
  requireComparable(baseline, changed);
  const trials = { baseline: paired(baseline), changed: paired(changed) };
  const pairs = settings.metrics.map((metric) =>
    compareMetric(
      metric,
      trials,
      { baseline: strideSeries(trials.baseline, metric), changed: strideSeries(trials.changed, metric) },
      settings,
    ),
  );
  const obstacle = together([
    gaitUnread(baseline, changed),
    oneFootOnly(baseline, changed),
    contactsLost(baseline, changed),
    speedsApart(baseline, changed, settings),
    scalesApart(baseline, changed),
  ]);
  const states = COMPONENTS.map((component): ComponentState => {
    const pair = primaryOf(pairs, (metric) => metric.component === component);
    if (pair === null || pair.reason?.code === "not-in-both")
      return { component, primary: null, absence: absenceOf(component, pair, trials) };
    const series = { baseline: pair.baseline.values, changed: pair.changed.values };
    const primary = readPrimary(pair, pair.comparison, series, forceOf([component]), obstacle, settings);
    return { component, primary, absence: null };
  });
  const differences = trialDifferences(baseline, changed, settings);
  const aside = asideOf(differences);
  const work = primaryOf(pairs, ({ family }) => family === "work");
  const primaries = states.flatMap(({ primary }) => (primary === null ? [] : [primary.pair]));
  return {
    schema: "gait-kinetics/comparison/1",
    settings: {
      version: VERSION,
      shownLevel: settings.shownLevel,
      readingLevel: settings.readingLevel,
      interval:
        "Student's t with Welch's degrees of freedom and the effective number of strides; for readings, their correlation freed of its bias in short series, the larger of both trials for both",
      readingCorrelation: READING_CORRELATION,
      leastShareOfContacts: LEAST_SHARE_OF_CONTACTS,
      minimumStrides: settings.minimumStrides,
      minimumStridesCorrelated: settings.minimumStridesCorrelated,
      correlatedAbove: CORRELATED_ABOVE,
      smallestDetectableShare: SMALLEST_DETECTABLE_SHARE,
      similarMargin: settings.similarMargin,
      speedTolerance: settings.speedTolerance,
      massRatioTolerance: MASS_RATIO_TOLERANCE,
      leastMeanForPercent: LEAST_MEAN_FOR_PERCENT,
      threshold:
        baseline.settings.events.threshold === changed.settings.events.threshold
          ? baseline.settings.events.threshold
          : null,
      filter: baseline.settings.filter,
    },
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
    overall: readOverall(states, risenMetrics(pairs), aside),
    work: readWork(work, trials, obstacle, aside, settings),
    cautions: [
      ...trialToTrialCaution(primaries, settings),
      ...differences.map(({ caution }) => caution),
      ...trialCautions(baseline, changed),
    ],
  };
}

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

function trialToTrialCaution(primaries: readonly MetricPair[], settings: Settings): Caution[] {
  const own = primaries.filter(({ metric }) => !Object.hasOwn(settings.smallestDetectableChange, metric.id));
  if (own.length === 0) return [];
  return [
    {
      code: "only-two-recordings",
      message: `only these two recordings were compared: ${SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides stands in for the variation from trial to trial, which strides cannot show; record the baseline again after the change, or give a sourced smallest detectable change`,
      where: own.map(({ metric }) => metric.id).join(", "),
      values: { share: SMALLEST_DETECTABLE_SHARE },
    },
  ];
}

/** The trials' own cautions with the trial they are of; what both say alike is said once. */
function trialCautions(baseline: Trial, changed: Trial): Caution[] {
  const same = (one: Caution, other: Caution) =>
    one.code === other.code && one.message === other.message && one.where === other.where;
  const of = (trial: string, caution: Caution): Caution => ({
    ...caution,
    where: caution.where === undefined ? trial : `${trial}, ${caution.where}`,
  });
  return [
    ...baseline.cautions.map((one) =>
      of(changed.cautions.some((other) => same(one, other)) ? "both trials" : "baseline", one),
    ),
    ...changed.cautions
      .filter((one) => !baseline.cautions.some((other) => same(one, other)))
      .map((one) => of("changed", one)),
  ];
}
