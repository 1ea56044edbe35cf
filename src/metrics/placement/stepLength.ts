import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Metres } from "../../units/index.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { stepTime } from "../timing/stepTime.js";

/**
 * Gives how far the runner travels over the surface in a step.
 *
 * Formula: speed × step time, on ground and on a belt alike.
 * Units: m/s and s in; m out.
 * Limits: `null` without a next contact. It is the travel of the body at the mean speed, not the distance of two footprints,
 * which differs from it in a single step. On a belt the feet are no such distance apart in the laboratory.
 * Source: common practice.
 * @param ground - Its speed and surface are read.
 * @param step - The step to measure; its contact and the next one are used.
 * @throws GaitKineticsError `missing-value`: speed or surface not stated; `out-of-range`: speed not above 0, or the next
 * contact does not begin later.
 * @example
 * const first = { ...contact, initialContact: 1 };
 * const next = { ...contact, initialContact: 1.375 };
 * stepLength({ ...ground, speed: 3, surface: "belt" }, { contact: first, next }); // 1.125
 */
export function stepLength(ground: GroundReaction, step: Step): Metres | null {
  const speed = requireSpeed(ground, "stepLength");
  const time = stepTime(ground, step);
  return time === null ? null : speed * time;
}
