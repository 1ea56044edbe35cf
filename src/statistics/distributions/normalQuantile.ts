import { requireNumber } from "../../units/index.js";
import { logNormalAbove } from "./normalTail.js";
import { solveTail } from "./solveTail.js";

/**
 * Gives the value that the standard normal distribution stays below with the probability `p`.
 *
 * Formula: the z at which {@link normalProbability} is p, by Newton's method on the logarithm of the smaller tail.
 * Units: none.
 * Limits: error below 1e-13, relative but absolute within 1e-2 of p = ½; near 1, p itself carries fewer digits of 1 − p: take
 * minus the quantile of 1 − p where that is known.
 * Source: definition; held to SciPy's `stats.norm.ppf` and to mpmath.
 * @param p - Probability, above 0 and below 1.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: no number above 0 and below 1.
 * @example
 * normalQuantile(0.975).toFixed(4) // "1.9600"
 */
export function normalQuantile(p: number): number {
  requireNumber("p", p, { above: 0, below: 1 });
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const at = (z: number) => {
    const logTail = logNormalAbove(Math.max(0, z));
    return { logTail, slope: -Math.exp(-0.5 * z * z - logTail) / Math.sqrt(2 * Math.PI) };
  };
  const size = solveTail(at, Math.log(tail), Math.sqrt(-2 * Math.log(2 * tail)));
  return p < 0.5 ? -size : size;
}
