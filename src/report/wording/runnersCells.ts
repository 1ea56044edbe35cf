import type { RunnersValues } from "../../compare/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { formatNumber } from "./formatNumber.js";
import { formatPercent } from "./formatPercent.js";
import { intervalWords } from "./intervalWords.js";

/** Cells of values over runners: a label, both means, difference, its interval, and per cent. */
export function runnersCells(values: RunnersValues, label: string): readonly string[] {
  const { baseline, changed, difference, interval, percent } = values;
  const decimals = decimalsFor(
    Math.max(Math.abs(baseline.mean), Math.abs(changed.mean), Math.abs(difference)),
    (interval.high - interval.low) / 2,
  );
  return [
    label,
    formatNumber(baseline.mean, decimals),
    formatNumber(changed.mean, decimals),
    formatDifference(difference, decimals),
    intervalWords(interval, decimals),
    percent === null ? "" : formatPercent(percent),
  ];
}
