import type { Metric } from "../../../metrics/index.js";
import type { Trial } from "../../../trial/index.js";
import { symmetryFigure } from "../../figures/symmetryFigure.js";
import { betweenFeet } from "../../wording/betweenFeet.js";
import { figureBlock } from "../figureBlock.js";
import { onScreen } from "../onScreen.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";
import { table } from "../table.js";

/** Writes the section of the two feet of a trial. */
export function symmetrySection(trial: Trial, metrics: readonly Metric[]): string {
  const { rows, notes, level } = betweenFeet(trial, metrics);
  return section(
    "Left and right",
    figureBlock(
      [symmetryFigure(trial, { metrics, id: "symmetry", width: 380 })],
      `Symmetry index with ${level} intervals.`,
    ),
    onScreen(
      table(
        "Symmetry index, 100 (right − left) ÷ mean of both feet; positive where the right is the larger",
        ["metric", "index, %", `${level} interval`, "right − left"],
        rows.map(({ name, index, interval, difference }) => ({ cells: [name, index, interval, difference] })),
      ),
    ),
    ...notes.map((note) => paragraph(note)),
  );
}
