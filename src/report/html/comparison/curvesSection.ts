import type { ComponentName, CurveComparison } from "../../../compare/index.js";
import type { Curve } from "../../../trial/index.js";
import { curveFigure } from "../../figures/curveFigure.js";
import { statisticFigure } from "../../figures/statisticFigure.js";
import { element } from "../../markup/element.js";
import { clusterSentences } from "../../wording/clusterSentences.js";
import { whyNoCurves } from "../../wording/notMade.js";
import { bulletList } from "../bulletList.js";
import { chooser } from "../chooser.js";
import { figureBlock } from "../figureBlock.js";
import { onScreen } from "../onScreen.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";
import { type Compared, firstOfSeveral } from "./compared.js";

const CHANNELS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;
const COMPONENTS = ["vertical", "anteroposterior", "mediolateral"] as const;

/** Three beside each other on paper, one on a telephone. */
const PANEL = { width: 300, height: 205 } as const;

type Side = "left" | "right" | null;

/** Writes the section of mean curves over stance, and where they differ as whole curves. */
export function curvesSection(compared: Compared): string {
  const { baseline, changed, curves, comparison } = compared;
  const massed = baseline.settings.mass !== null && changed.settings.mass !== null;
  return section(
    "Mean curves of stance",
    chooser("curves", "Force in", [
      { label: "body weights", content: massed ? drawings(compared, "BW") : "" },
      { label: "newtons", content: drawings(compared, "N") },
    ]),
    onScreen(bulletList(curves.filter((one) => drawn(one, compared)).flatMap(clusterSentences))),
    bulletList(curves.filter((one) => !drawn(one, compared)).flatMap(clusterSentences)),
    curves.length === 0
      ? paragraph(`Whole curves. ${whyNoCurves(comparison)}`)
      : element(
          "details",
          {},
          element("summary", {}, "The statistic at each point of stance, with its threshold"),
          figureBlock(
            curves.map((one, i) => statisticFigure(one, { id: `statistic-${i}`, ...PANEL })),
            "Student's t at each point; beyond the threshold the mean curves differ.",
            "row",
          ),
        ),
  );
}

/** Whether the figures say where these curves differ: paper then needs no sentence besides. */
function drawn({ component, side, clusters }: CurveComparison, compared: Compared): boolean {
  const sides = sidesOfBoth(component, compared).map((one) => one ?? "both");
  return clusters.length > 0 && sides.includes(side);
}

/** Rows of drawings: a foot a row with its components beside each other, or all in one row where one component is there. */
function drawings(compared: Compared, unit: "BW" | "N"): string {
  const shown = COMPONENTS.map((component) => ({
    component,
    sides: sidesOfBoth(component, compared),
  })).filter(({ sides }) => sides.length > 0);
  const sides = [...new Set(shown.flatMap((one) => one.sides))];
  const rows: readonly (readonly [ComponentName, Side])[][] =
    shown.length === 1
      ? [shown.flatMap(({ component }) => sides.map((side) => [component, side] as const))]
      : sides.map((side) =>
          shown.flatMap((one) => (one.sides.includes(side) ? [[one.component, side] as const] : [])),
        );
  return rows
    .map((row, i) =>
      figureBlock(
        row.map(([component, side]) => drawing(compared, component, side, unit)),
        i === rows.length - 1 ? captionOf(compared) : "",
        "row",
      ),
    )
    .join("");
}

function drawing(
  { baseline, changed, curves }: Compared,
  component: ComponentName,
  side: Side,
  unit: "BW" | "N",
): string {
  const clusters = curves.find((one) => one.component === component && one.side === (side ?? "both"));
  return curveFigure(baseline, {
    component,
    changed,
    side,
    unit,
    clusters: clusters ?? null,
    id: `curve-${unit}-${component}-${side ?? "both"}`,
    ...PANEL,
  });
}

function captionOf(compared: Compared): string {
  const { baseline, changed } = compared;
  const all = [baseline, changed].flatMap((trial): Curve[] =>
    COMPONENTS.flatMap((component) => Object.values(trial.curves[CHANNELS[component]] ?? {})),
  );
  const bands = all.some(({ sd }) => sd !== null)
    ? "; the bands are one standard deviation between contacts"
    : "";
  return `Mean curves of stance, baseline solid and changed dashed${bands}.${firstOfSeveral(compared)}`;
}

/** Feet that both trials tell apart; `null` for the curve of both feet where neither does. */
function sidesOfBoth(component: ComponentName, { baseline, changed }: Compared): readonly Side[] {
  const [one, other] = [baseline, changed].map((trial) => trial.curves[CHANNELS[component]] ?? {});
  const sides = (["left", "right"] as const).filter(
    (side) => one?.[side] !== undefined && other?.[side] !== undefined,
  );
  if (sides.length > 0) return sides;
  const together = [one, other].every(
    (curvesBySide) => curvesBySide !== undefined && Object.keys(curvesBySide).join() === "unknown",
  );
  return together ? [null] : [];
}
