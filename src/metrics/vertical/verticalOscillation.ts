import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { centreOfMassExcursion } from "../../models/index.js";
import type { Metres } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { stepTime } from "../timing/stepTime.js";
import { strideTime } from "../timing/strideTime.js";

/**
 * Gives how far the centre of mass moves up and down in a step.
 *
 * Formula: max(y) − min(y) from initial contact to the next one; y the double integral of F_up/m over the stride that begins
 * with this contact, acceleration and velocity made mean-free over it; m by force.
 * Units: N, s and kg in; m out.
 * Limits: `null` without a next contact and a later one of the same side. It needs steady strides. A sensor on the trunk
 * measures another point than the centre of mass.
 * Source: law (Newton's second); the mean taken off over whole strides is common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: no mass, which a whole stride always gives; `out-of-range`: contact or
 * neighbours not in order within the recording.
 * @example
 * const up = new Float64Array([0, 1400, 0, 1400, 0]);
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * verticalOscillation({ ...ground, sampleRate: 10, massByForce: 70, force: { up } }, { contact: first, ...neighbours }); // 0.01667
 * verticalOscillation(ground, { contact }); // null
 */
export function verticalOscillation(ground: GroundReaction, step: Step): Metres | null {
  const { initialContact } = requireContact(ground, step);
  const next = stepTime(ground, step);
  const stride = strideTime(ground, step);
  if (next === null || stride === null) return null;
  return centreOfMassExcursion(
    ground.force.up,
    ground.sampleRate,
    initialContact,
    initialContact + stride,
    massForStep(ground, step),
    { until: initialContact + next },
  );
}
