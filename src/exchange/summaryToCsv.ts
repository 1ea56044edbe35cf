import type { Spread, Trial } from "../trial/index.js";
import { type Cell, rowsToCsv } from "./rowsToCsv.js";

/**
 * Writes a trial's summary as a tidy table: one row for every metric over the whole trial, one for each side, and one
 * for the normalised value.
 *
 * Columns: `metric` (id), `unit`, `normalised` (TRUE, FALSE), `side` (`all`: strides; `left`, `right`: contacts), `n`,
 * `mean`, `sd`, and the interval of the mean as `meanLow`, `meanHigh`, `level`.
 *
 * Units: in the column `unit`.
 * Limits: numbers have 12 significant digits and no thousands marks. An empty cell is a spread or interval that a single
 * value does not have: NaN in pandas' `read_csv`, NA in R's `read.csv`.
 * Source: format of this library.
 * @param trial - From `analyseTrial`, or read back from its JSON.
 * @throws GaitKineticsError `not-finite`: a value that is no finite number.
 * @example
 * summaryToCsv(trial).startsWith("metric,unit,normalised,side,n,mean,sd,meanLow,meanHigh,level") // true
 */
export function summaryToCsv(trial: Trial): string {
  const rows: Cell[][] = [];
  for (const [id, summary] of Object.entries(trial.summary.metrics)) {
    if (summary === undefined) continue;
    const { unit, normalised, left, right, ...all } = summary;
    rows.push([id, unit, false, "all", ...cellsOf(all)]);
    if (left !== undefined) rows.push([id, unit, false, "left", ...cellsOf(left)]);
    if (right !== undefined) rows.push([id, unit, false, "right", ...cellsOf(right)]);
    if (normalised !== undefined) rows.push([id, normalised.unit, true, "all", ...cellsOf(normalised)]);
  }
  return rowsToCsv(
    ["metric", "unit", "normalised", "side", "n", "mean", "sd", "meanLow", "meanHigh", "level"],
    rows,
  );
}

function cellsOf({ n, mean, sd, interval }: Spread): Cell[] {
  return [n, mean, sd, interval?.low ?? null, interval?.high ?? null, interval?.level ?? null];
}
