import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { LARGEST } from "../requireValues.js";

/** Of what, and how sure. */
export interface SmallestDetectableChangeOptions {
  /** How many standard deviations a difference must leave. */
  readonly multiplier?: number | undefined;
  /** Trials whose mean is taken before and after. */
  readonly trials?: number | undefined;
}

/** 1.96: beyond it lie 5 in 100 differences without any change. Source: Weir 2005, J. Strength Cond. Res. 19:231 (abstract). */
export const SMALLEST_DETECTABLE_CHANGE_DEFAULTS: Complete<SmallestDetectableChangeOptions> = {
  multiplier: 1.96,
  trials: 1,
};

/**
 * Gives the smallest detectable change: how far two measurements of one subject must lie apart to be more than error.
 *
 * Formula: 1.96 √2 SEM/√m, m the trials of each mean. Of two trials, with the standard error of consistency, it is half the
 * width of the 95 % limits of agreement.
 * Units: that of the standard error.
 * Limits: also called the minimal detectable change and smallest detectable difference. For single measurements of one
 * subject; it says nothing of whether a change matters.
 * Source: Weir 2005, J. Strength Cond. Res. 19:231 (abstract); law of the limits of agreement: Sensors 2020, 20:4866,
 * table 3, whose numbers close.
 * @param standardError - Standard error of measurement of one trial, 0 or more.
 * @param options - {@link SMALLEST_DETECTABLE_CHANGE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range; `unknown-option`.
 * @example
 * smallestDetectableChange(4.4).toFixed(1) // "12.2"
 */
export function smallestDetectableChange(
  standardError: number,
  options: SmallestDetectableChangeOptions = {},
): number {
  requireNumber("standardError", standardError, { from: 0, to: LARGEST });
  const { multiplier, trials } = withDefaults<SmallestDetectableChangeOptions>(
    SMALLEST_DETECTABLE_CHANGE_DEFAULTS,
    options,
  );
  requireNumber("multiplier", multiplier, { above: 0, to: LARGEST });
  requireNumber("trials", trials, { from: 1, whole: true });
  return multiplier * Math.SQRT2 * (standardError / Math.sqrt(trials));
}
