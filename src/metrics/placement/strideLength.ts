import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Metres } from "../../units/index.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { strideTime } from "../timing/strideTime.js";

/**
 * Gives how far the runner travels over the surface in a stride.
 *
 * Formula: speed × stride time, on ground and on a belt alike.
 * Units: m/s and s in; m out.
 * Limits: `null` without a later contact of the same side. It is the travel of the body at the mean speed, not the distance
 * of two footprints.
 * Source: common practice.
 * @param ground - Its speed and surface are read.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @throws GaitKineticsError `missing-value`: speed or surface not stated; `out-of-range`: speed not above 0, or the next
 * contact of the same side does not begin later.
 * @example
 * const first = { ...contact, initialContact: 1 };
 * const nextSameSide = { ...contact, initialContact: 1.75 };
 * strideLength({ ...ground, speed: 3, surface: "belt" }, { contact: first, nextSameSide }); // 2.25
 */
export function strideLength(ground: GroundReaction, step: Step): Metres | null {
  const speed = requireSpeed(ground, "strideLength");
  const time = strideTime(ground, step);
  return time === null ? null : speed * time;
}
