import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Joules } from "../../units/index.js";
import { requireForce } from "../common/requireForce.js";
import { workOfStep } from "./workOfStep.js";

/**
 * Gives the positive work of moving the centre of mass from side to side in a step.
 *
 * Formula: sum of the rises of E_l = m v_r²/2 from initial contact to the next one; v_r by integration of the rightward force
 * over the stride that begins with this contact, made mean-free over it; m by force.
 * Units: N, s and kg in; J out.
 * Limits: `null` without a next contact and a later one of the same side. Some 0.2 % of the external work in running, which it
 * is no part of. Treadmills are often noisiest along this axis.
 * Source: law (kinetic energy).
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: no mass, which a whole stride always gives; `missing-channel`: no rightward force; `out-of-range`: contacts not in order within
 * the recording.
 * @example
 * const force = { up: new Float64Array(5).fill(700), right: new Float64Array([0, -70, 0, 70, 0]) };
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * positiveWorkLateral({ ...ground, sampleRate: 10, massByForce: 70, force }, { contact: first, ...neighbours }); // 0.0875
 */
export function positiveWorkLateral(ground: GroundReaction, step: Step): Joules | null {
  requireForce(ground, "right", "positiveWorkLateral");
  return workOfStep(ground, step)?.lateral?.positive ?? null;
}
