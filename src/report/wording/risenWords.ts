import type { RunnersComparison, RunnersMetric } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { formatDifference } from "./formatDifference.js";
import { formatPercent } from "./formatPercent.js";
import { intervalWords, levelWords } from "./intervalWords.js";
import { metricName } from "./metricName.js";

/** Names the secondary metrics whose shown interval lies on the side of more load; empty where none does, or nothing is read. */
export function risenWords(comparison: RunnersComparison, entries: readonly Metric[]): string {
  const { metrics, settings, overall } = comparison;
  if (overall.lower.length + overall.higher.length === 0 && overall.reading === "unsettled") return "";
  const risen = metrics.flatMap((metric) => {
    const entry = entries.find(({ id }) => id === metric.id);
    if (entry === undefined || entry.primary === true || entry.moreLoad === "none") return [];
    const { low, high } = metric.interval;
    return (entry.moreLoad === "higher" ? low > 0 : high < 0) ? [{ entry, metric }] : [];
  });
  if (risen.length === 0) return "";
  const named = risen.map(
    ({ entry: { name, moreLoad }, metric }) =>
      `${name} (${changeOf(metric)}${moreLoad === "lower" ? ", of which less is more load" : ""})`,
  );
  const [by, chance] = [levelWords(settings.shownLevel), Math.round(2 / (1 - settings.shownLevel))];
  return `Also more load by their ${by} intervals, without a reading (of metrics that did not change, about one in ${chance} rises like this by chance): ${named.join(", ")}.`;
}

/** Says what the metric that speaks for work does; empty where it was not compared. */
export function runnersWork(
  { metrics, settings }: RunnersComparison,
  entries: readonly Metric[],
): readonly string[] {
  const speaks = entries.filter(({ primary, component }) => primary === true && component === "none");
  return metrics
    .filter(({ id }) => speaks.some((entry) => entry.id === id))
    .map((metric) => {
      const { low, high } = metric.readingInterval;
      const between =
        metric.percent === null
          ? `${intervalWords({ low, high, level: settings.readingLevel })} ${metric.unit}`
          : `${percentOf(low, metric)} to ${percentOf(high, metric)} %`;
      return `Work, without a reading: ${metricName(metric.id, entries)} differs by ${changeOf(metric)} (${levelWords(settings.readingLevel)} interval ${between}); mechanical work is not oxygen uptake.`;
    });
}

function changeOf({ percent, difference, unit }: RunnersMetric): string {
  return percent === null ? `${formatDifference(difference)} ${unit}` : `${formatPercent(percent)} %`;
}

function percentOf(value: number, { baseline }: RunnersMetric): string {
  return formatPercent((100 * value) / Math.abs(baseline.mean));
}
