import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Joules } from "../../units/index.js";
import { requireForce } from "../common/requireForce.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { STEP_WORK_DEFAULTS, type StepWorkOptions, workOfStep } from "./workOfStep.js";

/**
 * Gives the positive work done on the centre of mass in a step.
 *
 * Formula: sum of the rises of E_ext = m v_f²/2 + m v_u²/2 + m g h from initial contact to the next one; velocities and
 * height h by integration of the force over the stride that begins with this contact, acceleration and velocity made
 * mean-free over it, the mean forward velocity being the speed; m by force. On a slope h rises along the surface too; with a drag the work against
 * the air is in it.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `null` without a next contact and a later one of the same side. Sideways energy, some 0.2 % of it, is left out, so
 * that it stays comparable with the literature. Over ground above 3.5 m/s the drag counts: `airDrag` estimates it. Mechanical work is no oxygen uptake: springs give part of it back.
 * Source: law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param ground - Force in the library's frame; speed, surface, grade and gravity are read.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @param options - Air drag; {@link STEP_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `missing-value`: speed or surface not stated;
 * `out-of-range`: speed not above 0, contacts not in order within the recording; `not-finite`: drag.
 * @example
 * const force = { up: new Float64Array([0, 1400, 0, 1400, 0]), forward: new Float64Array([-70, 70, -70, 70, -70]) };
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * const belt = { ...ground, sampleRate: 10, massByForce: 70, speed: 3, surface: "belt" };
 * positiveExternalWork({ ...belt, force }, { contact: first, ...neighbours }); // 11.441
 */
export function positiveExternalWork(
  ground: GroundReaction,
  step: Step,
  options: StepWorkOptions = STEP_WORK_DEFAULTS,
): Joules | null {
  requireForce(ground, "forward", "positiveExternalWork");
  requireSpeed(ground, "positiveExternalWork");
  return workOfStep(ground, step, options)?.external?.positive ?? null;
}
