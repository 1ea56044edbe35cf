import type { Interval } from "../../statistics/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { plainNumber } from "./plainNumber.js";

/** Writes an interval of a difference, with the decimals of its half width: `-118 to -91`. */
export function intervalWords({ low, high }: Interval, decimals: number = decimalsOf({ low, high })): string {
  return `${formatDifference(low, decimals)} to ${formatDifference(high, decimals)}`;
}

/** Writes the level of an interval: `95 %`. */
export function levelWords(level: number): string {
  return `${plainNumber(100 * level)} %`;
}

function decimalsOf({ low, high }: Pick<Interval, "low" | "high">): number {
  return decimalsFor(Math.max(Math.abs(low), Math.abs(high)), (high - low) / 2);
}
