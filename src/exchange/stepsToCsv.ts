import { CATALOGUE } from "../metrics/index.js";
import type { Trial } from "../trial/index.js";
import { rowsToCsv } from "./rowsToCsv.js";

/**
 * Writes a trial's contacts as a tidy table: one row a contact, ready for R's `read.csv` and pandas' `read_csv`.
 *
 * Columns: `side` (left, right, unknown), `initialContact` and `toeOff` in s from the first sample, then one column for
 * every metric of {@link CATALOGUE}, in its order and named by its id, then metrics of your own. The columns are the same for
 * every trial, so that tables of several trials stack. An empty cell is a metric that this contact has no value of, or that
 * was not computed; `notComputed` of the trial says why.
 *
 * Units: SI, those of the catalogue (`metricById(id).unit`). A column's name carries none, so that it is a plain name in R
 * and pandas; {@link summaryToCsv} has a column `unit` beside the id.
 * Limits: numbers have 12 significant digits and no thousands marks; an empty cell is NaN in pandas' `read_csv`, NA in
 * R's `read.csv` (state `check.names = FALSE` there for ids of your own with signs in them).
 * Source: format of this library.
 * @param trial - From `analyseTrial`, or read back from its JSON.
 * @throws GaitKineticsError `not-finite`: a value that is no finite number.
 * @example
 * stepsToCsv(trial).startsWith("side,initialContact,toeOff,contactTime,aerialTime,") // true
 */
export function stepsToCsv(trial: Trial): string {
  const known = CATALOGUE.map(({ id }) => id);
  const ids = [...new Set([...known, ...trial.steps.flatMap(({ values }) => Object.keys(values))])];
  return rowsToCsv(
    ["side", "initialContact", "toeOff", ...ids],
    trial.steps.map(({ side, initialContact, toeOff, values }) => [
      side,
      initialContact,
      toeOff,
      ...ids.map((id) => values[id] ?? null),
    ]),
  );
}
