import type { Step } from "../../events/index.js";
import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonSeconds } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the impulse that pushes the runner sideways during a contact, both ways added up.
 *
 * Formula: ∫ |F_right| dt from initial contact to toe-off, exact on the straight lines between samples.
 * Units: N and s in; N·s out, 0 or above.
 * Limits: does not need the side. Noise adds to it and never cancels.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no rightward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), right: new Float64Array([0, 40, 0, -80, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * mediolateralImpulse({ ...ground, sampleRate: 8, force }, { contact: whole }); // 15
 */
export function mediolateralImpulse(ground: GroundReaction, step: Step): NewtonSeconds {
  const right = requireForce(footOf(ground, step), "right", "mediolateralImpulse");
  const { initialContact, toeOff } = requireContact(ground, step);
  return integralBetween(right, ground.sampleRate, initialContact, toeOff, { part: "absolute" });
}
