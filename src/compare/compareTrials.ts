import type { Trial } from "../trial/index.js";
import type { Comparison } from "./comparison.js";
import { comparisonOf } from "./comparisonOf.js";
import type { CompareTrialsOptions } from "./options.js";
import { requireComparable } from "./requireComparable.js";
import { settingsOf } from "./settingsOf.js";
import { compareTrialSets } from "./severalTrials/compareTrialSets.js";
import { strideRule } from "./strideRule.js";
import { paired, strideSeries } from "./strideSeries.js";

/**
 * Compares two conditions of one runner, one trial of each or several: what a change did to every component of the force,
 * to the load as a whole, and to the mechanical work, each with its uncertainty.
 *
 * Formula: stride values (mean of two successive contacts) of both trials; changed − baseline with Student's t interval,
 * Welch's degrees of freedom and the effective number of strides n (1 − r₁)/(1 + r₁), for readings with r₁ freed of its
 * bias in short series ({@link READING_CORRELATION}). A component's primary metric reads
 * `lower` or `higher` where the 99 % interval lies on one side of zero and the difference exceeds the smallest detectable
 * change; `similar` where that interval lies inside the margin; else `unsettled`. Where nobody measured the smallest
 * detectable change it is the largest of 0.8 standard deviations between strides, 0.4 of them beyond the reach of the 99 %
 * interval, and what the thirds of one and the same trial differ by (Student's t, 4 degrees of freedom, 99 %); the margin
 * is the larger of 10 % of the baseline's mean and of the first of these alone, the 0.8 standard deviations, or the measured one. A
 * measured one with fewer than {@link LEAST_DEGREES_OF_FREEDOM} degrees of freedom counts where it is larger than what strides
 * ask for. With `method: "bootstrap"` a
 * studentised block bootstrap ({@link bootstrapDifference}) takes the place of Student's t in readings of primary metrics.
 * Fewer than 20 strides with it (40 where r₁ exceeds 0.5), speeds more than 2 % apart (unless `speedEffect` takes a known
 * effect of speed off the metric), forces on different scales (mass by force ÷ stated mass more than 1 % apart, where both are stated), one foot
 * alone, or more than 5 % of a trial's contacts left out as several in one, or missed, leave it `unsettled` whatever the
 * numbers. Per kilometre: each stride's value ÷ (speed × its mean step time) × 1000, by the
 * same rule; the answer names every component that reads otherwise there. The load as a whole: `shifted`, `reduced`,
 * `raised`, `unsettled` or `no clear change`, by the readings per step, of which `reduced` alone needs proof for every
 * recorded component, per kilometre too. Readings speak of load: `lower` of a metric that grows where the load falls is
 * a rise.
 * Units: each metric's own; percentages of the size of the baseline's mean, `null` where that is within
 * {@link LEAST_MEAN_FOR_PERCENT} standard deviations between strides of zero.
 * With several trials of a condition the variation from trial to trial comes from them; `settings.design` says how. Four
 * trials or more, or three and one: Student's t of the trial means, pooled ({@link groupedDifference}), and 1.96 of its standard errors as smallest
 * detectable change. Two and one (A–B–A): the single trial must lie beyond each of the two by the rule for one trial each, and from their mean by
 * 0.8 standard deviations of strides and 1.96 times what the two differ by; where the two already differ by what counts, in the direction of the
 * change, the component is not read.
 * Limits: with trials that vary by 0, 0.5, 1 and 2 standard deviations of strides and 40 strides each, of 100 components without a true change 0, 2.0, 8.8 and
 * 15 read lower or higher by A–B–A (one trial each: 0, 13, 42 and 67), and at most 1.3 with 2 + 2, 3 + 3 and 5 + 5 trials; a
 * change of 10 % is found, where trials vary by 0.5, in peak vertical force, braking and mediolateral impulse (stride SD 2.4, 5.6 and
 * 10 %) in 94, 43 and 15 of 100 by A–B–A, in 45, 14 and 4 with 2 + 2, 100, 49 and 13 with 3 + 3, 100, 94 and 47 with 5 + 5. With one trial each, of pairs without any true difference, at most 2.5 in a hundred name a component lower or higher, with strides
 * of first-order correlation (it falls off as r, r², r³ …) up to 0.6 that drift slowly by a line of half or a wave of a quarter of
 * their standard deviation; `docs/readings.md` holds the figures, and what larger drift and correlation that falls off more slowly do:
 * of second-order autoregressions 0.3, 0.4 and 0.2, 0.6 up to 7 and 19 in a hundred (20 strides), of fractional noise with d 0.3
 * some 10, with d 0.4 some 25. Strides cannot show how much a runner varies from trial
 * to trial: record the baseline again after the change (A–B–A), or give sourced smallest detectable changes. Another slope, surface or mass is no obstacle; the answer says
 * it; that both hold the same contacts it says too. In short series the shown intervals are somewhat too narrow.
 * A secondary metric that rose is named by its 95 % interval alone: about one in forty does so by chance, and more (3 to 8 in a
 * hundred, 15 to 25 with a line of half a standard deviation) where strides resemble each other or drift. Trials
 * analysed with different filters are refused; different thresholds are a `Caution`: analyse both with the larger.
 * Source: Student's t and Welch's form; effective number after Zwiers & von Storch 1995, J. Climate 8:336, from memory;
 * the readings and their limits are judgements, exported one by one.
 * @param baseline - The usual technique, as `analyseTrial` gives it; a list of several trials, in the order recorded, where
 *   it was recorded more than once, such as before and after the change (A–B–A).
 * @param changed - The changed one, analysed with the same filter and threshold.
 * @param options - {@link COMPARE_TRIALS_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-comparable`: different filters; `wrong-type`: no whole trial, or an option of another kind, such
 *   as ids in place of metrics; `too-short`, `conflict`: no trial in a list, or one that is there twice; `out-of-range`, `not-finite`,
 *   `unit-mismatch`, `missing-value`, `unknown-option`: an option outside what it allows.
 * @example
 * compareTrials(baseline, baseline).overall.reading // "no clear change"
 */
