import { CATALOGUE, type Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import { type Complete, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { metricName } from "../wording/metricName.js";
import { drawStepSeries } from "./drawStepSeries.js";
import { idPart } from "./parts/idPart.js";
import { type StepSeries, stepSeriesOf } from "./stepSeriesOf.js";

/** How a metric is drawn step by step. */
export interface StepSeriesFigureOptions {
  /** Id of the metric. */
  readonly metric?: string | undefined;
  /** A second trial, drawn beside the first on one scale. */
  readonly changed?: Trial | null | undefined;
  /** The metric's own unit or its normalised one. */
  readonly unit?: "SI" | "normalised" | undefined;
  /** What the two trials are called. */
  readonly labels?: { readonly baseline: string; readonly changed: string } | undefined;
  /** Entries that name the metric and say how it is normalised. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Prefix of the ids in the drawing; `null` for one made of metric and unit. */
  readonly id?: string | null | undefined;
  /** Size of the drawing in its own units, from 300 and 200. */
  readonly width?: number | undefined;
  readonly height?: number | undefined;
}

/** Peak vertical force of one trial in newtons; the width of a paper's column, 85 mm at 96 dots per inch. */
export const STEP_SERIES_FIGURE_DEFAULTS: Complete<StepSeriesFigureOptions> = {
  metric: "peakVerticalForce",
  changed: null,
  unit: "SI",
  labels: { baseline: "baseline", changed: "changed" },
  metrics: CATALOGUE,
  id: null,
  width: 321,
  height: 260,
};

/**
 * Draws a metric contact by contact over time, left and right by the shape of the mark, with its mean and the straight
 * line through its stride values, as an SVG string; two trials side by side on one scale. Returns `null` where a trial
 * does not have the metric, or not in the normalised unit.
 *
 * Formula: the values of the contacts as the trial holds them; normalised, each ÷ (mass × gravity), ÷ mass or ÷ (mass ×
 * speed × its step time), as its entry says. The mean is the trial's; the straight line is by least squares over the
 * stride values in their order, and the drift written beside it is its end less its start.
 * Units: s from the first sample; the metric's, or its normalised unit.
 * Limits: more contacts than can be told apart are drawn in runs of equal number: a mark is the mean of one foot in the
 * run, a shaded range spans all of its values from the least to the greatest, and the drawing says so. The drift has no
 * interval here.
 * Source: least squares; layout of this library.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link STEP_SERIES_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: an unknown unit, a width below 300 or a height below 200.
 * @example
 * stepSeriesFigure(trial, { metric: "brakingImpulse" })?.startsWith("<svg") // true
 */
export function stepSeriesFigure(trial: Trial, options: StepSeriesFigureOptions = {}): string | null {
  const { metric, changed, unit, labels, metrics, id, width, height } = withDefaults<StepSeriesFigureOptions>(
    STEP_SERIES_FIGURE_DEFAULTS,
    options,
  );
  requireOneOf("unit", unit, ["SI", "normalised"]);
  requireNumber("width", width, { from: 300 });
  requireNumber("height", height, { from: 200 });
  const entry = metrics.find((one) => one.id === metric);
  const asked: readonly (readonly [Trial, string])[] =
    changed === null
      ? [[trial, ""]]
      : [
          [trial, labels.baseline],
          [changed, labels.changed],
        ];
  const series: StepSeries[] = [];
  for (const [one, label] of asked) {
    const found = stepSeriesOf(one, { id: metric, entry, unit, label });
    if (found === null) return null;
    series.push(found);
  }
  return drawStepSeries(series, {
    id: id ?? idPart(`steps-${metric}-${unit}`),
    name: metricName(metric, metrics),
    width,
    height,
  });
}
