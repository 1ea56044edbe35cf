import type { Comparison, ComponentComparison, MetricComparison } from "../../compare/index.js";
import { CATALOGUE, type Metric } from "../../metrics/index.js";
import type { Interval } from "../../statistics/index.js";
import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { speakerWords } from "../wording/speakerWords.js";
import { type DifferenceBlock, type DifferenceRow, drawDifferences } from "./drawDifferences.js";

/** How differences are drawn. */
export interface DifferenceFigureOptions {
  /** Entries that name the metrics. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Prefix of the ids in the drawing. */
  readonly id?: string | undefined;
  /** Width of the drawing in its own units, from 320; the height follows from what is drawn. */
  readonly width?: number | undefined;
}

/** The catalogue's names and the width of a paper's column. */
export const DIFFERENCE_FIGURE_DEFAULTS: Complete<DifferenceFigureOptions> = {
  metrics: CATALOGUE,
  id: "differences",
  width: 420,
};

/**
 * Draws the difference of every component's primary metric, per step and per kilometre, in per cent of the baseline,
 * as an SVG string: a dot, a thick line for the interval shown and a thin one for the interval of the reading.
 *
 * Formula: 100 × (changed − baseline) ÷ size of the baseline, of the means and of both intervals.
 * Units: %.
 * Limits: components that were not recorded in both trials or not compared, or whose baseline is near zero against its
 * own spread, are named without a line.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param options - {@link DIFFERENCE_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no component has a difference; `out-of-range`: a width below 320.
 * @example
 * differenceFigure(compareTrials(baseline, changed)).startsWith("<svg") // true
 */
export function differenceFigure(comparison: Comparison, options: DifferenceFigureOptions = {}): string {
  const { metrics, id, width } = withDefaults<DifferenceFigureOptions>(DIFFERENCE_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 320 });
  const blocks = comparison.components.map((component): DifferenceBlock => {
    const { metric: speaker } = component;
    return {
      component: component.component,
      what: speakerWords(component, null, metrics),
      rows: rowsOf(
        component,
        comparison.metrics.find(({ id }) => id === speaker),
      ),
    };
  });
  if (blocks.every(({ rows }) => rows.length === 0)) {
    fail("missing-channel", "no component has a difference to draw", { argument: "comparison" });
  }
  const { shownLevel, readingLevel } = comparison.settings;
  return drawDifferences(blocks, { id, width, shownLevel, readingLevel });
}

function rowsOf(
  component: ComponentComparison,
  metric: MetricComparison | undefined,
): readonly DifferenceRow[] {
  if (metric === undefined) return [];
  return [
    ...rowOf("per step", component.reading, metric),
    ...(metric.perKilometre === undefined
      ? []
      : rowOf("per km", component.perKilometre, metric.perKilometre)),
  ];
}

/** The difference as a share of the baseline; nothing where there is no such share. */
function rowOf(
  label: string,
  reading: string | null,
  { baseline, percent, interval, readingInterval }: NonNullable<MetricComparison["perKilometre"]>,
): readonly DifferenceRow[] {
  if (percent === null) return [];
  const scale = 100 / Math.abs(baseline.mean);
  const relative = ({ low, high, level }: Interval): Interval => ({
    low: scale * low,
    high: scale * high,
    level,
  });
  return [{ label, reading, percent, shown: relative(interval), deciding: relative(readingInterval) }];
}
