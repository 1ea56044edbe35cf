import type { Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import { massFromForce } from "../models/index.js";
import type { Kilograms } from "../units/index.js";

/**
 * Weighs the runner by the force itself: over whole strides the mean vertical force carries the body, whatever the
 * movement.
 *
 * Formula: m = Σ ∫ F_up dt ÷ (g cos θ Σ T), tan θ the grade, over strides from contact to the same foot's next contact, not overlapping.
 * Units: N and s in; kg out.
 * Limits: `null` without a whole stride. Exact for periodic strides; over n strides the error falls with n.
 * Source: impulse equals change of momentum, which returns after a stride.
 * @param ground - Force with offset removed.
 * @param steps - Contacts with neighbours.
 * @example
 * (massByForce(ground, steps) ?? 0) > 50 // true
 */
export function massByForce(ground: GroundReaction, steps: readonly Step[]): Kilograms | null {
  const { gravity, grade = 0 } = ground;
  let weighted = 0;
  let time = 0;
  let until = Number.NEGATIVE_INFINITY;
  for (const { contact, nextSameSide } of steps) {
    if (nextSameSide === undefined || contact.initialContact < until) continue;
    const from = contact.initialContact;
    until = nextSameSide.initialContact;
    weighted +=
      massFromForce(ground.force.up, ground.sampleRate, from, until, { gravity, grade }) * (until - from);
    time += until - from;
  }
  return time > 0 ? weighted / time : null;
}
