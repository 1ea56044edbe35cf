import type { Comparison, Drift, MetricComparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { capitalised } from "./capitalised.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { intervalWords, levelWords } from "./intervalWords.js";
import { metricName } from "./metricName.js";

/** What one metric moves within either trial, in words. */
export interface DriftWords {
  readonly name: string;
  readonly unit: string;
  readonly baseline: string;
  readonly changed: string;
}

/** Says of each metric that speaks how much it moves within either trial from first stride to last. */
export function driftWords(
  { metrics: compared }: Comparison,
  metrics: readonly Metric[],
): readonly DriftWords[] {
  return compared.flatMap((metric) => {
    const { id, unit, drift } = metric;
    if (drift === undefined) return [];
    const name = capitalised(metricName(id, metrics));
    return [{ name, unit, baseline: words(drift.baseline, metric), changed: words(drift.changed, metric) }];
  });
}

/** The same, a sentence a metric. */
export function driftSentences(comparison: Comparison, metrics: readonly Metric[]): readonly string[] {
  const level = levelOf(comparison);
  return driftWords(comparison, metrics).map(({ name, unit, baseline, changed }) => {
    const of = unit === "1" ? name : `${name}, ${unit}`;
    return `${of}: ${baseline} within the baseline, ${changed} within the changed trial${level}.`;
  });
}

/** Of the intervals of drift: `, with 99 % intervals`; empty where there is none. */
function levelOf({ metrics }: Comparison): string {
  const interval = metrics.find(({ drift }) => drift?.baseline.interval)?.drift?.baseline.interval;
  return interval === undefined || interval === null ? "" : `, with ${levelWords(interval.level)} intervals`;
}

function words({ change, interval, counts }: Drift, { baseline }: MetricComparison): string {
  const half = interval === null ? null : (interval.high - interval.low) / 2;
  const decimals = decimalsFor(Math.max(Math.abs(change), Math.abs(baseline.mean)), half);
  const between = interval === null ? "" : ` (${intervalWords(interval, decimals)})`;
  return `${formatDifference(change, decimals)}${between}${counts ? ", counts" : ""}`;
}
