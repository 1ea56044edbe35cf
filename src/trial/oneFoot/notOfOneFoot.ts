import type { Metric, MetricNeed } from "../../metrics/index.js";
import type { NotComputed, Trial } from "../trial.js";

const REASON = {
  code: "one-foot",
  message:
    "one foot alone seems to have been recorded: the force on the body, the steps of the other foot and which of the two it is are not known",
} as const;

/** With these over a whole stride a metric is of the body, whose force one foot does not show. */
const OF_BODY: readonly MetricNeed[] = ["mass", "forward", "right", "copForward", "copRight"];
/** Needs no neighbour, but single support, which the other foot ends. */
const BY_OTHER_FOOT: readonly string[] = ["singleSupportTime"];

/**
 * The metrics that the contacts of one foot do not give: of a step, of the whole body over a stride, and, where it is not
 * known which foot it is, those that need to know it.
 */
export function notOfOneFoot(metrics: readonly Metric[], sideKnown: boolean): NotComputed[] {
  return metrics.flatMap(({ id, needs }) => {
    const ofBody = needs.includes("nextSameSide") && needs.some((need) => OF_BODY.includes(need));
    const unsided = needs.includes("side") && !sideKnown;
    const lacks = needs.includes("next") || ofBody || unsided || BY_OTHER_FOOT.includes(id);
    return lacks ? [{ id, ...REASON }] : [];
  });
}

/** Whether a trial holds one foot alone, as far as its contacts show. */
export function isOfOneFoot({ cautions }: Pick<Trial, "cautions">): boolean {
  return cautions.some(({ code }) => code === REASON.code);
}

/** Why one foot does not give something; `null` where both were recorded. */
export function oneFootLacks(trial: Trial, id: string): NotComputed | null {
  return isOfOneFoot(trial) ? { id, ...REASON } : null;
}
