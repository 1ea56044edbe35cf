import type { Comparison } from "../../compare/index.js";
import type { Spread, Trial } from "../../trial/index.js";
import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { formatPercent } from "../wording/formatPercent.js";
import { drawWork, type WorkRow } from "./drawWork.js";

/** How the account of work is drawn. */
export interface WorkFigureOptions {
  /** What the two trials are called. */
  readonly labels?: { readonly baseline: string; readonly changed: string } | undefined;
  /** Prefix of the ids in the drawing. */
  readonly id?: string | undefined;
  /** Width of the drawing in its own units, from 300; the height follows from what is drawn. */
  readonly width?: number | undefined;
}

/** The width of a paper's column, 85 mm at 96 dots per inch. */
export const WORK_FIGURE_DEFAULTS: Complete<WorkFigureOptions> = {
  labels: { baseline: "baseline", changed: "changed" },
  id: "work",
  width: 321,
};

/** The account in its order: id, and what the row is called. */
const ROWS = [
  ["positiveWorkVertical", "vertical"],
  ["positiveWorkForward", "forward"],
  ["positiveWorkLateral", "lateral"],
  ["positiveExternalWork", "external: vertical and forward together"],
] as const;

/**
 * Draws the account of mechanical work per metre and kilogram, vertical, forward, lateral and external, of a trial or of
 * both trials of a comparison, as an SVG string: a bar for each mean with its interval and its number. Returns `null`
 * where none of the four is known.
 *
 * Formula: of a trial its means per mass and distance; of a comparison the values per kilometre ÷ 1000 ÷ mass.
 * Units: J/kg/m.
 * Limits: external work is less than the sum of vertical and forward where one rises as the other falls, and leaves the
 * lateral out. Mechanical work is not oxygen uptake, which the figure says.
 * Source: as the metrics of work.
 * @param of - A trial as `analyseTrial` gives it, or a comparison as `compareTrials` does.
 * @param options - {@link WORK_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a width below 300.
 * @example
 * workFigure(compareTrials(baseline, changed))?.startsWith("<svg") // true
 */
export function workFigure(of: Comparison | Trial, options: WorkFigureOptions = {}): string | null {
  const { labels, id, width } = withDefaults<WorkFigureOptions>(WORK_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 300 });
  const compared = of.schema === "gait-kinetics/comparison/1";
  const rows = compared ? rowsOfComparison(of) : rowsOfTrial(of);
  if (rows.every(({ values }) => values.length === 0)) return null;
  return drawWork(rows, {
    id,
    width,
    labels: compared ? [labels.baseline, labels.changed] : [],
    note: compared ? differenceNote(of) : null,
  });
}

function rowsOfTrial({ summary }: Trial): readonly WorkRow[] {
  return ROWS.map(([id, name]) => {
    const found = summary.metrics[id]?.normalised;
    return { name, values: found === undefined || !Number.isFinite(found.mean) ? [] : [found] };
  });
}

function rowsOfComparison({ metrics, baseline, changed }: Comparison): readonly WorkRow[] {
  return ROWS.map(([id, name]) => {
    const found = metrics.find((metric) => metric.id === id)?.perKilometre;
    if (found === undefined || baseline.mass === null || changed.mass === null) return { name, values: [] };
    return { name, values: [perMetre(found.baseline, baseline.mass), perMetre(found.changed, changed.mass)] };
  });
}

/** From J per kilometre to J per metre and kilogram. */
function perMetre({ n, mean, sd, interval }: Spread, mass: number): Spread {
  const scale = 1 / (1000 * mass);
  return {
    n,
    mean: scale * mean,
    sd: sd === null ? null : scale * sd,
    interval:
      interval === null
        ? null
        : { low: scale * interval.low, high: scale * interval.high, level: interval.level },
  };
}

/** What the comparison says of the external work, in per cent; nothing where it has no share. */
function differenceNote({ work }: Comparison): string | null {
  const { perMetre: found } = work;
  if (found === undefined || found.percent === null) return null;
  const share = 100 / Math.abs(found.baseline.mean);
  const [low, high] = [share * found.interval.low, share * found.interval.high].map(formatPercent);
  return `External work: ${formatPercent(found.percent)} % (${low} to ${high}).`;
}
