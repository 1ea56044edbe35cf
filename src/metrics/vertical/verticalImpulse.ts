import type { Step } from "../../events/index.js";
import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonSeconds } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Gives the vertical impulse of a contact.
 *
 * Formula: ∫ F_up dt from initial contact to toe-off, trapezoid with fractional end pieces.
 * Units: N and s in; N·s out.
 * Limits: in steady running it is body weight × step time, whatever the technique: no reading is taken from
 * it.
 * Source: law (impulse = change of momentum).
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: the contact does not rise within the
 * recording.
 * @example
 * const force = { up: new Float64Array([0, 1000, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * verticalImpulse({ ...ground, sampleRate: 4, force }, { contact: whole }); // 250
 */
export function verticalImpulse(ground: GroundReaction, step: Step): NewtonSeconds {
  const { initialContact, toeOff } = requireContact(ground, step);
  return integralBetween(footOf(ground, step).force.up, ground.sampleRate, initialContact, toeOff);
}
