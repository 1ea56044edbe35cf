import type { Metric } from "../../../metrics/index.js";
import type { Trial } from "../../../trial/index.js";
import { capitalised } from "../../wording/capitalised.js";
import { labelled } from "../../wording/labelled.js";
import { loadOverSteps } from "../../wording/loadOverSteps.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";
import { table } from "../table.js";

/** Writes the load per kilometre, or per minute; nothing where there is none. */
export function loadSection(trial: Trial, metrics: readonly Metric[]): string {
  const words = loadOverSteps(trial, metrics);
  if (words === null) return "";
  return section(
    words.heading,
    paragraph(capitalised(words.sentence)),
    table(
      `${words.heading}: sums over steps`,
      ["metric", "mean ± SD", "left", "right", "normalised"],
      words.rows.map(({ name, sum, unit, normalised, left, right }) => ({
        cells: [labelled(name, unit), sum, left, right, normalised],
      })),
    ),
  );
}
