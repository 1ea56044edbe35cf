import { requireNumber } from "../units/index.js";

/**
 * Gives how many independent values would fix a mean as well as these correlated ones do.
 *
 * Formula: n (1 − r₁) / (1 + r₁), r₁ taken as 0 where it is negative.
 * Units: none.
 * Limits: holds for a series whose correlation falls off as r₁, r₁², r₁³ … (first-order autoregression) and that is long
 * against that fall. A negative r₁ would give more than n and is not trusted: with strides it is chance more often than
 * not.
 * Source: Zwiers & von Storch 1995, J. Climate 8:336, from memory; the limit of n / [1 + 2 Σ (1 − k/n) r₁ᵏ] for large n,
 * which the tests hold it to.
 * @param n - Number of values, above 0.
 * @param r1 - Correlation of each with the next, from −1 to below 1.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: `n` or `r1` outside its range.
 * @example
 * effectiveNumber(40, 0.6) // 10
 */
export function effectiveNumber(n: number, r1: number): number {
  requireNumber("n", n, { above: 0 });
  requireNumber("r1", r1, { from: -1, below: 1 });
  const r = Math.max(0, r1);
  return (n * (1 - r)) / (1 + r);
}
