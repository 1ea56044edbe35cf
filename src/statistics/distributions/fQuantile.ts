import { fail, requireNumber } from "../../units/index.js";
import { logFAbove, logFBelow, logFDensity } from "./fTails.js";
import { requireFreedom } from "./requireFreedom.js";
import { solveTail } from "./solveTail.js";

/**
 * Gives the value that the F distribution stays below with the probability `p`.
 *
 * Formula: the f at which {@link fProbability} is p, by Newton's method on the logarithm of the smaller tail against ln f.
 * Units: none.
 * Limits: relative error below 1e-11 for degrees of freedom from 0.5 to 10⁴; near 1, p itself carries fewer digits of
 * 1 − p: the quantile of 1 − p with the degrees of freedom exchanged is one over it.
 * Source: definition; held to SciPy's `stats.f.ppf` and to mpmath.
 * @param p - Probability, above 0 and below 1.
 * @param df1 - Degrees of freedom of the upper variance, above 0, at most 1e8; need not be whole.
 * @param df2 - Degrees of freedom of the lower variance, above 0, at most 1e8.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range, or a quantile beyond
 *   the largest number (few degrees of freedom, extreme p).
 * @example
 * fQuantile(0.95, 2, 12).toFixed(4) // "3.8853"
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  requireNumber("p", p, { above: 0, below: 1 });
  requireFreedom("df1", df1);
  requireFreedom("df2", df2);
  const upper = p > 0.5;
  const logTail = upper ? logFAbove : logFBelow;
  const at = (u: number) => {
    const f = Math.exp(u);
    const tail = logTail(f, df1, df2);
    const slope = Math.exp(logFDensity(f, df1, df2) - tail);
    return { logTail: tail, slope: upper ? -slope : slope };
  };
  const value = Math.exp(solveTail(at, upper ? Math.log1p(-p) : Math.log(p), 0));
  if (value === 0 || !Number.isFinite(value)) {
    fail(
      "out-of-range",
      `the F quantile at p ${p} with ${df1} and ${df2} degrees of freedom is beyond the range of numbers`,
      {
        argument: "p",
        values: { p, df1, df2 },
      },
    );
  }
  return value;
}
