import { mean } from "./mean.js";
import { requireValues, type Values } from "./requireValues.js";

/**
 * Gives the correlation of each value with the one after it.
 *
 * Formula: r₁ = Σ (xᵢ − m)(xᵢ₊₁ − m) / Σ (xᵢ − m)², the upper sum over n − 1 pairs, the lower over all n values, m the
 * mean of all.
 * Units: none.
 * Limits: at least two values; 0 where all are equal. It lies between −cos(π/(n + 1)) and cos(π/(n + 1)), and in short
 * series it comes out too low, by about (1 + 4ρ)/n for a true ρ (Kendall 1954 and Marriott & Pope 1954, from memory).
 * Source: Box & Jenkins' estimator of the autocorrelation, from memory; the same as NumPy's `correlate` of the centred
 * series over its sum of squares.
 * @param values - Finite numbers in their order of time, at least two.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number.
 * @example
 * lagOneCorrelation([1, 2, 3, 4, 5]) // 0.4
 */
export function lagOneCorrelation(values: Values): number {
  requireValues("values", values, 2);
  const centre = mean(values);
  let products = 0;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const here = (values[i] as number) - centre;
    squares += here * here;
    if (i + 1 < values.length) products += here * ((values[i + 1] as number) - centre);
  }
  return squares === 0 ? 0 : products / squares;
}
