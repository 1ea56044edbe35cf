import type { Fraction, Metres, Seconds } from "../../units/index.js";
import type { LandingMargin } from "./landing.js";
import { type LandingOptions, landingSettings } from "./options.js";

/**
 * What the rule for the toe of the force and the foot level leave open, m. A judgement: on an open recording (Fukuchi et al.
 * 2017, 2.5 m/s on a belt) a line in place of the curve moves touchdown by −14 and take-off by −36 mm, a foot level of 600 in
 * place of 250 N by +18 and +34 mm. On synthetic runs, whose toe is clean, their means are off by less than 5 mm.
 */
export const LANDING_MARGIN: LandingMargin = { touchdown: 0.02, takeOff: 0.04 };
/** Height of the centre of mass as a share of body height. Common practice. */
const CENTRE_OF_MASS_HEIGHT = 0.55;
/** Height of the centre of mass where body height is not known, m, and how far that may be off. Common practice. */
const UNKNOWN_HEIGHT: { readonly height: number; readonly off: number } = { height: 0.95, off: 0.1 };

/** Mean height of the centre of mass, m, from body height; a typical one where that is `null`. */
export function centreOfMassHeight(height: Metres | null): Metres {
  return height === null ? UNKNOWN_HEIGHT.height : CENTRE_OF_MASS_HEIGHT * height;
}

/**
 * Gives how far touchdown and take-off distance by force may be off by the assumptions.
 *
 * Formula: m₀ + h₀ (|b| + |r|) + (g T²/6) |r| + δh₀ |b + r + grade|; m₀ 20 mm at touchdown and
 * 40 mm at take-off, {@link LANDING_MARGIN}; b the balance that was taken off, r the rest of the forward force, as shares of
 * the vertical; h₀ = 0.55 body height, where that is not known 0.95 m with δh₀ = 0.1 m.
 * Units: s, m in; m out.
 * Limits: half widths, to be taken off and added. They are of the absolute values, which belong to the rule for the toe;
 * in a difference of two recordings by one rule most of m₀ cancels. It takes the forward force to be the worse of what it may be: b no tilt
 * but wind or a hand, r no change of speed but a tilt. T²/6 holds for contacts of a third of the stride.
 * Source: law: a forward force that is neglected shifts the balance of angular momentum by h₀ F ÷ weight, one that is not
 * there bends the path of the centre of mass; m₀ is a judgement from an open recording.
 * @param rest - r, over the stride or the trial.
 * @param strideTime - T.
 * @param options - Balance, grade, height, gravity; {@link LANDING_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: an option out of bounds.
 * @example
 * landingMargin(0, 0.7, { balance: 0.005, height: 1.8 }).touchdown; // 0.02495
 */
export function landingMargin(
  rest: Fraction,
  strideTime: Seconds,
  options: LandingOptions = {},
): LandingMargin {
  const { balance, grade, height, gravity } = landingSettings(options);
  const h0 = centreOfMassHeight(height);
  const off = height === null ? UNKNOWN_HEIGHT.off * Math.abs(rest + balance + grade) : 0;
  const bent = (gravity * strideTime * strideTime) / 6;
  const forward = h0 * Math.abs(balance) + (h0 + bent) * Math.abs(rest) + off;
  return {
    touchdown: LANDING_MARGIN.touchdown + forward,
    takeOff: LANDING_MARGIN.takeOff + forward,
  };
}
