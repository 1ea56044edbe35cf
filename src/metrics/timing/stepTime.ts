import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { timeToContact } from "../common/timeToContact.js";

/**
 * Gives the time from a contact to the next one, of the other foot.
 *
 * Formula: next initial contact − initial contact.
 * Units: s out.
 * Limits: `null` without a next contact.
 * Source: common practice.
 * @param _ground - Not read: the contacts hold their times.
 * @param step - The step to measure; its contact and the next one are used.
 * @throws GaitKineticsError `out-of-range`: the next contact does not begin later.
 * @example
 * const first = { ...contact, initialContact: 1 };
 * const next = { ...contact, initialContact: 1.375 };
 * stepTime(ground, { contact: first, next }); // 0.375
 */
export function stepTime(_ground: GroundReaction, step: Step): Seconds | null {
  return step.next === undefined ? null : timeToContact(step.contact, step.next, "next");
}
