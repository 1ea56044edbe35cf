import type { Trial } from "../../../trial/index.js";
import { landingFigure } from "../../figures/landingFigure.js";
import { figureBlock } from "../figureBlock.js";
import { section } from "../section.js";

/** Writes the section of where the foot landed and left; nothing where that is not known. */
export function landingSection(trial: Trial, changed: Trial | null): string {
  return section(
    "Where the foot landed",
    figureBlock(
      [landingFigure(trial, { changed, id: "landing", width: 380 })],
      "Centre of pressure relative to the centre of mass at first touch and at toe-off, means to scale.",
    ),
  );
}
