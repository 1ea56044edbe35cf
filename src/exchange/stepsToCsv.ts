import type { Trial } from "../trial/index.js";
import { rowsToCsv } from "./rowsToCsv.js";

/**
 * Writes a trial's contacts as a tidy table: one row a contact, ready for R's `read.csv` and pandas' `read_csv`.
 *
 * Columns: `side` (left, right, unknown), `initial_contact` and `toe_off` in s from the first sample, then one column
 * per metric, named by its id. An empty cell is a metric that this contact has no value of.
 *
 * Units: a column's name carries none, so that it is a plain name in R and pandas; {@link summaryToCsv} lists every
 * id with its unit, as the catalogue does.
 * Limits: numbers have 12 significant digits and no thousands marks; an empty cell is NaN in pandas' `read_csv`, NA in
 * R's `read.csv` (state `check.names = FALSE` there for ids of your own with signs in them). A metric that was not
 * computed has no column.
 * Source: format of this library.
 * @param trial - From `analyseTrial`, or read back from its JSON.
 * @throws GaitKineticsError `not-finite`: a value that is no finite number.
 * @example
 * stepsToCsv(trial).startsWith("side,initial_contact,toe_off,") // true
 */
export function stepsToCsv(trial: Trial): string {
  const ids = [...new Set(trial.steps.flatMap(({ values }) => Object.keys(values)))];
  return rowsToCsv(
    ["side", "initial_contact", "toe_off", ...ids],
    trial.steps.map(({ side, initialContact, toeOff, values }) => [
      side,
      initialContact,
      toeOff,
      ...ids.map((id) => values[id] ?? null),
    ]),
  );
}
