import { requireNumber } from "../../units/index.js";
import { logNormalAbove } from "./normalTail.js";

/**
 * Gives the probability that a value of the standard normal distribution is no larger than `z`.
 *
 * Formula: for z < 0, ½ Q(½, z²/2), Q the regularised upper incomplete gamma function; one minus that of −z for z > 0.
 * Units: none.
 * Limits: relative error below 1e-12 in the lower tail down to z −37; for the upper tail give −z.
 * Source: definition; held to SciPy's `stats.norm` and to mpmath.
 * @param z - Any finite number.
 * @throws GaitKineticsError `not-finite`, `wrong-type`: no finite number.
 * @example
 * normalProbability(-1.96).toFixed(4) // "0.0250"
 */
export function normalProbability(z: number): number {
  requireNumber("z", z);
  const tail = Math.exp(logNormalAbove(Math.abs(z)));
  return z < 0 ? tail : 1 - tail;
}
