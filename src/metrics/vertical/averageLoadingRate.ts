import type { Step } from "../../events/index.js";
import { valueAt } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type Complete, type Fraction, type NewtonsPerSecond, withDefaults } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";
import { timeToImpactPeak } from "./timeToImpactPeak.js";

/**
 * Window on the first rise, as fractions of the time from initial contact to the impact peak, and the peak's
 * rule.
 */
export interface AverageLoadingRateOptions {
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
  readonly impactPeak?: ImpactPeakOptions | undefined;
}

/**
 * The middle of the rise, clear of its toe and of the rounding under the peak. Source:
 * doi:10.1055/s-0042-107248, method B.
 */
export const AVERAGE_LOADING_RATE_DEFAULTS: Complete<AverageLoadingRateOptions> = {
  from: 0.2,
  to: 0.8,
  impactPeak: IMPACT_PEAK_DEFAULTS,
};

/**
 * Gives the mean slope of the vertical force over the middle of its first rise.
 *
 * Formula: [F(t₂) − F(t₁)] / (t₂ − t₁), tᵢ = t₀ + fᵢ (tₚ − t₀); t₀ initial contact, tₚ impact peak, F linear
 * between samples.
 * Units: N and s in; N/s out.
 * Limits: `null` where the force rises without a separate impact peak. The filter's cutoff and the window
 * move this number: report both, and never compare across definitions.
 * Source: window as in the defaults, also Lemire et al. 2022 (both read as abstracts).
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact is used, and its stride where no mass by force is known.
 * @param options - Window and rule; {@link AVERAGE_LOADING_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: window not rising within 0 to 1, contact outside the recording;
 * `missing-value`: body weight unknown.
 * @example
 * const force = { up: new Float64Array([0, 900, 700, 1500, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.08 };
 * averageLoadingRate({ ...ground, sampleRate: 50, force }, { contact: whole }); // 45000.000
 */
export function averageLoadingRate(
  ground: GroundReaction,
  step: Step,
  options: AverageLoadingRateOptions = AVERAGE_LOADING_RATE_DEFAULTS,
): NewtonsPerSecond | null {
  const { from, to, impactPeak } = withDefaults(AVERAGE_LOADING_RATE_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  const rise = timeToImpactPeak(ground, step, impactPeak);
  if (rise === null) return null;
  const { up } = footOf(ground, step).force;
  const force = (part: number): number =>
    valueAt(up, ground.sampleRate, step.contact.initialContact + part * rise);
  return (force(to) - force(from)) / ((to - from) * rise);
}
