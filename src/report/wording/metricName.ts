import type { Metric } from "../../metrics/index.js";

/** Gives the name of a metric, its id where no entry describes it. */
export function metricName(id: string, entries: readonly Metric[]): string {
  return entries.find((entry) => entry.id === id)?.name ?? id;
}
