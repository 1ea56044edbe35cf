import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import {
  type Complete,
  type Fraction,
  type NewtonsPerSecond,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { largestSample } from "../common/largestSample.js";
import { largestSlope } from "../common/largestSlope.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";

/** Window on the first braking rise, and which minimum ends that rise. */
export interface BrakingLoadingRateOptions {
  /** As fractions of the time from initial contact to the first minimum. */
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
  /** Share of the peak braking force that a minimum must reach to count as the first. */
  readonly share?: Fraction | undefined;
}

/** The window of the vertical loading rates, and half the peak. Source: both this library's own rule. */
export const BRAKING_LOADING_RATE_DEFAULTS: Complete<BrakingLoadingRateOptions> = {
  from: 0.2,
  to: 0.8,
  share: 0.5,
};

/**
 * Gives the largest slope of the braking force over the middle of its first rise.
 *
 * Formula: max (Fᵢ − Fᵢ₊₁) fₛ, F the forward force, over successive samples that both lie in 20 to 80 % of
 * the time from initial contact to the first local minimum of F that reaches half the peak braking force.
 * Units: N and s in; N/s out.
 * Limits: `null` where the force never points backward, or only fades from initial contact on. Below 1 kHz it
 * is biased low.
 * Source: the vertical loading rate's window (Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382, abstract)
 * laid on the braking force; which minimum ends the rise is this library's own rule.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @param options - Window and rule; {@link BRAKING_LOADING_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `out-of-range`:
 * window not rising within 0 to 1, share not in 0 to 1, contact outside the recording.
 * @example
 * const force = { up: new Float64Array(5), forward: new Float64Array([0, -200, 0, 160, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * brakingLoadingRate({ ...ground, sampleRate: 8, force }, { contact: whole }); // 1600.000
 */
export function brakingLoadingRate(
  ground: GroundReaction,
  step: Step,
  options: BrakingLoadingRateOptions = BRAKING_LOADING_RATE_DEFAULTS,
): NewtonsPerSecond | null {
  const { from, to, share } = withDefaults(BRAKING_LOADING_RATE_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  requireNumber("share", share, { above: 0, to: 1 });
  const forward = requireForce(footOf(ground, step), "forward", "brakingLoadingRate");
  const { initialContact, toeOff } = requireContact(ground, step);
  const { sampleRate } = ground;
  const peak = largestSample(forward, sampleRate, initialContact, toeOff, -1);
  if (!(peak > 0)) return null;
  const minimum = firstMinimum(forward, -share * peak, initialContact * sampleRate, toeOff * sampleRate);
  const rise = minimum === null ? 0 : minimum / sampleRate - initialContact;
  return rise > 0
    ? largestSlope(forward, sampleRate, initialContact + from * rise, initialContact + to * rise, -1)
    : null;
}

/**
 * The first sample at or below `level` that lies below the one before it and is left upward, or by the end.
 */
function firstMinimum(samples: Float64Array, level: number, from: number, to: number): number | null {
  const last = Math.floor(to);
  let lowest: number | null = null;
  for (let i = Math.max(1, Math.ceil(from)); i <= last; i++) {
    const value = samples[i] as number;
    const before = samples[i - 1] as number;
    if (value < before) lowest = i;
    else if (value > before && lowest !== null) {
      if (before <= level) return lowest;
      lowest = null;
    }
  }
  return lowest !== null && (samples[lowest] as number) <= level ? lowest : null;
}
