import { type Complete, withDefaults } from "../units/index.js";
import { effectiveNumber } from "./effectiveNumber.js";
import { lagOneCorrelation } from "./lagOneCorrelation.js";
import type { Values } from "./requireValues.js";

/** How the correlation of successive values is taken. */
export interface CorrelationOptions {
  /** Whether r₁ is freed of its bias in short series before it is used. */
  readonly correctBias?: boolean | undefined;
}

/** The correlation as it comes out: the plain textbook formula. */
export const CORRELATION_DEFAULTS: Complete<CorrelationOptions> = { correctBias: false };

/**
 * Gives how many independent values a series of correlated ones is worth, from its own correlation.
 *
 * Formula: {@link effectiveNumber} of the count n and the {@link lagOneCorrelation} r₁; with `correctBias`, of
 * (n r₁ + 1)/(n − 4) in place of r₁, since r₁ falls short of the true ρ by about (1 + 4ρ)/n; that number is kept from
 * falling below 2 where the plain one does not.
 * Units: none.
 * Limits: at least two values. Plain, it is too high on average in short series: of differences between two series of 30
 * values with ρ 0.3 and no true difference, 1.7 in 100 leave the 99 % interval, with `correctBias` 1.0 (6000 pairs, the
 * tests hold both to it).
 * Source: as {@link effectiveNumber}; bias after Kendall 1954 and Marriott & Pope 1954, Biometrika 41:390, from memory,
 * checked by simulation in the tests.
 * @param values - Finite numbers in their order of time, at least two.
 * @param options - {@link CORRELATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number; `unknown-option`.
 * @example
 * effectiveNumberOf([1, 2, 3, 4, 5]).toFixed(3) // "2.143"
 */
export function effectiveNumberOf(values: Values, options: CorrelationOptions = {}): number {
  const { correctBias } = withDefaults<CorrelationOptions>(CORRELATION_DEFAULTS, options);
  const r1 = lagOneCorrelation(values);
  const n = values.length;
  const plain = effectiveNumber(n, r1);
  if (!correctBias) return plain;
  const corrected = n > 4 ? (n * r1 + 1) / (n - 4) : 1;
  const number = corrected < 1 ? effectiveNumber(n, Math.max(-1, corrected)) : 0;
  return Math.max(Math.min(plain, 2), number);
}
