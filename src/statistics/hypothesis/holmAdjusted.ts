import { fail } from "../../units/index.js";
import { requireValues, type Values } from "../requireValues.js";

/**
 * Adjusts probabilities of several tests so that the chance of one false claim among them all stays bounded.
 *
 * Formula: with the m probabilities in rising order, the i-th becomes the largest of (m − j + 1) pⱼ for j up to i, at most 1
 * (Holm's step-down rule).
 * Units: none.
 * Limits: holds whatever the tests' dependence. Comparing an adjusted probability with α is Holm's test.
 * Source: Holm 1979, Scand. J. Stat. 6:65, from memory; NumPy by the same rule.
 * @param probabilities - Each from 0 to 1, at least one.
 * @returns In the order given.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`: no list of numbers; `out-of-range`: one outside 0 to 1.
 * @example
 * holmAdjusted([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holmAdjusted(probabilities: Values): readonly number[] {
  requireValues("probabilities", probabilities, 1);
  const m = probabilities.length;
  const ranked = Array.from(probabilities, (p, place) => ({ p, place })).sort((a, b) => a.p - b.p);
  const adjusted = new Array<number>(m);
  let largest = 0;
  for (const [rank, { p, place }] of ranked.entries()) {
    if (p < 0 || p > 1) {
      fail("out-of-range", `probabilities holds ${p} at place ${place}; each lies from 0 to 1`, {
        argument: "probabilities",
        where: `place ${place}`,
      });
    }
    largest = Math.max(largest, Math.min(1, (m - rank) * p));
    adjusted[place] = largest;
  }
  return adjusted;
}
