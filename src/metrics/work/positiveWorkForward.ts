import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Joules } from "../../units/index.js";
import { requireForce } from "../common/requireForce.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { STEP_WORK_DEFAULTS, type StepWorkOptions, workOfStep } from "./workOfStep.js";

/**
 * Gives the positive work of speeding the centre of mass up again in a step: what braking took.
 *
 * Formula: sum of the rises of E_f = m v_f²/2 from initial contact to the next one; v_f by integration of the forward force
 * over the stride that begins with this contact, its mean the speed; m by force. On a slope the work against gravity along
 * it, and with a drag that against the air, is in it.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `null` without a next contact and a later one of the same side. In proportion to the speed: it says nothing where
 * that is wrong. Over ground above 3.5 m/s the drag counts: `airDrag` estimates it.
 * Source: law; Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param ground - Force in the library's frame; speed, surface, grade and gravity are read.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @param options - Air drag; {@link STEP_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `missing-value`: speed or surface not
 * stated; `out-of-range`: speed not above 0, contacts not in order within the recording; `not-finite`: drag.
 * @example
 * const force = { up: new Float64Array(5).fill(700), forward: new Float64Array([0, 70, 0, -70, 0]) };
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * const belt = { ...ground, sampleRate: 10, massByForce: 70, speed: 3, surface: "belt" };
 * positiveWorkForward({ ...belt, force }, { contact: first, ...neighbours }); // 21
 */
export function positiveWorkForward(
  ground: GroundReaction,
  step: Step,
  options: StepWorkOptions = STEP_WORK_DEFAULTS,
): Joules | null {
  requireForce(ground, "forward", "positiveWorkForward");
  requireSpeed(ground, "positiveWorkForward");
  return workOfStep(ground, step, options)?.forward?.positive ?? null;
}
