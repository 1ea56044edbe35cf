import { quantile } from "./quantile.js";
import type { Values } from "./requireValues.js";

/**
 * Gives the median: the middle value, or the mean of the two in the middle.
 *
 * Formula: the quantile at one half, see {@link quantile}.
 * Units: those of the values.
 * Limits: at least one value.
 * Source: definition.
 * @param values - Finite numbers, at least one, in any order.
 * @throws GaitKineticsError `too-short`: no value; `not-finite`, `wrong-type`: a value that is no finite number.
 * @example
 * median([5, 1, 2, 40]) // 3.5
 */
export function median(values: Values): number {
  return quantile(values, 0.5);
}
