import type { Metric } from "../metrics/index.js";
import type { NotComputed, Trial } from "./trial.js";

/** Why no contact of a trial has a metric, by the trial's own list; `null` where one has. */
export function absentFrom(trial: Trial, { id }: Metric): NotComputed | null {
  if (trial.steps.some(({ values }) => (values[id] ?? null) !== null)) return null;
  const listed = trial.notComputed.find((entry) => entry.id === id);
  return listed ?? { id, code: "not-analysed", message: "it was not among the metrics analysed" };
}
