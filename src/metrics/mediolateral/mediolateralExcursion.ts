import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { centreOfMassExcursion } from "../../models/index.js";
import type { Metres } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { strideTime } from "../timing/strideTime.js";

/**
 * Gives how far the centre of mass moves from side to side in a stride.
 *
 * Formula: max(z) − min(z) from initial contact to the next one of the same side; z the double integral of F_right/m over
 * that stride, acceleration and velocity made mean-free over it; m by force.
 * Units: N, s and kg in; m out.
 * Limits: `null` without a later contact of the same side. It needs steady straight running: weaving across the belt is taken
 * off with the mean velocity. A slow drift of the force grows with the square of the stride time.
 * Source: law (Newton's second); the mean taken off over whole strides is common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no rightward force; `missing-value`: no mass, which a whole stride always
 * gives; `out-of-range`: the contacts are not in order within the recording.
 * @example
 * const force = { up: new Float64Array(5), right: new Float64Array([0, 70, 0, -70, 0]) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.3 }, nextSameSide: { ...contact, initialContact: 0.8 } };
 * mediolateralExcursion({ ...ground, sampleRate: 5, massByForce: 70, force }, stride); // 0.02667
 */
export function mediolateralExcursion(ground: GroundReaction, step: Step): Metres | null {
  const right = requireForce(ground, "right", "mediolateralExcursion");
  const { initialContact } = requireContact(ground, step);
  const stride = strideTime(ground, step);
  if (stride === null) return null;
  return centreOfMassExcursion(
    right,
    ground.sampleRate,
    initialContact,
    initialContact + stride,
    massForStep(ground, step),
  );
}
