import type { Comparison } from "../../../compare/index.js";
import { workFigure } from "../../figures/workFigure.js";
import { figureBlock } from "../figureBlock.js";
import { onScreen } from "../onScreen.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";
import { table } from "../table.js";
import { differenceHeadings, rowCells } from "./rowCells.js";

/** Writes the account of work: the sentence, the parts drawn, and positive external work per metre. */
export function workSection(comparison: Comparison): string {
  const { perMetre, sentence } = comparison.work;
  return section(
    "Work",
    paragraph(sentence),
    figureBlock(
      [workFigure(comparison, { id: "work", width: 380 })],
      "Positive work on the centre of mass by direction, and together.",
    ),
    perMetre === undefined
      ? ""
      : onScreen(
          table(
            "Positive external work per metre",
            ["work", ...differenceHeadings(comparison)],
            [{ cells: [`per metre, ${perMetre.unit}`, ...rowCells(perMetre)] }],
          ),
        ),
  );
}
