import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Gives the time in which the foot of a contact alone is on the ground.
 *
 * Formula: next initial contact − toe-off before, both of the other foot: the time that the other foot swings.
 * Units: s out.
 * Limits: `null` where the contact before or after is not known: {@link detectEvents} notes what lies between them on each contact
 * of a walk.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording.
 * @example
 * const first = { ...contact, initialContact: 0, toeOff: 0.625, singleSupport: { from: 0.125, to: 0.5 } };
 * singleSupportTime(ground, { contact: first }); // 0.375
 */
export function singleSupportTime(ground: GroundReaction, step: Step): Seconds | null {
  const { singleSupport } = requireContact(ground, step);
  return singleSupport === undefined ? null : singleSupport.to - singleSupport.from;
}
