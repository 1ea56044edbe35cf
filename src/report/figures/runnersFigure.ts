import type { RunnersComparison } from "../../compare/index.js";
import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { metricName } from "../wording/metricName.js";
import { drawRunners } from "./drawRunners.js";
import { idPart } from "./parts/idPart.js";

/** How the differences of many runners are drawn. */
export interface RunnersFigureOptions {
  /** Id of the metric; `null` for the first one compared. */
  readonly metric?: string | null | undefined;
  /** Entries that name the metric. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Prefix of the ids in the drawing; `null` for one made of the metric. */
  readonly id?: string | null | undefined;
  /** Width of the drawing in its own units, from 300; the height follows from the number of runners. */
  readonly width?: number | undefined;
}

/** The first metric; the width of a paper's column, 85 mm at 96 dots per inch. */
export const RUNNERS_FIGURE_DEFAULTS: Complete<RunnersFigureOptions> = {
  metric: null,
  metrics: CATALOGUE,
  id: null,
  width: 321,
};

/**
 * Draws each runner's difference with its interval and, under them, that of the average runner, as an SVG string: a forest
 * plot.
 *
 * Formula: differences, intervals and margin as the comparison holds them.
 * Units: the metric's.
 * Limits: a runner whose trials give no interval is a mark without a line; independent groups have no differences of
 * single runners, and the average alone is drawn.
 * Source: the forest plot is common practice.
 * @param comparison - Many runners in two conditions.
 * @param options - {@link RUNNERS_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a metric that was not compared, a width below 300; `missing-value`: no metric
 * was compared.
 * @example
 * const interval = { low: 0.4, high: 2, level: 0.95 };
 * const runners = [{ runner: "Ada", difference: 1.1, interval }, { runner: "Bo", difference: 1.3, interval }];
 * const metric = { id: "brakingImpulse", unit: "N s", runners, difference: 1.2, percent: 7, interval, readingInterval: interval, margin: { value: 1.6 } };
 * runnersFigure({ metrics: [metric], settings: { shownLevel: 0.95, readingLevel: 0.99 } }).startsWith("<svg") // true
 */
export function runnersFigure(comparison: RunnersComparison, options: RunnersFigureOptions = {}): string {
  const { metric, metrics, id, width } = withDefaults<RunnersFigureOptions>(RUNNERS_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 300 });
  const [first] = comparison.metrics;
  if (first === undefined) {
    fail("missing-value", "no metric of the runners was compared", { argument: "comparison" });
  }
  const found = metric === null ? first : comparison.metrics.find((one) => one.id === metric);
  if (found === undefined) {
    fail("out-of-range", `"${metric}" was not compared`, {
      argument: "metric",
      values: { given: metric, allowed: comparison.metrics.map((one) => one.id) },
    });
  }
  return drawRunners(found, {
    id: id ?? idPart(`runners-${found.id}`),
    name: metricName(found.id, metrics),
    width,
    shownLevel: comparison.settings.shownLevel,
    readingLevel: comparison.settings.readingLevel,
  });
}
