import { requireNumber, type Seconds } from "../units/index.js";
import { travel, type Vector, vectorOf, velocityChange } from "./stanceMotion.js";
import type { TrueContact } from "./truth.js";

/**
 * Gives the true place and velocity of the centre of mass at a time within a synthetic step.
 *
 * Formula: m a = F − m g, twice integrated in closed form from the contact.
 * Units: s from the recording's first sample in; m and m/s out, in the frame that moves with the ground. On a belt the
 * laboratory has forward place − speed × (time − time of the first contact).
 * Limits: from the contact to the next one.
 * Source: Newton's second law.
 * @param contact - One of a run's truth.
 * @param time - Within its step.
 * @throws GaitKineticsError `out-of-range`: outside the step; `not-finite`, `wrong-type`: no finite number.
 * @example
 * centreOfMassAt(syntheticRun({ height: 2 }).truth.contacts[0], 0.15).position.up // 1.1
 */
export function centreOfMassAt(
  contact: TrueContact,
  time: Seconds,
): { readonly position: Vector; readonly velocity: Vector } {
  const { stance, motion, initialContact } = contact;
  const to = initialContact + stance.stepTime;
  const since = requireNumber("time", time, { from: initialContact, to, unit: "s" }) - initialContact;
  return {
    position: vectorOf((d) => motion.position[d] + travel(stance, motion, d, since)),
    velocity: vectorOf((d) => motion.velocity[d] + velocityChange(stance, motion, d, since)),
  };
}
