import type { Interval } from "../../statistics/index.js";
import type { Spread } from "../../trial/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { formatNumber } from "./formatNumber.js";
import { formatPercent } from "./formatPercent.js";

/** A difference in words, for a row of any table: one number of decimals from left to right. */
export interface ComparedRow {
  readonly baseline: string;
  readonly changed: string;
  readonly difference: string;
  readonly interval: string;
  /** Empty where there is no share of the baseline's mean. */
  readonly percent: string;
}

/** What both a metric and its value per kilometre have. */
export interface Compared {
  readonly baseline: Spread;
  readonly changed: Spread;
  readonly difference: number;
  readonly percent: number | null;
  readonly interval: Interval;
}

/** Writes the numbers of a compared metric, per step or per kilometre. */
export function comparedRow({ baseline, changed, difference, percent, interval }: Compared): ComparedRow {
  const size = Math.max(Math.abs(baseline.mean), Math.abs(changed.mean), Math.abs(difference));
  const decimals = decimalsFor(size, (interval.high - interval.low) / 2);
  return {
    baseline: formatNumber(baseline.mean, decimals),
    changed: formatNumber(changed.mean, decimals),
    difference: formatDifference(difference, decimals),
    interval: `${formatDifference(interval.low, decimals)} to ${formatDifference(interval.high, decimals)}`,
    percent: percent === null ? "" : formatPercent(percent),
  };
}
