import type { Step } from "../../events/index.js";
import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonSeconds } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { medialSign } from "../common/medialSign.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the impulse that pushes the runner toward the body's midline during a contact, as a positive
 * magnitude.
 *
 * Formula: ∫ max(F_medial, 0) dt from initial contact to toe-off, exact on the straight lines between
 * samples; F_medial is −F_right under a right foot and F_right under a left foot.
 * Units: N and s in; N·s out, 0 or above.
 * Limits: `null` where the contact's side is not known.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no rightward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), right: new Float64Array([0, 40, 0, -80, 0]) };
 * const whole = { ...contact, side: "right", initialContact: 0, toeOff: 0.5 };
 * medialImpulse({ ...ground, sampleRate: 8, force }, { contact: whole }); // 10
 */
export function medialImpulse(ground: GroundReaction, step: Step): NewtonSeconds | null {
  const right = requireForce(footOf(ground, step), "right", "medialImpulse");
  const { initialContact, toeOff } = requireContact(ground, step);
  const medial = medialSign(step.contact);
  if (medial === null) return null;
  const part = medial > 0 ? "positive" : "negative";
  return Math.abs(integralBetween(right, ground.sampleRate, initialContact, toeOff, { part }));
}
