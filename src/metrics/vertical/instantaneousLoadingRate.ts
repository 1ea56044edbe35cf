import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type Complete, type Fraction, type NewtonsPerSecond, withDefaults } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { largestSlope } from "../common/largestSlope.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";
import { timeToImpactPeak } from "./timeToImpactPeak.js";

/**
 * Window on the first rise, as fractions of the time from initial contact to the impact peak, and the peak's
 * rule.
 */
export interface InstantaneousLoadingRateOptions {
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
  readonly impactPeak?: ImpactPeakOptions | undefined;
}

/**
 * The same window as the average's. Source: Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382 (abstract).
 */
export const INSTANTANEOUS_LOADING_RATE_DEFAULTS: Complete<InstantaneousLoadingRateOptions> = {
  from: 0.2,
  to: 0.8,
  impactPeak: IMPACT_PEAK_DEFAULTS,
};

/**
 * Gives the largest slope of the vertical force over the middle of its first rise.
 *
 * Formula: max (Fᵢ₊₁ − Fᵢ) fₛ over successive samples that both lie within the window; where it holds no two
 * samples, the slope between its ends.
 * Units: N and s in; N/s out.
 * Limits: `null` where the force rises without a separate impact peak. Takes up noise more than the average
 * does; below 1 kHz it is biased low.
 * Source: window as in the defaults.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact is used, and its stride where no mass by force is known.
 * @param options - Window and rule; {@link INSTANTANEOUS_LOADING_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `out-of-range`: window not rising within 0 to 1, contact outside the recording;
 * `missing-value`: body weight unknown.
 * @example
 * const force = { up: new Float64Array([0, 900, 700, 1500, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.08 };
 * instantaneousLoadingRate({ ...ground, sampleRate: 50, force }, { contact: whole }); // 45000.000
 */
export function instantaneousLoadingRate(
  ground: GroundReaction,
  step: Step,
  options: InstantaneousLoadingRateOptions = INSTANTANEOUS_LOADING_RATE_DEFAULTS,
): NewtonsPerSecond | null {
  const { from, to, impactPeak } = withDefaults(INSTANTANEOUS_LOADING_RATE_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  const rise = timeToImpactPeak(ground, step, impactPeak);
  if (rise === null) return null;
  const start = step.contact.initialContact;
  return largestSlope(
    footOf(ground, step).force.up,
    ground.sampleRate,
    start + from * rise,
    start + to * rise,
    1,
  );
}
