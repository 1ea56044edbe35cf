import type { Metric } from "../../metrics/index.js";
import {
  type RandomEffectsMean,
  randomEffectsMean,
  standardDeviation,
  studentTQuantile,
} from "../../statistics/index.js";
import { fail } from "../../units/index.js";
import type { SmallestDetectableChange } from "../comparison.js";
import type { RunnersSettings } from "./options.js";
import type { Runners } from "./requireRunners.js";
import { type RunnerMean, type RunnerMeans, varianceByStrides, varianceOfTrials } from "./runnerMeans.js";
import type { RunnersCondition, RunnersValues } from "./runnersComparison.js";

/**
 * Sets the runners' means of both conditions against each other; `null` with fewer than two runners (in each group).
 *
 * Pairs: {@link randomEffectsMean} of the runners' changes, each with the variance that its strides and trials leave.
 * Independent groups: the same of the means of each group, their difference with Welch's degrees of freedom from runners.
 *
 * @param unit - That of the means.
 * @param marginMean - Baseline's mean that a margin in `unit` was given for; `null` where that is this one.
 */
export function runnersValues(
  metric: Metric,
  means: RunnerMeans,
  design: Runners["design"],
  unit: string,
  settings: RunnersSettings,
  marginMean: number | null,
): RunnersValues | null {
  const { baseline, changed } = means;
  if (Math.min(baseline.length, changed.length) < 2) return null;
  const trialVariance = varianceOfTrials(means);
  const variance = (of: RunnerMean) => varianceByStrides(of) + (trialVariance ?? 0) / of.trials.length;
  const found = design === "paired" ? ofPairs(means, variance) : ofGroups(means, variance);
  const around = (level: number) => {
    const { difference, standardError, degreesOfFreedom } = found;
    const reach =
      standardError === 0 ? 0 : studentTQuantile((1 + level) / 2, degreesOfFreedom) * standardError;
    return { low: difference - reach, high: difference + reach, level };
  };
  const readingInterval = around(settings.readingLevel);
  const before = found.baseline.mean;
  const margin = marginOf(metric, unit, before, settings, marginMean);
  const oneSign = before !== 0 && baseline.every((one) => one.mean > 0 === before > 0 && one.mean !== 0);
  const { low, high } = readingInterval;
  return {
    baseline: found.baseline,
    changed: found.changed,
    difference: found.difference,
    percent: oneSign ? (100 * found.difference) / Math.abs(before) : null,
    interval: around(settings.shownLevel),
    readingInterval,
    degreesOfFreedom: found.degreesOfFreedom,
    betweenRunners: found.betweenRunners,
    betweenTrials: trialVariance === null ? null : Math.sqrt(trialVariance),
    margin,
    noRiseBeyondMargin:
      metric.moreLoad === "none"
        ? null
        : metric.moreLoad === "higher"
          ? high < margin.value
          : low > -margin.value,
  };
}

interface Found {
  readonly baseline: RunnersCondition;
  readonly changed: RunnersCondition;
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly betweenRunners: number;
}

type Variance = (of: RunnerMean) => number;

function ofPairs({ baseline, changed }: RunnerMeans, variance: Variance): Found {
  const changes = changed.map((after, k) => after.mean - (baseline[k] as RunnerMean).mean);
  const variances = changed.map((after, k) => variance(after) + variance(baseline[k] as RunnerMean));
  const all = randomEffectsMean(changes, variances);
  return {
    baseline: conditionOf(baseline, all),
    changed: conditionOf(changed, all),
    difference: all.mean,
    standardError: all.standardError,
    degreesOfFreedom: all.degreesOfFreedom,
    betweenRunners: Math.sqrt(all.betweenVariance),
  };
}

function ofGroups({ baseline, changed }: RunnerMeans, variance: Variance): Found {
  const [before, after] = [baseline, changed].map((group) =>
    randomEffectsMean(
      group.map((one) => one.mean),
      group.map(variance),
    ),
  ) as [RandomEffectsMean, RandomEffectsMean];
  const [v1, v2] = [before.standardError ** 2, after.standardError ** 2];
  const all = v1 + v2;
  const [df1, df2] = [before.degreesOfFreedom, after.degreesOfFreedom];
  return {
    baseline: conditionOf(baseline, before),
    changed: conditionOf(changed, after),
    difference: after.mean - before.mean,
    standardError: Math.sqrt(all),
    degreesOfFreedom: all === 0 ? df1 + df2 : 1 / ((v1 / all) ** 2 / df1 + (v2 / all) ** 2 / df2),
    betweenRunners: Math.sqrt((df1 * before.betweenVariance + df2 * after.betweenVariance) / (df1 + df2)),
  };
}

/** Each runner counted as in the difference, so that the means of both conditions differ by it. */
function conditionOf(runners: readonly RunnerMean[], { shares }: RandomEffectsMean): RunnersCondition {
  const means = runners.map((one) => one.mean);
  return {
    runners: runners.length,
    mean: means.reduce((sum, own, k) => sum + (shares[k] as number) * own, 0),
    sd: means.length < 2 ? null : standardDeviation(means),
  };
}

function marginOf(
  metric: Metric,
  unit: string,
  baselineMean: number,
  { margins, similarMargin }: RunnersSettings,
  marginMean: number | null,
): SmallestDetectableChange {
  const given = Object.hasOwn(margins, metric.id) ? margins[metric.id] : undefined;
  if (given === undefined) {
    return {
      value: similarMargin * Math.abs(baselineMean),
      source: `${Number((100 * similarMargin).toPrecision(4))} % of the baseline's mean, a judgement`,
    };
  }
  const { value, source } = given;
  if (given.unit === "%") return { value: (value / 100) * Math.abs(baselineMean), source };
  if (marginMean !== null) {
    return { value: marginMean === 0 ? 0 : value * Math.abs(baselineMean / marginMean), source };
  }
  if (given.unit === unit) return { value, source };
  return fail(
    "unit-mismatch",
    `margins.${metric.id} is in ${given.unit}; over these runners it is compared in ${unit}: give it in that, or in %`,
    { argument: `margins.${metric.id}`, values: { given: given.unit, allowed: [unit, "%"] } },
  );
}
