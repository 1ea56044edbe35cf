import type { Metric } from "../../metrics/index.js";
import {
  effectiveNumberOf,
  groupedDifference,
  type Interval,
  mean,
  standardDeviation,
} from "../../statistics/index.js";
import { LEAST_SHARE_OF_CONTACTS } from "../../trial/index.js";
import { type OfBoth, type PairedTrial, strideSeries } from "../strideSeries.js";
import type { RunnerCell, Runners } from "./requireRunners.js";

/** In which unit a metric is compared over runners. */
export type Scale = "own" | "normalised";

/** A runner's mean in one condition and what it is made of. */
export interface RunnerMean {
  readonly runner: string;
  /** Of trial means. */
  readonly mean: number;
  /** Stride values, one list a trial. */
  readonly trials: readonly (readonly number[])[];
}

/** Runners' means of a metric; runners without it, of pairs in either condition, are left out and named. */
export interface RunnerMeans extends OfBoth<readonly RunnerMean[]> {
  readonly leftOut: readonly string[];
}

/** Whether every trial has the metric's normalised values. */
export function scaleOf(metric: Metric, { baseline, changed }: Runners): Scale {
  if (metric.normalised === undefined) return "own";
  const trials = [...baseline, ...changed].flatMap((cell) => cell.trials);
  const having = trials.map((trial) => strideSeries(trial, metric)).filter(({ values }) => values.length > 0);
  return having.length > 0 && having.every(({ values, normalised }) => normalised.length === values.length)
    ? "normalised"
    : "own";
}

/** Forms the means of all runners. */
export function runnerMeans(
  metric: Metric,
  runners: Runners,
  per: "step" | "kilometre",
  scale: Scale,
): RunnerMeans {
  const meansOf = (cells: readonly RunnerCell[]) =>
    cells.map((cell): RunnerMean | null => {
      const trials = cell.trials.map((trial) => valuesOf(trial, metric, per, scale));
      const known = trials.filter((values) => values !== null);
      if (known.length < trials.length) return null;
      return { runner: cell.runner, mean: mean(known.map((values) => mean(values))), trials: known };
    });
  const [before, after] = [meansOf(runners.baseline), meansOf(runners.changed)];
  const lacks = (cells: readonly RunnerCell[], means: readonly (RunnerMean | null)[]) =>
    cells.filter((_, k) => means[k] === null).map(({ runner }) => runner);
  const leftOut = [...new Set([...lacks(runners.baseline, before), ...lacks(runners.changed, after)])];
  const kept = (means: readonly (RunnerMean | null)[]) =>
    means.filter((own) => own !== null).filter(({ runner }) => !leftOut.includes(runner));
  return { baseline: kept(before), changed: kept(after), leftOut };
}

/** `null` where too few contacts have it, or fewer than two strides. */
function valuesOf(
  trial: PairedTrial,
  metric: Metric,
  per: "step" | "kilometre",
  scale: Scale,
): readonly number[] | null {
  const { values, perMetre, normalised, contacts } = strideSeries(trial, metric);
  if (contacts.share < LEAST_SHARE_OF_CONTACTS) return null;
  const found = per === "kilometre" ? perKilometre() : scale === "normalised" ? normalised : values;
  return found.length < 2 ? null : found;

  function perKilometre(): readonly number[] {
    const { mass, gravity } = trial.trial.settings;
    const divisor =
      scale === "own" ? 1 : (mass ?? 0) * (metric.normalised?.by === "body weight" ? gravity : 1);
    return divisor > 0 ? perMetre.map((value) => (1000 * value) / divisor) : [];
  }
}

/** Variance of a runner's mean by the strides of the trials alone: Σ vⱼ/k². */
export function varianceByStrides({ trials }: RunnerMean): number {
  return trials.reduce((sum, values) => sum + ofMean(values) / trials.length ** 2, 0);
}

function ofMean(values: readonly number[]): number {
  return standardDeviation(values) ** 2 / Math.max(1, effectiveNumberOf(values, { correctBias: true }));
}

/**
 * Variance of a trial's true mean about its runner's, pooled over runners and conditions: the mean square of trial means less
 * what strides explain of it, 0 or more; `null` where no runner has two trials of a condition.
 */
export function varianceOfTrials(means: RunnerMeans): number | null {
  let squares = 0;
  let byStrides = 0;
  let df = 0;
  for (const { mean: centre, trials } of [...means.baseline, ...means.changed]) {
    const k = trials.length;
    for (const values of trials) {
      if (k < 2) continue;
      squares += (mean(values) - centre) ** 2;
      byStrides += (ofMean(values) * (k - 1)) / k;
    }
    df += k - 1;
  }
  return df === 0 ? null : Math.max(0, (squares - byStrides) / df);
}

/** A runner's own interval of the difference, by the trials and strides of that runner alone. */
export function ownInterval(baseline: RunnerMean, changed: RunnerMean, level: number): Interval | null {
  return groupedDifference(changed.trials, baseline.trials, level).interval;
}
