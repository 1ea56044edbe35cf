import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Fraction } from "../../units/index.js";
import { contactTime } from "./contactTime.js";
import { strideTime } from "./strideTime.js";

/**
 * Gives the share of a stride that one foot is on the ground.
 *
 * Formula: contact time / stride time; below 0.5 there is a flight phase.
 * Units: a fraction of one.
 * Limits: over the stride, not the step. `null` without a later contact of the same side.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @throws GaitKineticsError `out-of-range`: the contact does not rise within the recording, or the next one of the same
 * side does not begin later.
 * @example
 * const first = { ...contact, initialContact: 0.25, toeOff: 0.5 };
 * const nextSameSide = { ...contact, initialContact: 1.25 };
 * dutyFactor(ground, { contact: first, nextSameSide }); // 0.25
 */
export function dutyFactor(ground: GroundReaction, step: Step): Fraction | null {
  const stride = strideTime(ground, step);
  return stride === null ? null : contactTime(ground, step) / stride;
}
