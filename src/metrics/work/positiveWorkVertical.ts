import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Joules } from "../../units/index.js";
import { workOfStep } from "./workOfStep.js";

/**
 * Gives the positive work of lifting the centre of mass and of speeding it up vertically in a step.
 *
 * Formula: sum of the rises of E_v = m v_u²/2 + m g h from initial contact to the next one; v_u and height h by integration of
 * the vertical force over the stride that begins with this contact, made mean-free over it; m by force. On a slope h and
 * v_u are normal to the surface, g its part along that.
 * Units: N, s and kg in; J out.
 * Limits: `null` without a next contact and a later one of the same side. In running it rises and falls together with the
 * forward energy, so the two sum up to a little more than {@link positiveExternalWork}.
 * Source: law; Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: no mass, which a whole stride always gives; `out-of-range`: contacts not in order within the recording.
 * @example
 * const force = { up: new Float64Array([0, 1400, 0, 1400, 0]) };
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * positiveWorkVertical({ ...ground, sampleRate: 10, massByForce: 70, force }, { contact: first, ...neighbours }); // 11.441
 */
export function positiveWorkVertical(ground: GroundReaction, step: Step): Joules | null {
  return workOfStep(ground, step)?.vertical.positive ?? null;
}
