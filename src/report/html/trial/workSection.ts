import type { Trial } from "../../../trial/index.js";
import { workFigure } from "../../figures/workFigure.js";
import { figureBlock } from "../figureBlock.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";

/** Writes a trial's account of work; nothing where no work was computed. */
export function workSection(trial: Trial): string {
  const drawn = figureBlock(
    [workFigure(trial, { id: "work", width: 380 })],
    "Positive work on the centre of mass by direction, and together.",
  );
  return drawn === ""
    ? ""
    : section(
        "Work",
        paragraph(
          "Mechanical work on the centre of mass is not oxygen uptake: tendons return part of it, and muscles spend energy without it.",
        ),
        drawn,
      );
}
