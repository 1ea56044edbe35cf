import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Gives the time that the foot is on the ground.
 *
 * Formula: toe-off − initial contact.
 * Units: s out.
 * Limits: depends on the contact's threshold: from 20 N to 50 N it shortens by several milliseconds. Compare at one threshold.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording.
 * @example
 * const first = { ...contact, initialContact: 0.25, toeOff: 0.5 };
 * contactTime(ground, { contact: first }); // 0.25
 */
export function contactTime(ground: GroundReaction, step: Step): Seconds {
  const { initialContact, toeOff } = requireContact(ground, step);
  return toeOff - initialContact;
}
