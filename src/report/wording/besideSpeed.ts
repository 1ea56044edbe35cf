import type { MetricComparison } from "../../compare/index.js";

/** Says behind a metric's name that its difference is not that of the means beside it; empty where it is. */
export function besideSpeed({ speedAlone }: Pick<MetricComparison, "speedAlone">): string {
  return speedAlone?.takenOff === true ? " (difference beside the effect of speed)" : "";
}
