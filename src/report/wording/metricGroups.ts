import type { Metric, MetricFamily } from "../../metrics/index.js";
import { capitalised } from "./capitalised.js";

/** What a table needs to know of a metric. */
export interface ListedMetric {
  readonly id: string;
  readonly name: string;
  /** Whether it speaks for its component, or for work. */
  readonly primary: boolean;
}

/** A heading and the metrics under it. */
export interface MetricGroup {
  readonly key: MetricFamily | "other";
  readonly heading: string;
  readonly metrics: readonly ListedMetric[];
}

const HEADINGS: Readonly<Record<MetricGroup["key"], string>> = {
  vertical: "Vertical",
  anteroposterior: "Anteroposterior",
  mediolateral: "Mediolateral",
  resultant: "Resultant and torsion",
  timing: "Timing",
  placement: "Placement",
  work: "Work and spring",
  walking: "Walking",
  other: "Others",
};

/** The order of every table, figure and page. */
const ORDER = [
  "vertical",
  "anteroposterior",
  "mediolateral",
  "resultant",
  "timing",
  "placement",
  "work",
  "walking",
  "other",
] as const;

/**
 * Sorts metrics under the headings of every table and page: the three components of force, then resultant, timing,
 * placement, work and walking, then ids that no entry describes. Within a heading the order is that of the entries.
 *
 * @param ids - Metrics that have values.
 * @param entries - Catalogue entries, own ones included.
 * @example
 * metricGroups(["own"], []).map(({ heading }) => heading) // ["Others"]
 */
export function metricGroups(ids: readonly string[], entries: readonly Metric[]): readonly MetricGroup[] {
  const listed = [
    ...entries
      .filter(({ id }) => ids.includes(id))
      .map((entry) => ({
        key: entry.component === "none" ? entry.family : entry.component,
        metric: { id: entry.id, name: capitalised(entry.name), primary: entry.primary === true },
      })),
    ...ids
      .filter((id) => !entries.some((entry) => entry.id === id))
      .map((id) => ({ key: "other" as const, metric: { id, name: id, primary: false } })),
  ];
  return ORDER.map((key) => ({
    key,
    heading: HEADINGS[key],
    metrics: listed.filter((item) => item.key === key).map(({ metric }) => metric),
  })).filter(({ metrics }) => metrics.length > 0);
}
