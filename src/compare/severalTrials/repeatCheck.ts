import type { Metric } from "../../metrics/index.js";
import { compareMetric } from "../compareMetric.js";
import type { MetricComparison } from "../comparison.js";
import type { Settings } from "../options.js";
import { readDifference } from "../readDifference.js";
import { strideRule } from "../strideRule.js";
import { type OfBoth, type PairedTrial, strideSeries } from "../strideSeries.js";

/** Two trials of one condition set against each other: what moves without any change of technique. */
export interface RepeatCheck {
  readonly metric: Metric;
  /** Second less first. */
  readonly comparison: MetricComparison;
  /** Whether the rule of the strides would read it as a difference. */
  readonly counts: boolean;
}

/** Holds the second trial of a condition against its first, by the rule for one trial each, in metrics that speak. */
export function repeatCheck(first: PairedTrial, second: PairedTrial, settings: Settings): RepeatCheck[] {
  const trials: OfBoth<PairedTrial> = { baseline: first, changed: second };
  const rule = strideRule(settings);
  return settings.metrics.flatMap((metric) => {
    if (metric.primary !== true) return [];
    const series = { baseline: strideSeries(first, metric), changed: strideSeries(second, metric) };
    const { comparison } = compareMetric(metric, trials, series, settings, rule);
    if (comparison === null) return [];
    const reading = readDifference(comparison, metric.moreLoad);
    return [{ metric, comparison, counts: reading === "lower" || reading === "higher" }];
  });
}
