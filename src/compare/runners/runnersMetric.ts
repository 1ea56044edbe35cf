import type { Metric } from "../../metrics/index.js";
import { hedgesG, pairedEffectSizes } from "../../statistics/index.js";
import type { NotComputed } from "../../trial/index.js";
import { NOT_ANALYSED } from "../whyAbsent.js";
import type { RunnersSettings } from "./options.js";
import type { Runners } from "./requireRunners.js";
import { ownInterval, type RunnerMean, type RunnerMeans, runnerMeans, scaleOf } from "./runnerMeans.js";
import type { RunnersMetric } from "./runnersComparison.js";
import { runnersValues } from "./runnersValues.js";

/** A metric over the runners, or why it is not there. */
export interface ComparedMetric {
  readonly metric: Metric;
  readonly found: RunnersMetric | null;
  readonly reason: NotComputed | null;
  /** Runners without it. */
  readonly leftOut: readonly string[];
  /** It has a normalised unit, and some trial lacks what it is divided by. */
  readonly notNormalised: boolean;
}

/** Compares one metric over the runners, per step and per kilometre. */
export function runnersMetric(metric: Metric, runners: Runners, settings: RunnersSettings): ComparedMetric {
  const scale = scaleOf(metric, runners);
  const unit = scale === "normalised" ? (metric.normalised?.unit ?? metric.unit) : metric.unit;
  const means = runnerMeans(metric, runners, "step", scale);
  const values = runnersValues(metric, means, runners.design, unit, settings, null);
  const notNormalised = metric.normalised !== undefined && scale === "own";
  if (values === null) {
    const reason = { id: metric.id, ...whyNot(metric, means, runners) };
    return { metric, found: null, reason, leftOut: means.leftOut, notNormalised: false };
  }
  // A value per mass and distance is per distance already.
  const counts =
    metric.perKilometre === true &&
    !(scale === "normalised" && metric.normalised?.by === "mass and distance");
  const kilometre = counts ? runnerMeans(metric, runners, "kilometre", scale) : null;
  // Per kilometre of other runners than per step would be another group.
  const perKilometre =
    kilometre === null || kilometre.leftOut.length > means.leftOut.length
      ? null
      : runnersValues(metric, kilometre, runners.design, unit, settings, values.baseline.mean);
  return {
    metric,
    reason: null,
    leftOut: means.leftOut,
    notNormalised,
    found: {
      id: metric.id,
      unit,
      ...values,
      effectSize: effectSizeOf(means, runners.design),
      runners: runners.design === "paired" ? differencesOf(means, settings.shownLevel) : [],
      ...(perKilometre !== null && { perKilometre }),
    },
  };
}

function differencesOf({ baseline, changed }: RunnerMeans, level: number): RunnersMetric["runners"] {
  return changed.map((after, k) => {
    const before = baseline[k] as RunnerMean;
    return {
      runner: after.runner,
      difference: after.mean - before.mean,
      interval: ownInterval(before, after, level),
    };
  });
}

function effectSizeOf({ baseline, changed }: RunnerMeans, design: Runners["design"]): number | null {
  const of = (means: readonly RunnerMean[]) => means.map(({ mean }) => mean);
  return design === "paired"
    ? pairedEffectSizes(of(changed), of(baseline)).dav
    : hedgesG(of(changed), of(baseline));
}

function whyNot(
  metric: Metric,
  { baseline, changed }: RunnerMeans,
  runners: Runners,
): { readonly code: string; readonly message: string } {
  const trials = [...runners.baseline, ...runners.changed].flatMap((cell) => cell.trials);
  const lacking = trials.filter(({ trial }) =>
    trial.steps.every(({ values }) => (values[metric.id] ?? null) === null),
  );
  const whys = new Set(
    lacking.map(({ trial }) => trial.notComputed.find(({ id }) => id === metric.id)?.message ?? NOT_ANALYSED),
  );
  if (lacking.length === trials.length)
    return { code: "not-in-both", message: `no trial has it (${[...whys].join("; ")})` };
  const why =
    whys.size === 0 ? "too few contacts or strides with it in the other trials" : [...whys].join("; ");
  return {
    code: "too-few-runners",
    message:
      runners.design === "paired"
        ? `${baseline.length} of ${runners.baseline.length} runners have it in all their trials (${why}); two are needed`
        : `${baseline.length} and ${changed.length} runners have it in all their trials (${why}); two of each group are needed`,
  };
}
