import type { ComponentName, CurveComparison } from "../../compare/index.js";
import type { Side } from "../../recording/index.js";
import type { Curve, CurvesBySide, Trial } from "../../trial/index.js";
import {
  bodyWeight,
  type Complete,
  fail,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { drawCurves, type Series } from "./drawCurves.js";

/** How mean curves are drawn. */
export interface CurveFigureOptions {
  readonly component?: ComponentName | undefined;
  /** One foot; `null` for every side the trial tells apart. */
  readonly side?: Side | null | undefined;
  /** A second trial, drawn dashed over the first. */
  readonly changed?: Trial | null | undefined;
  /** Body weights (of the trial's own mass) or newtons. */
  readonly unit?: "BW" | "N" | undefined;
  /** What the two trials are called. */
  readonly labels?: { readonly baseline: string; readonly changed: string } | undefined;
  /** Where both trials' curves of this component and side differ, drawn as bars under the axis. */
  readonly clusters?: CurveComparison | null | undefined;
  /** Prefix of the ids in the drawing; `null` for one made of component and side. */
  readonly id?: string | null | undefined;
  /** Size of the drawing in its own units, from 300 and 200. It scales to the width it is given; clusters add to the height. */
  readonly width?: number | undefined;
  readonly height?: number | undefined;
}

/** The vertical force of both feet of one trial in body weights, the width of a paper's column, 85 mm at 96 dots per inch. */
export const CURVE_FIGURE_DEFAULTS: Complete<CurveFigureOptions> = {
  component: "vertical",
  side: null,
  changed: null,
  unit: "BW",
  labels: { baseline: "baseline", changed: "changed" },
  clusters: null,
  id: null,
  width: 321,
  height: 260,
};

const CHANNELS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;

/**
 * Draws the mean curve of one component of the force over stance with a band of one standard deviation, as an SVG
 * string: left and right of one trial, or one foot of two trials. The first line is solid, the second dashed. Bars with a
 * letter show under the axis where two trials differ, with their place in per cent and in ms.
 *
 * Formula: mean and mean ± one standard deviation as the trial holds them; BW is the force ÷ (mass × gravity).
 * Units: 0 to 100 % of stance; BW or N.
 * Limits: the band is the spread between contacts, no interval of the mean; a single contact has none.
 * Source: stance in per cent, force in body weights and bands of one standard deviation are common practice.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link CURVE_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: the component, or the side, is not in the trial; `missing-value`: two
 * trials and no side, or body weights without a mass; `not-comparable`: clusters of another component or side;
 * `out-of-range`: unknown word, a width below 300 or a height below 200.
 * @example
 * curveFigure(trial).startsWith("<svg") // true
 */
export function curveFigure(trial: Trial, options: CurveFigureOptions = {}): string {
  const { component, side, changed, unit, labels, clusters, id, width, height } =
    withDefaults<CurveFigureOptions>(CURVE_FIGURE_DEFAULTS, options);
  requireOneOf("component", component, ["vertical", "anteroposterior", "mediolateral"]);
  requireOneOf("unit", unit, ["BW", "N"]);
  if (side !== null) requireOneOf("side", side, ["left", "right"]);
  requireNumber("width", width, { from: 300 });
  requireNumber("height", height, { from: 200 });
  if (clusters !== null) requireClustersOf(clusters, component, side ?? "both");
  const scaled = (of: Trial) => seriesOf(of, component, unit);
  const own = scaled(trial);
  const other = changed === null ? [] : scaled(changed);
  const pick = (series: readonly Series[]) => series.filter((one) => side === null || one.side === side);
  const shown =
    changed === null
      ? pick(own).map((series) => ({
          ...series,
          label: series.side === "unknown" ? "both feet" : series.side,
        }))
      : [
          ...pick(own).map((series) => ({ ...series, label: labels.baseline })),
          ...pick(other).map((series) => ({ ...series, label: labels.changed })),
        ];
  if (pick(own).length === 0 || (changed !== null && pick(other).length === 0)) {
    fail(
      "missing-channel",
      `no ${component} curve${side === null ? "" : ` of the ${side} foot`} in the trial`,
      {
        argument: "component",
        values: { component, side },
      },
    );
  }
  if (shown.length > 2) {
    fail("missing-value", "side is not stated; two trials are drawn one foot at a time: left or right", {
      argument: "side",
    });
  }
  return drawCurves(shown, {
    component,
    side: side ?? "both",
    unit,
    id: id ?? `${component}-${side ?? "both"}${changed === null ? "" : "-compared"}`,
    width,
    height,
    // One scale for all sides and both trials, so that panels can be laid side by side.
    scaleFor: [...own, ...other],
    clusters,
  });
}

/** Bars under curves that they are not of would mislead. */
function requireClustersOf(
  clusters: CurveComparison,
  component: ComponentName,
  side: "left" | "right" | "both",
): void {
  if (clusters.component === component && clusters.side === side) return;
  fail(
    "not-comparable",
    `clusters are of the ${clusters.component} force, side ${clusters.side}; the figure is of the ${component} force, side ${side}`,
    { argument: "clusters", values: { component: clusters.component, side: clusters.side } },
  );
}

function seriesOf(trial: Trial, component: ComponentName, unit: "BW" | "N"): Series[] {
  const curves: CurvesBySide = trial.curves[CHANNELS[component]] ?? {};
  const { mass, gravity } = trial.settings;
  if (unit === "BW" && mass === null) {
    fail("missing-value", "the trial has no mass, stated or by force; draw it in N", { argument: "unit" });
  }
  const divisor = unit === "BW" && mass !== null ? bodyWeight(mass, gravity) : 1;
  const divide = (values: readonly number[]) => values.map((value) => value / divisor);
  return (["left", "right", "unknown"] as const).flatMap((side) => {
    const curve: Curve | undefined = curves[side];
    if (curve === undefined) return [];
    return [
      {
        side,
        label: side,
        n: curve.n,
        percent: trial.curves.percent,
        mean: divide(curve.mean),
        sd: curve.sd === null ? null : divide(curve.sd),
      },
    ];
  });
}
