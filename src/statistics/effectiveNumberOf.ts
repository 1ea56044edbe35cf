import { effectiveNumber } from "./effectiveNumber.js";
import { lagOneCorrelation } from "./lagOneCorrelation.js";
import type { Values } from "./requireValues.js";

/**
 * Gives how many independent values a series of correlated ones is worth, from its own correlation.
 *
 * Formula: {@link effectiveNumber} of the count and the {@link lagOneCorrelation}.
 * Units: none.
 * Limits: at least two values; too high, on average, in short series, where r₁ comes out too low.
 * Source: as {@link effectiveNumber}.
 * @param values - Finite numbers in their order of time, at least two.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number.
 * @example
 * effectiveNumberOf([1, 2, 3, 4, 5]).toFixed(3) // "2.143"
 */
export function effectiveNumberOf(values: Values): number {
  return effectiveNumber(values.length, lagOneCorrelation(values));
}
