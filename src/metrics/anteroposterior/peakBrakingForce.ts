import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { largestSample } from "../common/largestSample.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the largest backward force of a contact, as a positive magnitude.
 *
 * Formula: max(−F_forward, 0) over the samples in contact.
 * Units: N out, 0 or above.
 * Limits: the largest sample; 0 where the force never points backward.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), forward: new Float64Array([0, -200, 0, 160, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * peakBrakingForce({ ...ground, sampleRate: 8, force }, { contact: whole }); // 200
 */
export function peakBrakingForce(ground: GroundReaction, step: Step): Newtons {
  const forward = requireForce(footOf(ground, step), "forward", "peakBrakingForce");
  const { initialContact, toeOff } = requireContact(ground, step);
  return Math.max(0, largestSample(forward, ground.sampleRate, initialContact, toeOff, -1));
}
