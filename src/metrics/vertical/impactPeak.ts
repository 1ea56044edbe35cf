import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";
import { impactPeakSample } from "./impactPeakSample.js";

/**
 * Gives the vertical force at the impact peak.
 *
 * Formula: F_up at its first local maximum later than 5 ms after initial contact and before 35 % of contact
 * time that is followed by a drop of at least 0.02 body weights before the force next exceeds it; body weight
 * by force.
 * Units: N out.
 * Limits: `null` where the force rises without a separate impact peak, as under most forefoot landings; a
 * low-pass below about 20 Hz takes the peak away.
 * Source: first local maximum is common practice; the numbers of the rule are this library's own, see {@link
 * IMPACT_PEAK_DEFAULTS}.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact is used, and its stride where no mass by force is known.
 * @param options - The rule; {@link IMPACT_PEAK_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: the contact does not rise within the
 * recording, or an option is out of bounds; `missing-value`: body weight unknown.
 * @example
 * const force = { up: new Float64Array([0, 900, 700, 1500, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.08 };
 * impactPeak({ ...ground, sampleRate: 50, force }, { contact: whole }); // 900
 */
export function impactPeak(
  ground: GroundReaction,
  step: Step,
  options: ImpactPeakOptions = IMPACT_PEAK_DEFAULTS,
): Newtons | null {
  const sample = impactPeakSample(ground, step, options);
  return sample === null ? null : (footOf(ground, step).force.up[sample] as number);
}
