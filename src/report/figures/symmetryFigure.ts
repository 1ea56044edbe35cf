import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { symmetryOf, type Trial } from "../../trial/index.js";
import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { capitalised } from "../wording/capitalised.js";
import { labelled } from "../wording/labelled.js";
import { drawSymmetry, type SymmetryBlock } from "./drawSymmetry.js";

/** How left and right are drawn. */
export interface SymmetryFigureOptions {
  /** A second trial, drawn under the first. */
  readonly changed?: Trial | null | undefined;
  /** Ids of the metrics, in this order; `null` for those that speak for a component or for work. */
  readonly ids?: readonly string[] | null | undefined;
  /** Entries that name the metrics, own ones included. */
  readonly metrics?: readonly Metric[] | undefined;
  /** What the two trials are called. */
  readonly labels?: { readonly baseline: string; readonly changed: string } | undefined;
  /** Prefix of the ids in the drawing. */
  readonly id?: string | undefined;
  /** Width of the drawing in its own units, from 300; the height follows from what is drawn. */
  readonly width?: number | undefined;
}

/** What speaks for the components and for work in one trial; the width of a paper's column, 85 mm at 96 dots per inch. */
export const SYMMETRY_FIGURE_DEFAULTS: Complete<SymmetryFigureOptions> = {
  changed: null,
  ids: null,
  metrics: CATALOGUE,
  labels: { baseline: "baseline", changed: "changed" },
  id: "symmetry",
  width: 321,
};

/**
 * Draws the right foot against the left, metric by metric: the means of both in the metric's unit, and the symmetry index
 * with its interval on one scale, as an SVG string. Returns `null` where no metric has an index in any trial.
 *
 * Formula: `symmetryOf` of each metric: 100 × (right − left) ÷ mean of both.
 * Units: %; means in the metric's unit.
 * Limits: a metric without an index stands with the reason why. A difference between the feet is no illness and no cause
 * of one.
 * Source: as `symmetryOf`.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link SYMMETRY_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a metric that no entry describes, a width below 300.
 * @example
 * symmetryFigure(trial)?.startsWith("<svg") // true
 */
export function symmetryFigure(trial: Trial, options: SymmetryFigureOptions = {}): string | null {
  const { changed, ids, metrics, labels, id, width } = withDefaults<SymmetryFigureOptions>(
    SYMMETRY_FIGURE_DEFAULTS,
    options,
  );
  requireNumber("width", width, { from: 300 });
  const asked: readonly (readonly [Trial, string])[] =
    changed === null
      ? [[trial, ""]]
      : [
          [trial, labels.baseline],
          [changed, labels.changed],
        ];
  const shown =
    ids ??
    metrics
      .filter((entry) => entry.primary && trial.summary.metrics[entry.id] !== undefined)
      .map((entry) => entry.id);
  const blocks = shown.map((metricId): SymmetryBlock => {
    const metric = metrics.find((entry) => entry.id === metricId) ?? metricId;
    const results = asked.map(([one, label]) => {
      const { level } = one.settings;
      return { label, result: symmetryOf(one, metric, { level: level > 0 && level < 1 ? level : 0.95 }) };
    });
    const name = typeof metric === "string" ? metric : capitalised(labelled(metric.name, metric.unit));
    return {
      heading: name,
      rows: results.map(({ label, result }) =>
        "index" in result
          ? { label, symmetry: result, reason: null }
          : { label, symmetry: null, reason: result.message },
      ),
    };
  });
  if (blocks.every(({ rows }) => rows.every(({ symmetry }) => symmetry === null))) return null;
  return drawSymmetry(blocks, { id, width });
}
