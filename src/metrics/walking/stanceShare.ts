import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Fraction } from "../../units/index.js";
import { dutyFactor } from "../timing/dutyFactor.js";

/**
 * Gives the share of a walking stride that the foot is on the ground.
 *
 * Formula: contact time / stride time, as {@link dutyFactor}; the rest is swing.
 * Units: a fraction of one.
 * Limits: `null` without a later contact of the same side. 0.60 to 0.62 at comfortable speed (common practice); more the slower.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording, or the next one of the same
 * side does not begin later.
 * @example
 * const first = { ...contact, initialContact: 0.25, toeOff: 0.875 };
 * stanceShare(ground, { contact: first, nextSameSide: { ...contact, initialContact: 1.25 } }); // 0.625
 */
export function stanceShare(ground: GroundReaction, step: Step): Fraction | null {
  return dutyFactor(ground, step);
}
