import { requireNumber } from "../../units/index.js";
import { gammaTails } from "./gammaTails.js";
import { requireFreedom } from "./requireFreedom.js";
import { requireTail, type Tail } from "./requireTail.js";

/**
 * Gives the probability that a value of the chi-square distribution lies below or above `x`.
 *
 * Formula: below it P(ν/2, x/2), above it Q(ν/2, x/2), the regularised incomplete gamma functions.
 * Units: none.
 * Limits: relative error below 1e-12 in either tail for ν from 0.5 to 10⁴ and tails down to 1e-250.
 * Source: definition; held to SciPy's `stats.chi2` and to mpmath.
 * @param x - From 0.
 * @param df - Degrees of freedom ν, above 0, at most 1e8; need not be whole.
 * @param tail - Which side.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * chiSquareProbability(18.307, 10, "above").toFixed(4) // "0.0500"
 */
export function chiSquareProbability(x: number, df: number, tail: Tail = "below"): number {
  requireNumber("x", x, { from: 0 });
  requireFreedom("df", df);
  requireTail(tail);
  return Math.exp(gammaTails(df / 2, x / 2)[tail]);
}
