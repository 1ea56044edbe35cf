import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { largestSample } from "../common/largestSample.js";
import { medialSign } from "../common/medialSign.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the largest force toward the body's midline in a contact, as a positive magnitude.
 *
 * Formula: max(F_medial, 0) over the samples in contact; F_medial is −F_right under a right foot and F_right
 * under a left foot.
 * Units: N out, 0 or above.
 * Limits: the largest sample; 0 where the force never points that way; `null` where the contact's side is not
 * known.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no rightward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), right: new Float64Array([0, 40, 0, -80, 0]) };
 * const whole = { ...contact, side: "right", initialContact: 0, toeOff: 0.5 };
 * peakMedialForce({ ...ground, sampleRate: 8, force }, { contact: whole }); // 80
 */
export function peakMedialForce(ground: GroundReaction, step: Step): Newtons | null {
  const right = requireForce(footOf(ground, step), "right", "peakMedialForce");
  const { initialContact, toeOff } = requireContact(ground, step);
  const medial = medialSign(step.contact);
  if (medial === null) return null;
  return Math.max(0, largestSample(right, ground.sampleRate, initialContact, toeOff, medial));
}
