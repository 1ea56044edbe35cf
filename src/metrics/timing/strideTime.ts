import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { timeToContact } from "../common/timeToContact.js";

/**
 * Gives the time from a contact to the next one of the same foot.
 *
 * Formula: next initial contact of the same side − initial contact.
 * Units: s out.
 * Limits: `null` without a later contact of the same side.
 * Source: common practice.
 * @param _ground - Not read: the contacts hold their times.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @throws GaitKineticsError `out-of-range`: the next contact of the same side does not begin later.
 * @example
 * const first = { ...contact, initialContact: 1 };
 * const nextSameSide = { ...contact, initialContact: 1.75 };
 * strideTime(ground, { contact: first, nextSameSide }); // 0.75
 */
export function strideTime(_ground: GroundReaction, step: Step): Seconds | null {
  return step.nextSameSide === undefined
    ? null
    : timeToContact(step.contact, step.nextSameSide, "nextSameSide");
}
