import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { largestSample } from "../common/largestSample.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Gives the largest vertical force of a contact.
 *
 * Formula: max F_up over the samples in contact.
 * Units: N out.
 * Limits: the largest sample: at 1 kHz it lies about 0.01 % below the peak of the curve, more at lower rates.
 * Usually the active peak of midstance; an impact peak higher than that counts too.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: the contact does not rise within the
 * recording, or holds no sample.
 * @example
 * const force = { up: new Float64Array([0, 900, 1700, 800, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.4 };
 * peakVerticalForce({ ...ground, sampleRate: 10, force }, { contact: whole }); // 1700
 */
export function peakVerticalForce(ground: GroundReaction, step: Step): Newtons {
  const { initialContact, toeOff } = requireContact(ground, step);
  return largestSample(footOf(ground, step).force.up, ground.sampleRate, initialContact, toeOff, 1);
}
