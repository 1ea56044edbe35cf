import { requireValues, type Values } from "./requireValues.js";

/**
 * Gives the arithmetic mean.
 *
 * Formula: m = Σx / n, corrected by the mean of x − m, so that equal values have exactly themselves as mean.
 * Units: those of the values.
 * Limits: at least one value.
 * Source: definition.
 * @param values - Finite numbers, at least one.
 * @throws GaitKineticsError `too-short`: no value; `not-finite`, `wrong-type`: a value that is no finite number.
 * @example
 * mean([1, 2, 4.5]) // 2.5
 */
export function mean(values: Values): number {
  requireValues("values", values, 1);
  const n = values.length;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  const first = sum / n;
  let rest = 0;
  for (let i = 0; i < n; i++) rest += (values[i] as number) - first;
  return first + rest / n;
}
