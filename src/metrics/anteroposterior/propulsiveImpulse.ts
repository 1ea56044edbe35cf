import type { Step } from "../../events/index.js";
import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonSeconds } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the impulse that speeds the runner up during a contact.
 *
 * Formula: ∫ max(F_forward, 0) dt from initial contact to toe-off, exact on the straight lines between
 * samples.
 * Units: N and s in; N·s out, 0 or above.
 * Limits: in steady running it equals the braking impulse, but for air drag and slope: no reading is taken
 * from it.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), forward: new Float64Array([0, -200, 0, 160, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * propulsiveImpulse({ ...ground, sampleRate: 8, force }, { contact: whole }); // 20
 */
export function propulsiveImpulse(ground: GroundReaction, step: Step): NewtonSeconds {
  const forward = requireForce(footOf(ground, step), "forward", "propulsiveImpulse");
  const { initialContact, toeOff } = requireContact(ground, step);
  return integralBetween(forward, ground.sampleRate, initialContact, toeOff, { part: "positive" });
}
