import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { requireContact } from "../common/requireContact.js";
import { timeToContact } from "../common/timeToContact.js";

/**
 * Gives the time at the end of a contact in which both feet are on the ground.
 *
 * Formula: toe-off − next initial contact, of the other foot.
 * Units: s out.
 * Limits: `null` without a next contact, and where that begins behind toe-off, as in running. One of the two double supports
 * of a stride: the load passes from this foot to the other. Together with both single supports the two make up the stride.
 * A higher threshold shortens it at both ends.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording, or the
 * next one does not begin later.
 * @example
 * const first = { ...contact, initialContact: 0, toeOff: 0.625 };
 * doubleSupportTime(ground, { contact: first, next: { ...contact, initialContact: 0.5 } }); // 0.125
 */
export function doubleSupportTime(ground: GroundReaction, step: Step): Seconds | null {
  const contact = requireContact(ground, step);
  if (step.next === undefined) return null;
  timeToContact(contact, step.next, "next");
  const time = contact.toeOff - step.next.initialContact;
  return time >= 0 ? time : null;
}
