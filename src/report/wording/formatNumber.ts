import { decimalsFor } from "./decimalsFor.js";

/** From here on a number is written in powers of ten. */
const TOO_LARGE = 1e7;

/**
 * Writes a number for a person: with the decimals of its row, or four significant digits by itself; a number too large
 * for a column, or too small for its decimals, in powers of ten.
 *
 * @param value - Finite.
 * @param decimals - Of the row; see `decimalsFor`.
 * @example
 * formatNumber(16.284, 2) // "16.28"
 */
export function formatNumber(value: number, decimals: number = decimalsFor(value)): string {
  const size = Math.abs(value);
  if (size >= TOO_LARGE) return value.toExponential(1).replace("e+", "e");
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}
