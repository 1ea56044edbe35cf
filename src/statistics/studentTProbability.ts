import { requireNumber } from "../units/index.js";
import { centralPart, isFarOut, logUpperTail } from "./studentTTails.js";

/**
 * Gives the probability that a value of Student's t distribution is no larger than `t`.
 *
 * Formula: for t < 0, ½ Iₓ(ν/2, ½) with x = ν/(ν + t²) and I the regularised incomplete beta function; one minus that of
 * −t for t > 0.
 * Units: none.
 * Limits: relative error below 1e-12 in the lower tail for ν from 0.5 to 10⁶; for the upper tail give −t.
 * Source: definition; held to SciPy's `stats.t` and to mpmath.
 * @param t - Any finite number.
 * @param df - Degrees of freedom ν, above 0, at most 1e300; need not be whole.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * studentTProbability(-2.228, 10).toFixed(4) // "0.0250"
 */
export function studentTProbability(t: number, df: number): number {
  requireNumber("t", t);
  requireNumber("df", df, { above: 0, to: 1e300 });
  const size = Math.abs(t);
  if (!isFarOut(size, df)) return 0.5 + Math.sign(t) * centralPart(size, df);
  const tail = Math.exp(logUpperTail(size, df));
  return t < 0 ? tail : 1 - tail;
}
