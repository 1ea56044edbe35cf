import { symmetryFigure } from "../../figures/symmetryFigure.js";
import { betweenFeet } from "../../wording/betweenFeet.js";
import { bulletList } from "../bulletList.js";
import { figureBlock } from "../figureBlock.js";
import { onScreen } from "../onScreen.js";
import { section } from "../section.js";
import { table } from "../table.js";
import { type Compared, firstOfSeveral } from "./compared.js";

/** Writes the section of the two feet of both trials. */
export function symmetrySection(compared: Compared): string {
  const { baseline, changed, metrics, comparison } = compared;
  const ids = comparison.components.flatMap(({ metric }) => (metric === null ? [] : [metric]));
  const [before, after] = [betweenFeet(baseline, metrics), betweenFeet(changed, metrics)];
  const names = [...new Set([...before.rows, ...after.rows].map(({ name }) => name))];
  return section(
    "Left and right",
    figureBlock(
      [
        symmetryFigure(baseline, {
          changed,
          ids: ids.length === 0 ? null : ids,
          metrics,
          id: "symmetry",
          width: 380,
        }),
      ],
      `Symmetry index, 100 (right − left) ÷ mean of both feet, with ${before.level} intervals; positive where the right is the larger.${firstOfSeveral(compared)}`,
    ),
    onScreen(
      table(
        "Symmetry index, %",
        ["metric", "baseline", `${before.level} interval`, "changed", `${after.level} interval`],
        names.map((name) => {
          const [one, other] = [before, after].map(({ rows }) => rows.find((row) => row.name === name));
          return {
            cells: [name, one?.index ?? "", one?.interval ?? "", other?.index ?? "", other?.interval ?? ""],
          };
        }),
      ),
    ),
    bulletList([
      ...before.notes.map((note) => `Baseline. ${note}`),
      ...after.notes.map((note) => `Changed. ${note}`),
    ]),
  );
}
