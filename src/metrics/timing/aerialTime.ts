import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Gives the time in the air after a contact.
 *
 * Formula: initial contact of the other foot − toe-off.
 * Units: s out.
 * Limits: `null` without a next contact, and where it begins before toe-off, as in walking. The flight after the contact
 * alone; a model that wants the mean of the flights before and after takes two steps.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one are used.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording.
 * @example
 * const first = { ...contact, initialContact: 0.25, toeOff: 0.5 };
 * const next = { ...contact, initialContact: 0.625 };
 * aerialTime(ground, { contact: first, next }); // 0.125
 */
export function aerialTime(ground: GroundReaction, step: Step): Seconds | null {
  const { toeOff } = requireContact(ground, step);
  if (step.next === undefined) return null;
  const time = step.next.initialContact - toeOff;
  return time >= 0 ? time : null;
}
