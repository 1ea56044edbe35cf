import { requireNumber } from "../../units/index.js";
import { logFAbove, logFBelow } from "./fTails.js";
import { requireFreedom } from "./requireFreedom.js";
import { requireTail, type Tail } from "./requireTail.js";

/**
 * Gives the probability that a value of the F distribution lies below or above `f`.
 *
 * Formula: with x = ν₂/(ν₂ + ν₁ f), above it Iₓ(ν₂/2, ν₁/2), below it I₁₋ₓ(ν₁/2, ν₂/2); I the regularised incomplete beta
 * function.
 * Units: none.
 * Limits: relative error below 1e-12 in either tail for degrees of freedom from 0.5 to 10⁴ and tails down to 1e-250.
 * Source: definition; held to SciPy's `stats.f` and to mpmath.
 * @param f - From 0, a ratio of two variances.
 * @param df1 - Degrees of freedom of the upper variance, above 0, at most 1e8; need not be whole.
 * @param df2 - Degrees of freedom of the lower variance, above 0, at most 1e8.
 * @param tail - Which side; what a test of two variances asks for is `"above"`.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * fProbability(9.59, 2, 12, "above").toFixed(5) // "0.00325"
 */
export function fProbability(f: number, df1: number, df2: number, tail: Tail = "below"): number {
  requireNumber("f", f, { from: 0 });
  requireFreedom("df1", df1);
  requireFreedom("df2", df2);
  requireTail(tail);
  return Math.exp(tail === "above" ? logFAbove(f, df1, df2) : logFBelow(f, df1, df2));
}
