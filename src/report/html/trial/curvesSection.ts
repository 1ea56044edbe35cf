import type { Curve, Trial } from "../../../trial/index.js";
import { curveFigure } from "../../figures/curveFigure.js";
import { chooser } from "../chooser.js";
import { figureBlock } from "../figureBlock.js";
import { section } from "../section.js";

const CHANNELS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;
const COMPONENTS = ["vertical", "anteroposterior", "mediolateral"] as const;

/** Three beside each other on paper, one on a telephone. */
const PANEL = { width: 300, height: 230 } as const;

/** Writes the section of a trial's mean curves over stance, both feet in one drawing a component. */
export function curvesSection(trial: Trial): string {
  return section(
    "Mean curves of stance",
    chooser("curves", "Force in", [
      { label: "body weights", content: trial.settings.mass === null ? "" : drawings(trial, "BW") },
      { label: "newtons", content: drawings(trial, "N") },
    ]),
  );
}

function drawings(trial: Trial, unit: "BW" | "N"): string {
  const curvesOf = (component: (typeof COMPONENTS)[number]): readonly Curve[] =>
    Object.values(trial.curves[CHANNELS[component]] ?? {});
  const drawn = COMPONENTS.filter((component) => curvesOf(component).length > 0);
  return figureBlock(
    drawn.map((component) =>
      curveFigure(trial, { component, unit, id: `curve-${unit}-${component}`, ...PANEL }),
    ),
    drawn.flatMap(curvesOf).some(({ sd }) => sd !== null)
      ? "Mean curve of stance; the band is one standard deviation between contacts."
      : "The curve of one contact over stance.",
    "row",
  );
}
