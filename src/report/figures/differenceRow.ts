import type { ComparedValues, MetricComparison } from "../../compare/index.js";
import type { Interval } from "../../statistics/index.js";
import { comparedRow } from "../wording/comparedRow.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatPercent } from "../wording/formatPercent.js";
import { plainNumber } from "../wording/plainNumber.js";
import type { DifferenceRow } from "./drawDifferences.js";

/** What differences are drawn in. */
export type DifferenceRowUnit = "percent" | "si" | "normalised";

/** What stands beside a line, and the metric's name for the sentence. */
export interface DifferenceWords {
  readonly label: string;
  readonly reading: string | null;
  readonly name: string;
}

/** Makes the line of a difference, in per cent where no unit is given; `null` where there is no share of the baseline. */
export function differenceRow(
  words: DifferenceWords,
  values: ComparedValues,
  unit: string | null,
): DifferenceRow | null {
  const { percent, difference, interval, readingInterval, margin, baseline } = values;
  if (unit !== null) {
    const written = comparedRow(values);
    return rowOf(words, unit, {
      value: difference,
      shown: interval,
      deciding: readingInterval,
      margin: margin.value,
      number: written.difference,
      range: written.interval,
    });
  }
  if (percent === null) return null;
  const scale = 100 / Math.abs(baseline.mean);
  const shown = scaled(interval, scale);
  return rowOf(words, "%", {
    value: percent,
    shown,
    deciding: scaled(readingInterval, scale),
    margin: scale * margin.value,
    number: formatPercent(percent),
    range: `${formatPercent(shown.low)} to ${formatPercent(shown.high)}`,
  });
}

/** Makes the line of a difference in the normalised unit, which has the shown interval alone. */
export function normalisedRow(
  words: DifferenceWords,
  { unit, difference, interval }: NonNullable<MetricComparison["normalised"]>,
): DifferenceRow {
  const decimals = decimalsFor(difference, (interval.high - interval.low) / 2);
  const write = (value: number): string => formatDifference(value, decimals);
  return rowOf(words, unit, {
    value: difference,
    shown: interval,
    deciding: null,
    margin: null,
    number: write(difference),
    range: `${write(interval.low)} to ${write(interval.high)}`,
  });
}

type Written = Pick<DifferenceRow, "value" | "shown" | "deciding" | "margin" | "number" | "range">;

function rowOf({ label, reading, name }: DifferenceWords, unit: string, written: Written): DifferenceRow {
  const minus = (text: string): string => text.replace(/-(?=\d)/g, "−");
  const number = `${minus(written.number)}${unit === "1" ? "" : ` ${unit}`}`;
  const range = `(${minus(written.range)})`;
  const level = `${plainNumber(100 * written.shown.level)} % interval`;
  return {
    ...written,
    label,
    reading,
    number,
    range,
    read: `${name}, ${label}: ${number}, ${level} ${minus(written.range)}${reading === null ? "" : `, ${reading}`}`,
  };
}

function scaled({ low, high, level }: Interval, scale: number): Interval {
  return { low: scale * low, high: scale * high, level };
}
