import { fail, requireNumber } from "../units/index.js";
import { centralPart, isFarOut, logDensity, logUpperTail } from "./studentTTails.js";

/** A stop for the worst case: of 2·10⁵ random cases, ν from 0.1 to 10⁶, none took more than 17 steps. */
const MOST_STEPS = 100;

/**
 * Gives the value that Student's t distribution stays below with the probability `p`.
 *
 * Formula: the t at which {@link studentTProbability} is p, by Newton's method: on ln P against ln t in the tails, where
 * it comes down on the root from above, and on P itself in the middle, where it climbs to it from below.
 * Units: none.
 * Limits: relative error below 1e-13 for ν from 0.5 to 10⁶ and p from 1e-12; near 1, p itself carries fewer digits of
 * 1 − p: take minus the quantile of 1 − p where that is known.
 * Source: definition; held to SciPy's `stats.t.ppf` and to mpmath.
 * @param p - Probability, above 0 and below 1.
 * @param df - Degrees of freedom ν, above 0, at most 1e300; need not be whole.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range, or a quantile
 *   beyond the largest number (few degrees of freedom, extreme p).
 * @example
 * studentTQuantile(0.975, 10).toFixed(4) // "2.2281"
 */
export function studentTQuantile(p: number, df: number): number {
  requireNumber("p", p, { above: 0, below: 1 });
  requireNumber("df", df, { above: 0, to: 1e300 });
  const centre = Math.abs(p - 0.5);
  const tail = Math.min(p, 1 - p);
  const size = tail < 0.05 ? fromTail(tail, df) : fromCentre(centre, df);
  if (!Number.isFinite(size)) {
    fail(
      "out-of-range",
      `the quantile at p ${p} with ${df} degrees of freedom is beyond the largest number`,
      {
        argument: "p",
        values: { p, df },
      },
    );
  }
  return p < 0.5 ? -size : size;
}

/** The t > 0 with `tail` beyond it. The start is the bound Q(z) ≤ ½ exp(−z²/2) of the normal tail, bent to ν. */
function fromTail(tail: number, df: number): number {
  const target = Math.log(tail);
  const reach = (-2 * Math.log(2 * tail)) / df;
  const highest = Math.log(Number.MAX_VALUE);
  const start = 0.5 * (Math.log(df) + (reach > 700 ? reach : Math.log(Math.expm1(reach))));
  let u = Math.min(start, highest);
  for (let step = 1, i = 0; Math.abs(step) > 1e-11 && i < MOST_STEPS; i++) {
    const t = Math.exp(u);
    const logTail = isFarOut(t, df) ? logUpperTail(t, df) : Math.log(0.5 - centralPart(t, df));
    step = (logTail - target) / Math.exp(u + logDensity(t, df) - logTail);
    u += step;
    if (u > highest) return Number.POSITIVE_INFINITY;
  }
  return Math.exp(u);
}

/** The t ≥ 0 with `centre` between 0 and it. */
function fromCentre(centre: number, df: number): number {
  let t = 0;
  for (let step = 1, i = 0; Math.abs(step) > 1e-10 * t && i < MOST_STEPS; i++) {
    const part = isFarOut(t, df) ? 0.5 - Math.exp(logUpperTail(t, df)) : centralPart(t, df);
    step = (centre - part) / Math.exp(logDensity(t, df));
    t += step;
  }
  return t;
}
