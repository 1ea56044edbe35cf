import { requireNumber } from "../../units/index.js";
import { LARGEST } from "../requireValues.js";

/** Effect sizes that a printed t test gives. */
export interface EffectSizesFromT {
  /** 2t/√ν: of two groups of the same size. */
  readonly d: number;
  /** t √(1/n₁ + 1/n₂): of these sizes; the difference of means in pooled standard deviations, for a pooled t exactly. */
  readonly dOfSizes: number;
  /** Point-biserial correlation, with t's sign. */
  readonly r: number;
}

/**
 * Gives effect sizes from a t test of two independent groups as a paper prints it.
 *
 * Formula: d = 2t/√ν; d = t √(1/n₁ + 1/n₂); r = t/√(t² + ν).
 * Units: none.
 * Limits: for independent groups: of a paired t they would be too large. From Welch's t the second is near, not exact.
 * Source: Becker, University of Colorado Colorado Springs, effect size pages, whose example they give.
 * @param t - As printed.
 * @param df - Degrees of freedom, above 0.
 * @param n1 - Size of the first group, from 2.
 * @param n2 - Size of the second.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * effectSizesFromT(9.16, 73.89, 40, 40).d.toFixed(2) // "2.13"
 */
export function effectSizesFromT(t: number, df: number, n1: number, n2: number): EffectSizesFromT {
  requireNumber("t", t, { from: -LARGEST, to: LARGEST });
  requireNumber("df", df, { above: 0 });
  requireNumber("n1", n1, { from: 2, whole: true });
  requireNumber("n2", n2, { from: 2, whole: true });
  return {
    d: (2 * t) / Math.sqrt(df),
    dOfSizes: t * Math.sqrt(1 / n1 + 1 / n2),
    r: t / Math.hypot(t, Math.sqrt(df)),
  };
}
