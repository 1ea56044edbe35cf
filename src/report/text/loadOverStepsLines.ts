import type { Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import { loadOverSteps } from "../wording/loadOverSteps.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/** Sets the loads summed over steps under their heading; nothing where there are none. */
export function loadOverStepsLines(trial: Trial, metrics: readonly Metric[]): string[] {
  const words = loadOverSteps(trial, metrics);
  if (words === null) return [];
  const columns: readonly Column[] = [
    { heading: words.heading, width: 24, left: true },
    { heading: "mean ± SD", width: 15 },
    { heading: "unit", width: 7, left: true },
    { heading: "normalised", width: 13 },
    { heading: "left", width: 8 },
    { heading: "right", width: 8 },
  ];
  return [
    ...tableHead(columns),
    ...words.rows.flatMap(({ name, sum, unit, normalised, left, right }) =>
      tableRow(columns, [`  ${name}`, sum, unit, normalised, left, right]),
    ),
    ...wrap(words.sentence),
    "",
  ];
}
