import { requireNumber } from "../../units/index.js";

/**
 * Gives the factor between the cutoff of one pass and the net cutoff of several passes of a Butterworth filter.
 *
 * Formula: C = (2^(1/n) − 1)^(1/(2N)), n passes of order N. A low-pass is designed at tan(π f′/fs) = tan(π f/fs) / C,
 * a high-pass at tan(π f′/fs) = C tan(π f/fs); then all passes together are −3 dB at f.
 * Units: none.
 * Limits: exact on the tangent. Dividing the frequency itself is right only far below the Nyquist frequency: at 30 Hz
 * of 100 Hz it gives a net gain of 0.90 where 0.71 is wanted.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed., eq. 2.19 (0.802 for two passes of order 2).
 * @param passes - Number of passes, a whole number from 1.
 * @param order - Order of one pass, a whole number from 1.
 * @throws GaitKineticsError `out-of-range`, `wrong-type` or `not-finite`: passes or order no whole number from 1.
 * @example
 * passCorrection(2, 2) // 0.80224
 */
export function passCorrection(passes: number, order: number): number {
  requireNumber("passes", passes, { from: 1, whole: true });
  requireNumber("order", order, { from: 1, whole: true });
  return correctionFor(passes, order);
}

/** The formula, for arguments that are known to be good. */
export const correctionFor = (passes: number, order: number): number =>
  (2 ** (1 / passes) - 1) ** (1 / (2 * order));
