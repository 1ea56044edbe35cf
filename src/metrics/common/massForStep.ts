import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { massFromForce } from "../../models/index.js";
import { fail, type Kilograms } from "../../units/index.js";

/**
 * Gives the mass that a metric integrates with or takes body weight from: the one by force, never a weighed one where
 * the force itself can tell.
 *
 * Formula: the trial's mass by force; without it, mean(F_up)/(g cos θ) over this step's own stride; without a stride, the
 * stated mass.
 * Units: kg out.
 * Limits: a weighed mass that differs from the force by 1 % lets the centre of mass drift by 1/2 × 1 % g t², 6 mm in a step
 * of 0.36 s; hence the order.
 * Source: law (mean vertical force over whole strides is body weight).
 * @param ground - The recording, with what it knows of mass.
 * @param step - The step whose stride may serve.
 * @throws GaitKineticsError `missing-value`: no mass, and no stride to take it from.
 */
export function massForStep(ground: GroundReaction, step: Step): Kilograms {
  if (ground.massByForce !== undefined) return ground.massByForce;
  const { contact, nextSameSide } = step;
  if (nextSameSide !== undefined) {
    return massFromForce(
      ground.force.up,
      ground.sampleRate,
      contact.initialContact,
      nextSameSide.initialContact,
      {
        gravity: ground.gravity,
        grade: ground.grade,
      },
    );
  }
  if (ground.subject.mass !== undefined) return ground.subject.mass;
  fail(
    "missing-value",
    "body weight is needed: state a mass, or give the step the next contact of the same side, so that a stride can tell it",
    { argument: "mass" },
  );
}
