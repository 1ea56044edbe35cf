import type { Trial } from "../trial/index.js";
import type { Obstacle } from "./obstacles.js";

/** One foot alone: load that left it may be on the other. */
export function oneFootOnly(baseline: Trial, changed: Trial): Obstacle | null {
  const [one, other] = [baseline, changed].map(({ cautions }) =>
    cautions.some(({ code }) => code === "one-foot"),
  );
  if (!one && !other) return null;
  const which = one && other ? "both trials" : one ? "the baseline" : "the changed trial";
  return {
    brief: "one foot alone",
    reason: `in ${which} one foot alone seems to have been recorded, and load may have moved to the other`,
    toSettle: ["recordings of both feet, or, where the runner jumps, a stated mass or gait"],
  };
}
