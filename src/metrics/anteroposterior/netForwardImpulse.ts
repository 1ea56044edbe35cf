import type { Step } from "../../events/index.js";
import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonSeconds } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the forward impulse of a contact, with its sign.
 *
 * Formula: ∫ F_forward dt from initial contact to toe-off = propulsive impulse − braking impulse = m Δv.
 * Units: N and s in; N·s out, positive where the runner gains speed.
 * Limits: about 0 in steady level running; an offset of 5 N makes 1.2 N·s of it in a contact of 0.245 s. No
 * ratio and no symmetry index of it has a meaning.
 * Source: law (impulse = change of momentum).
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), forward: new Float64Array([0, -200, 0, 160, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * netForwardImpulse({ ...ground, sampleRate: 8, force }, { contact: whole }); // -5
 */
export function netForwardImpulse(ground: GroundReaction, step: Step): NewtonSeconds {
  const forward = requireForce(footOf(ground, step), "forward", "netForwardImpulse");
  const { initialContact, toeOff } = requireContact(ground, step);
  return integralBetween(forward, ground.sampleRate, initialContact, toeOff);
}
