import type { SessionMetric, SessionSeries } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { capitalised } from "./capitalised.js";
import { metricName } from "./metricName.js";

/** A series in the order of its news. */
export interface SessionsInOrder {
  /** Metrics that speak and have a session outside, others that speak, then the rest. */
  readonly metrics: readonly SessionMetric[];
  /** Those of metrics with a session outside first. */
  readonly sentences: readonly string[];
}

/** Puts first what lies outside; what belongs together stays in its order. */
export function sessionsInOrder(series: SessionSeries, entries: readonly Metric[]): SessionsInOrder {
  const speaks = (id: string) => entries.some((entry) => entry.id === id && entry.primary === true);
  const rank = (metric: SessionMetric): number => (speaks(metric.id) ? (hasOutside(metric) ? 0 : 1) : 2);
  const outside = series.metrics
    .filter((metric) => speaks(metric.id) && hasOutside(metric))
    .map(({ id }) => `${capitalised(metricName(id, entries))}: `);
  const isNews = (sentence: string) => outside.some((start) => sentence.startsWith(start));
  return {
    metrics: [...series.metrics].sort((one, other) => rank(one) - rank(other)),
    sentences: [
      ...series.sentences.filter(isNews),
      ...series.sentences.filter((sentence) => !isNews(sentence)),
    ],
  };
}

function hasOutside({ sessions }: SessionMetric): boolean {
  return sessions.some(({ against }) => against !== null && against.place !== "within");
}
