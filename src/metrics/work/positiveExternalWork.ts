import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { externalWork } from "../../models/index.js";
import type { Joules } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { stepTime } from "../timing/stepTime.js";
import { strideTime } from "../timing/strideTime.js";

/**
 * Gives the positive work done on the centre of mass in a step.
 *
 * Formula: sum of the rises of E_ext = m v_f²/2 + m v_u²/2 + m g h from initial contact to the next one; velocities and
 * height h by integration of the force over the stride that begins with this contact, acceleration and velocity made
 * mean-free over it, the mean forward velocity being the speed; m by force. On a slope h rises along the surface too.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `null` without a next contact and a later one of the same side. Sideways energy, some 0.2 % of it, is left out, so
 * that it stays comparable with the literature. Mechanical work is no oxygen uptake: springs give part of it back.
 * Source: law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param ground - Force in the library's frame; speed, surface, grade and gravity are read.
 * @param step - The step to measure; its contact and both neighbours are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `missing-value`: speed or surface not stated;
 * `out-of-range`: speed not above 0, contacts not in order within the recording.
 * @example
 * const force = { up: new Float64Array([0, 1400, 0, 1400, 0]), forward: new Float64Array([-70, 70, -70, 70, -70]) };
 * const first = { ...contact, initialContact: 0, toeOff: 0.1 };
 * const neighbours = { next: { ...contact, initialContact: 0.2 }, nextSameSide: { ...contact, initialContact: 0.4 } };
 * const belt = { ...ground, sampleRate: 10, massByForce: 70, speed: 3, surface: "belt" };
 * positiveExternalWork({ ...belt, force }, { contact: first, ...neighbours }); // 11.441
 */
export function positiveExternalWork(ground: GroundReaction, step: Step): Joules | null {
  const forward = requireForce(ground, "forward", "positiveExternalWork");
  const speed = requireSpeed(ground, "positiveExternalWork");
  const { initialContact } = requireContact(ground, step);
  const next = stepTime(ground, step);
  const stride = strideTime(ground, step);
  if (next === null || stride === null) return null;
  const record = { sampleRate: ground.sampleRate, force: { up: ground.force.up, forward } };
  const { external } = externalWork(record, initialContact, initialContact + stride, speed, {
    mass: massForStep(ground, step),
    gravity: ground.gravity,
    grade: ground.grade,
    until: initialContact + next,
  });
  return external === null ? null : external.positive;
}
