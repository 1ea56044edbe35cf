import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type Complete, type Joules, withDefaults } from "../../units/index.js";
import { type SpringOptions, springOf } from "./springOf.js";

/** Peak force and drop from the force. Source: McMahon & Cheng 1990, J Biomech 23 suppl 1:65. */
export const ELASTIC_ENERGY_DEFAULTS: Complete<SpringOptions> = { method: "force" };

/**
 * Gives the energy that the vertical spring of the body would hold at its lowest point: an upper bound of what a contact can
 * give back.
 *
 * Formula: F_max × drop/2, both as in {@link verticalStiffness}.
 * Units: N, s and kg in; J out.
 * Limits: `null` where {@link verticalStiffness} is. It is the energy of a perfect spring: muscles that take up and do work
 * make the same force, and no force platform tells them apart. What tendons give back is not measured here.
 * Source: law of the linear spring; McMahon & Cheng 1990, J Biomech 23 suppl 1:65.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one of the same side are used, by the sine wave the next one too.
 * @param options - Method; {@link ELASTIC_ENERGY_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: no mass, which a whole stride always gives; `out-of-range`: unknown method, contacts not in order within the recording.
 * @example
 * const force = { up: new Float64Array([700, 1400, 700, 0, 700, 1400, 700, 0, 700]) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.2 }, nextSameSide: { ...contact, initialContact: 0.8 } };
 * elasticEnergy({ ...ground, sampleRate: 10, massByForce: 70, force }, stride); // 23.333
 */
export function elasticEnergy(
  ground: GroundReaction,
  step: Step,
  options: SpringOptions = ELASTIC_ENERGY_DEFAULTS,
): Joules | null {
  const { method } = withDefaults(ELASTIC_ENERGY_DEFAULTS, options);
  return springOf(ground, step, method)?.storedEnergy ?? null;
}
