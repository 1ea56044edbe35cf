import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { StepsPerMinute } from "../../units/index.js";
import { stepTime } from "./stepTime.js";

/**
 * Gives the step rate.
 *
 * Formula: 60 / step time.
 * Units: steps/min out; strides per minute are half of it.
 * Limits: `null` without a next contact. The mean of step rates is not the rate of the mean step time; they differ by the
 * square of its coefficient of variation.
 * Source: common practice.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one are used.
 * @throws GaitKineticsError `out-of-range`: the next contact does not begin later.
 * @example
 * const first = { ...contact, initialContact: 1 };
 * const next = { ...contact, initialContact: 1.375 };
 * cadence(ground, { contact: first, next }); // 160
 */
export function cadence(ground: GroundReaction, step: Step): StepsPerMinute | null {
  const time = stepTime(ground, step);
  return time === null ? null : 60 / time;
}
