import { requireNumber } from "../units/index.js";
import { requireValues, type Values } from "./requireValues.js";

/**
 * Gives a quantile of a sample, linear between the ordered values.
 *
 * Formula: with the values in order x₀ … xₙ₋₁ and h = (n − 1) p, the value a fraction h − ⌊h⌋ of the way from x₍⌊h⌋₎ to
 * the next one.
 * Units: those of the values.
 * Limits: at least one value. There are nine rules in use; this one is NumPy's `linear` and R's type 7, which meets the
 * smallest value at 0 and the largest at 1.
 * Source: Hyndman & Fan 1996, Am. Stat. 50:361, definition 7 (number of the definition from memory).
 * @param values - Finite numbers, at least one, in any order.
 * @param p - Share of the values below, from 0 to 1.
 * @throws GaitKineticsError `out-of-range`: `p` outside 0 to 1; `too-short`: no value; `not-finite`, `wrong-type`: a
 *   value that is no finite number.
 * @example
 * quantile([4, 1, 3, 2], 0.25) // 1.75
 */
export function quantile(values: Values, p: number): number {
  requireValues("values", values, 1);
  requireNumber("p", p, { from: 0, to: 1 });
  const ordered = Float64Array.from(values).sort();
  const place = (ordered.length - 1) * p;
  const below = Math.floor(place);
  const low = ordered[below] as number;
  const high = ordered[Math.min(below + 1, ordered.length - 1)] as number;
  return low + (place - below) * (high - low);
}
