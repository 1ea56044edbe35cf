import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";
import { impactPeakSample } from "./impactPeakSample.js";

/**
 * Gives the time from initial contact to the impact peak.
 *
 * Formula: time of the impact peak's sample − initial contact; the peak as in {@link impactPeak}.
 * Units: s out.
 * Limits: `null` without a separate impact peak. The peak is a sample, so the time is known to half a sampling interval.
 * Source: common practice, rule as in {@link IMPACT_PEAK_DEFAULTS}.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact is used, and its stride where no mass by force is known.
 * @param options - The rule; {@link IMPACT_PEAK_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording, or an option is out of bounds;
 * `missing-value`: body weight unknown.
 * @example
 * const force = { up: new Float64Array([0, 900, 700, 1500, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.08 };
 * timeToImpactPeak({ ...ground, sampleRate: 50, force }, { contact: whole }); // 0.02
 */
export function timeToImpactPeak(
  ground: GroundReaction,
  step: Step,
  options: ImpactPeakOptions = IMPACT_PEAK_DEFAULTS,
): Seconds | null {
  const sample = impactPeakSample(ground, step, options);
  return sample === null ? null : sample / ground.sampleRate - step.contact.initialContact;
}
