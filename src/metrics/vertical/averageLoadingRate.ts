import type { Step } from "../../events/index.js";
import { valueAt } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import {
  type Complete,
  type Fraction,
  type NewtonsPerSecond,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { levelCrossing } from "../common/levelCrossing.js";
import { requireContact } from "../common/requireContact.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";
import { IMPACT_PEAK_DEFAULTS, type ImpactPeakOptions } from "./impactPeakRule.js";
import { timeToImpactPeak } from "./timeToImpactPeak.js";

/** Window on the first rise, as fractions of the way from initial contact to the impact peak, and the peak's rule. */
export interface AverageLoadingRateOptions {
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
  /** What the fractions are of: the time to the peak, or the force of the peak, at which the force first reaches them. */
  readonly of?: "time" | "force" | undefined;
  /** Share of contact time that stands in for the peak where there is none, 0.13 in some papers; `null` for no value. */
  readonly withoutPeak?: Fraction | null | undefined;
  readonly impactPeak?: ImpactPeakOptions | undefined;
}

/**
 * The middle of the rise, clear of its toe and of the rounding under the peak. Source:
 * doi:10.1055/s-0042-107248, method B.
 */
export const AVERAGE_LOADING_RATE_DEFAULTS: Complete<AverageLoadingRateOptions> = {
  from: 0.2,
  to: 0.8,
  of: "time",
  withoutPeak: null,
  impactPeak: IMPACT_PEAK_DEFAULTS,
};

/**
 * Gives the mean slope of the vertical force over the middle of its first rise.
 *
 * Formula: [F(t₂) − F(t₁)] / (t₂ − t₁), tᵢ = t₀ + fᵢ (tₚ − t₀); t₀ initial contact, tₚ impact peak, F linear
 * between samples. Of the force: tᵢ where F first reaches fᵢ F(tₚ). From 0 to 1 it is the slope of the whole rise.
 * Units: N and s in; N/s out.
 * Limits: `null` where the force rises without a separate impact peak, unless a share of contact time stands in, which is
 * another definition and never belongs in one mean with it. The filter's cutoff and the window
 * move this number: report both, and never compare across definitions.
 * Source: window as in the defaults, also Lemire et al. 2022; window of the force, whole rise: Schmida et al. 2022, Med.
 * Sci. Sports Exerc. 54:1382 (all read as abstracts); 13 % of contact time from memory.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact is used, and its stride where no mass by force is known.
 * @param options - Window and rule; {@link AVERAGE_LOADING_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: window not rising within 0 to 1, share not in 0 to 1, contact outside the recording;
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
  const { from, to, of, withoutPeak, impactPeak } = withDefaults(AVERAGE_LOADING_RATE_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  requireOneOf("of", of, ["time", "force"]);
  if (withoutPeak !== null) requireNumber("withoutPeak", withoutPeak, { above: 0, to: 1 });
  const { initialContact, toeOff } = requireContact(ground, step);
  const stand = withoutPeak === null ? null : withoutPeak * (toeOff - initialContact);
  const rise = timeToImpactPeak(ground, step, impactPeak) ?? stand;
  if (rise === null) return null;
  const { sampleRate } = ground;
  const { up } = footOf(ground, step).force;
  const end = initialContact + rise;
  const timeAt = (part: number): number => {
    if (of === "time" || part === 0) return initialContact + part * rise;
    if (part === 1) return end;
    const level = part * valueAt(up, sampleRate, end);
    const [first, last] = [Math.ceil(initialContact * sampleRate), Math.ceil(end * sampleRate)];
    return (levelCrossing(up, first, last, level, "first") ?? last) / sampleRate;
  };
  const [start, stop] = [timeAt(from), timeAt(to)];
  if (!(stop > start)) return null;
  return (valueAt(up, sampleRate, stop) - valueAt(up, sampleRate, start)) / (stop - start);
}
