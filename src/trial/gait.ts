import { type Contact, type Gait, type Step, stepsOf } from "../events/index.js";
import type { Metric } from "../metrics/index.js";
import type { NotComputed } from "./trial.js";

/** Whether contacts follow one another as steps. */
export function hasSteps(gait: Gait | null): boolean {
  return gait !== "jumping" && gait !== "standing";
}

/** The contacts with their neighbours; without, where the gait has no steps. */
export function stepsInGait(
  contacts: readonly Contact[],
  leftOut: readonly Contact[],
  gait: Gait | null,
): Step[] {
  return hasSteps(gait) ? stepsOf(contacts, leftOut) : contacts.map((contact) => ({ contact }));
}

/** The metrics that describe another gait. */
export function notOfGait(metrics: readonly Metric[], gait: Gait | null): NotComputed[] {
  if (gait === null) return [];
  return metrics.flatMap(({ id, gaits }) =>
    gaits === undefined || gaits.includes(gait)
      ? []
      : [{ id, code: "other-gait", message: `it describes ${gaits.join(" and ")}; this trial is ${gait}` }],
  );
}
