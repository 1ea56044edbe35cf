import type { ComponentComparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { labelled } from "./labelled.js";
import { metricName } from "./metricName.js";

/**
 * Says which metric speaks for a component, with its unit where one is given, and which way is more load where that is
 * not the common one; or why none does.
 */
export function speakerWords(
  { metric, moreLoad, missing }: ComponentComparison,
  unit: string | null,
  entries: readonly Metric[],
): string {
  if (missing === "not recorded") return "not recorded";
  if (metric === null || missing !== null) return "not compared";
  const name = metricName(metric, entries);
  const direction = moreLoad === "lower" ? " (less of it is more load)" : "";
  return `${unit === null ? name : labelled(name, unit)}${direction}`;
}
