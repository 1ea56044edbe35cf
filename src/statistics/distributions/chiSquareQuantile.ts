import { fail, requireNumber } from "../../units/index.js";
import { gammaTails, logGammaLead } from "./gammaTails.js";
import { requireFreedom } from "./requireFreedom.js";
import { solveTail } from "./solveTail.js";

/**
 * Gives the value that the chi-square distribution stays below with the probability `p`.
 *
 * Formula: the x at which {@link chiSquareProbability} is p, by Newton's method on the logarithm of the smaller tail against
 * ln x.
 * Units: none.
 * Limits: relative error below 1e-11 for ν from 0.5 to 10⁴; near 1, p itself carries fewer digits of 1 − p.
 * Source: definition; held to SciPy's `stats.chi2.ppf` and to mpmath.
 * @param p - Probability, above 0 and below 1.
 * @param df - Degrees of freedom ν, above 0, at most 1e8; need not be whole.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range, or a quantile below
 *   the smallest number (few degrees of freedom, extreme p).
 * @example
 * chiSquareQuantile(0.95, 10).toFixed(3) // "18.307"
 */
export function chiSquareQuantile(p: number, df: number): number {
  requireNumber("p", p, { above: 0, below: 1 });
  requireFreedom("df", df);
  const upper = p > 0.5;
  const a = df / 2;
  const at = (u: number) => {
    const half = Math.exp(u) / 2;
    const tail = gammaTails(a, half)[upper ? "above" : "below"];
    const slope = Math.exp(logGammaLead(a, half) - tail);
    return { logTail: tail, slope: upper ? -slope : slope };
  };
  const value = Math.exp(solveTail(at, upper ? Math.log1p(-p) : Math.log(p), Math.log(df)));
  if (value === 0) {
    fail(
      "out-of-range",
      `the chi-square quantile at p ${p} with ${df} degrees of freedom is below the smallest number`,
      {
        argument: "p",
        values: { p, df },
      },
    );
  }
  return value;
}
