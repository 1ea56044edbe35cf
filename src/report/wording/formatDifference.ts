import { decimalsFor } from "./decimalsFor.js";
import { formatNumber } from "./formatNumber.js";

/**
 * Writes a difference with its sign.
 *
 * @param value - Finite.
 * @param decimals - Of the row; see `decimalsFor`.
 * @example
 * formatDifference(1.5, 1) // "+1.5"
 */
export function formatDifference(value: number, decimals: number = decimalsFor(value)): string {
  const text = formatNumber(value, decimals);
  return Number(text) > 0 ? `+${text}` : text;
}