export function compareTrials(
  baseline: Trial | readonly Trial[],
  changed: Trial | readonly Trial[],
  options: CompareTrialsOptions = {},
): Comparison {
  if (isList(baseline) || isList(changed)) {
    const [before, after] = [listOf(baseline), listOf(changed)];
    if (before.length !== 1 || after.length !== 1) return compareTrialSets(before, after, options);
    return compareTwo(before[0] as Trial, after[0] as Trial, options);
  }
  return compareTwo(baseline, changed, options);
}

function isList(given: Trial | readonly Trial[]): given is readonly Trial[] {
  return Array.isArray(given);
}

function listOf(given: Trial | readonly Trial[]): readonly Trial[] {
  return isList(given) ? given : [given];
}

function compareTwo(baseline: Trial, changed: Trial, options: CompareTrialsOptions): Comparison {
  const settings = settingsOf(options);
  requireComparable(baseline, changed);
  const trials = { baseline: paired(baseline), changed: paired(changed) };
  return comparisonOf(
    {
      trials,
      recorded: { baseline: [baseline], changed: [changed] },
      seriesOf: (metric) => ({
        baseline: strideSeries(trials.baseline, metric),
        changed: strideSeries(trials.changed, metric),
      }),
      rule: strideRule(settings),
      design: {
        kind: "one trial each",
        baselineTrials: 1,
        changedTrials: 1,
        variation:
          "strides alone: what varies from trial to trial is stood in for by the smallest detectable change",
      },
      interval: `${SHOWN}; ${FOR_READINGS[settings.method]}`,
    },
    settings,
  );
}

const SHOWN = "Student's t with Welch's degrees of freedom and the effective number of strides";
const FOR_READINGS = {
  student:
    "for readings, their correlation freed of its bias in short series, the larger of both trials for both",
  bootstrap:
    "for readings of metrics that speak, a studentised circular block bootstrap, blocks of a length from the correlation of strides",
} as const;
