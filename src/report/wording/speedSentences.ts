import type { Comparison, MetricComparison, SpeedAlone } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { capitalised } from "./capitalised.js";
import { formatDifference } from "./formatDifference.js";
import { formatPercent } from "./formatPercent.js";
import { metricName } from "./metricName.js";

/** Says what the difference in speed alone would do, a sentence for each metric of which a published slope is known. */
export function speedSentences(
  { metrics: compared }: Comparison,
  metrics: readonly Metric[],
): readonly string[] {
  return compared.flatMap((metric) => {
    const { id, speedAlone } = metric;
    return speedAlone === undefined
      ? []
      : [`${capitalised(metricName(id, metrics))}: ${speedWords(speedAlone, metric)}.`];
  });
}

function speedWords(
  { difference, source, takenOff }: SpeedAlone,
  { unit, percent, baseline }: MetricComparison,
): string {
  const share = percent === null ? "" : `, ${formatPercent((100 * difference) / Math.abs(baseline.mean))} %`;
  const done = takenOff ? "it was taken off the difference" : "it is still in the difference";
  return `the difference in speed alone would do ${formatDifference(difference)} ${unit}${share} (${source}); ${done}`;
}
