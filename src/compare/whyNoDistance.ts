import type { OfBoth, PairedTrial } from "./strideSeries.js";
import { NOT_ANALYSED } from "./whyAbsent.js";

/** Why something is not known, in a sentence's part, and what would make it known. */
export interface Missing {
  readonly reason: string;
  readonly toSettle: string;
}

/**
 * Says why nothing is known per kilometre or per metre: speed × step time, the length of a step, is not known in both
 * trials.
 */
export function whyNoDistance(trials: OfBoth<PairedTrial>): Missing {
  const those = (lacks: (of: PairedTrial) => boolean) =>
    (["baseline", "changed"] as const).filter((which) => lacks(trials[which]));
  const unstated = those(({ trial }) => trial.settings.speed === null);
  if (unstated.length > 0) {
    const of = trialsOf(unstated);
    return { reason: `the speed of ${of} is not known`, toSettle: `the speed of ${of}` };
  }
  const still = those(({ trial }) => trial.settings.speed === 0);
  if (still.length > 0) {
    const of = trialsOf(still);
    return { reason: `the speed of ${of} is 0 m/s`, toSettle: `a speed above 0 m/s of ${of}` };
  }
  const untimed = those(({ trial }) => trial.steps.every(({ values }) => (values.stepTime ?? null) === null));
  if (untimed.length > 0) {
    const of = trialsOf(untimed);
    const whys = new Set(
      untimed.map(
        (which) =>
          trials[which].trial.notComputed.find(({ id }) => id === "stepTime")?.message ?? NOT_ANALYSED,
      ),
    );
    return {
      reason: `the step time of ${of} was not computed (${[...whys].join("; ")})`,
      toSettle: `the step time (stepTime) of ${of}, computed with the other metrics`,
    };
  }
  return {
    reason: "too few strides have a step time as well, or they resemble each other too much, for an interval",
    toSettle: "longer recordings, with a step time for every stride",
  };
}

function trialsOf(which: readonly ("baseline" | "changed")[]): string {
  return which.length === 2 ? "both trials" : which[0] === "baseline" ? "the baseline" : "the changed trial";
}
