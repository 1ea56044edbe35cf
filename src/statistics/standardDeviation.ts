import { mean } from "./mean.js";
import { requireValues, type Values } from "./requireValues.js";

/**
 * Gives the standard deviation of a sample.
 *
 * Formula: s = √[Σ(x − m)² / (n − 1)], m the mean.
 * Units: those of the values.
 * Limits: at least two values. Of values that follow one another it says how far they spread, not how sure their mean
 * is: {@link meanInterval} does.
 * Source: definition.
 * @param values - Finite numbers, at least two.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number.
 * @example
 * standardDeviation([1, 2, 3, 4, 5]).toFixed(4) // "1.5811"
 */
export function standardDeviation(values: Values): number {
  requireValues("values", values, 2);
  const centre = mean(values);
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += ((values[i] as number) - centre) ** 2;
  return Math.sqrt(squares / (values.length - 1));
}
