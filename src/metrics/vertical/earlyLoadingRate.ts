import type { Step } from "../../events/index.js";
import { valueAt } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type Complete, type Fraction, type NewtonsPerSecond, withDefaults } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";

/** Window early in the contact, as fractions of contact time. */
export interface EarlyLoadingRateOptions {
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
}

/** 3 to 12 % of contact time. Source: Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382 (abstract). */
export const EARLY_LOADING_RATE_DEFAULTS: Complete<EarlyLoadingRateOptions> = { from: 0.03, to: 0.12 };

/**
 * Gives the mean slope of the vertical force early in the contact, with or without an impact peak.
 *
 * Formula: [F(t₂) − F(t₁)] / (t₂ − t₁), tᵢ = t₀ + fᵢ t_c; t₀ initial contact, t_c contact time, F linear
 * between samples.
 * Units: N and s in; N/s out.
 * Limits: exists for every contact. The filter's cutoff, the threshold and the window move this number:
 * report them, and never compare across definitions.
 * Source: window as in the defaults.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @param options - The window; {@link EARLY_LOADING_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: window not rising within 0 to 1,
 * contact outside the recording.
 * @example
 * const force = { up: new Float64Array([0, 2000, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * earlyLoadingRate({ ...ground, sampleRate: 4, force }, { contact: whole }); // 8000.000
 */
export function earlyLoadingRate(
  ground: GroundReaction,
  step: Step,
  options: EarlyLoadingRateOptions = EARLY_LOADING_RATE_DEFAULTS,
): NewtonsPerSecond {
  const { from, to } = withDefaults(EARLY_LOADING_RATE_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  const { initialContact, toeOff } = requireContact(ground, step);
  const duration = toeOff - initialContact;
  const { up } = footOf(ground, step).force;
  const force = (part: number): number => valueAt(up, ground.sampleRate, initialContact + part * duration);
  return (force(to) - force(from)) / ((to - from) * duration);
}
