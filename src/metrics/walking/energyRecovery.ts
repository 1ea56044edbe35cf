import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { externalWork, recoveredShare } from "../../models/index.js";
import { type Fraction, requireNumber, withDefaults } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { strideTime } from "../timing/strideTime.js";
import { STEP_WORK_DEFAULTS, type StepWorkOptions } from "../work/workOfStep.js";

/**
 * Gives the share of the forward and vertical work of a stride that the two energies take from each other, as in a pendulum.
 *
 * Formula: (W_f + W_v − W_ext)/(W_f + W_v), sums of the positive increments of the forward, vertical and external energy of
 * the centre of mass over the stride that begins with this contact; motion by integration of the force, mass by force.
 * Units: N, s, kg and m/s in; a fraction of one out.
 * Limits: `null` without a later contact of the same side. It needs steady strides. About 0.65 at most, near 1.1 m/s; 0 to 0.04 in running. It speaks of
 * the energy of the centre of mass, not of oxygen.
 * Source: Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param ground - Force in the library's frame, both feet summed; speed, surface, grade and gravity are read.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @param options - Air drag; {@link STEP_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `missing-value`: speed or surface not
 * stated; `out-of-range`: speed not above 0, contacts not in order within the recording; `not-finite`: drag.
 * @example
 * const force = { up: new Float64Array([900, 500, 900, 500, 900]), forward: new Float64Array(5) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * energyRecovery({ ...ground, sampleRate: 10, force, speed: 1.3, surface: "belt" }, stride); // 0
 */
export function energyRecovery(
  ground: GroundReaction,
  step: Step,
  options: StepWorkOptions = STEP_WORK_DEFAULTS,
): Fraction | null {
  const { drag } = withDefaults(STEP_WORK_DEFAULTS, options);
  requireNumber("drag", drag, { unit: "N" });
  requireForce(ground, "forward", "energyRecovery");
  const speed = requireSpeed(ground, "energyRecovery");
  const { initialContact } = requireContact(ground, step);
  const stride = strideTime(ground, step);
  if (stride === null) return null;
  const { gravity, grade } = ground;
  const mass = massForStep(ground, step);
  const end = initialContact + stride;
  return recoveredShare(externalWork(ground, initialContact, end, speed, { mass, gravity, grade, drag }));
}
