import type { Comparison, ComponentComparison, MetricComparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { CATALOGUE } from "../../metrics/index.js";
import type { Interval } from "../../statistics/index.js";
import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { formatPercent } from "../wording/formatPercent.js";
import { metricName } from "../wording/metricName.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { svgFigure } from "./svgFigure.js";

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

const LABEL = 96;
const RIGHT = 10;
const ROW = 30;
const HEADING = 26;

/** One line of the drawing, in per cent of the baseline. */
interface Row {
  readonly label: string;
  readonly reading: string | null;
  readonly percent: number;
  readonly shown: Interval;
  readonly deciding: Interval;
}

/**
 * Draws the difference of every component's primary metric, per step and per kilometre, in per cent of the baseline,
 * as an SVG string: a dot, a thick line for the interval shown and a thin one for the interval of the reading.
 *
 * Units: %. Limits: components that were not recorded in both trials, or whose baseline is zero, are named without a line.
 * @param comparison - As `compareTrials` gives it.
 * @param options - {@link DIFFERENCE_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no component has a difference; `out-of-range`: a width below 320.
 * @example
 * differenceFigure(compareTrials(baseline, changed)).startsWith("<svg") // true
 */
export function differenceFigure(comparison: Comparison, options: DifferenceFigureOptions = {}): string {
  const { metrics, id, width } = withDefaults<DifferenceFigureOptions>(DIFFERENCE_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 320 });
  const blocks = comparison.components.map((component) => ({
    component,
    rows: rowsOf(
      component,
      comparison.metrics.find((metric) => metric.id === component.metric),
    ),
  }));
  const rows = blocks.flatMap((block) => block.rows);
  if (rows.length === 0)
    fail("missing-channel", "no component has a difference to draw", { argument: "comparison" });
  const ends = rows.flatMap(({ shown, deciding }) => [shown.low, shown.high, deciding.low, deciding.high]);
  const x = scaleLinear([Math.min(0, ...ends), Math.max(0, ...ends)], [LABEL, width - RIGHT]).nice(5);
  const top = 40;
  const heights = blocks.map((block) => HEADING + ROW * Math.max(1, block.rows.length));
  const bottom = top + heights.reduce((sum, height) => sum + height, 0) + 4;
  const { shownLevel, readingLevel } = comparison.settings;
  return svgFigure(
    {
      id,
      width,
      height: bottom + 66,
      title: "Difference in every component, per cent of the baseline",
      description: blocks.map((block) => describe(block.component, block.rows)).join(" "),
    },
    element("text", { x: 0, y: 15, "font-weight": 600 }, "Changed less baseline, % of baseline"),
    element(
      "text",
      { x: x(0) - 6, y: 34, "text-anchor": "end", "font-size": 12, "font-style": "italic" },
      x(0) - LABEL > 44 ? "lower" : "",
    ),
    element(
      "text",
      { x: x(0) + 6, y: 34, "font-size": 12, "font-style": "italic" },
      width - RIGHT - x(0) > 44 ? "higher" : "",
    ),
    ...x
      .ticks(5)
      .map((tick) =>
        verticalLine(
          x(tick),
          top,
          bottom,
          formatPercent(tick).replace(/\.0$/, "").replace("-", "−"),
          tick === 0,
        ),
      ),
    ...blocks.map((block, i) => {
      const y = top + heights.slice(0, i).reduce((sum, height) => sum + height, 0);
      return drawBlock(block.component, block.rows, y, x, metrics);
    }),
    element("line", {
      x1: 2,
      x2: 30,
      y1: bottom + 34,
      y2: bottom + 34,
      "stroke-width": 5,
      ...paint("stroke", "first"),
    }),
    element(
      "text",
      { x: 38, y: bottom + 38, "font-size": 12 },
      `${plainNumber(100 * shownLevel)} % interval`,
    ),
    element("line", {
      x1: 2,
      x2: 30,
      y1: bottom + 54,
      y2: bottom + 54,
      "stroke-width": 1.4,
      ...paint("stroke", "first"),
    }),
    element(
      "text",
      { x: 38, y: bottom + 58, "font-size": 12 },
      `${plainNumber(100 * readingLevel)} % interval, which the reading is taken from`,
    ),
  );
}

function rowsOf(component: ComponentComparison, metric: MetricComparison | undefined): readonly Row[] {
  if (metric === undefined) return [];
  const row = (
    label: string,
    reading: string | null,
    part: Pick<MetricComparison, "baseline" | "percent" | "interval" | "readingInterval">,
  ): readonly Row[] => {
    if (part.percent === null) return [];
    const relative = (interval: Interval): Interval => ({
      low: (100 * interval.low) / Math.abs(part.baseline.mean),
      high: (100 * interval.high) / Math.abs(part.baseline.mean),
      level: interval.level,
    });
    return [
      {
        label,
        reading,
        percent: part.percent,
        shown: relative(part.interval),
        deciding: relative(part.readingInterval),
      },
    ];
  };
  return [
    ...row("per step", component.reading, metric),
    ...(metric.perKilometre === undefined ? [] : row("per km", component.perKilometre, metric.perKilometre)),
  ];
}

function drawBlock(
  { component, metric }: ComponentComparison,
  rows: readonly Row[],
  top: number,
  x: (value: number) => number,
  metrics: readonly Metric[],
): string {
  const heading = capitalised(component);
  const what = metric === null ? ": not recorded in both" : `: ${metricName(metric, metrics)}`;
  return (
    element(
      "text",
      { x: 0, y: top + 18 },
      element("tspan", { "font-weight": 600 }, heading),
      escapeMarkup(what),
    ) + rows.map((row, i) => drawRow(row, top + HEADING + ROW * i, x)).join("")
  );
}

/** The words stand to the left, in the column of labels, so that no line runs through them. */
function drawRow(
  { label, reading, percent, shown, deciding }: Row,
  top: number,
  x: (value: number) => number,
): string {
  const y = top + ROW / 2;
  return (
    element("text", { x: 0, y: y - 2, "font-size": 12 }, label) +
    element(
      "text",
      { x: 0, y: y + 12, "font-size": 12, "font-style": "italic" },
      escapeMarkup(reading ?? ""),
    ) +
    element("line", {
      x1: x(deciding.low),
      x2: x(deciding.high),
      y1: y,
      y2: y,
      "stroke-width": 1.4,
      ...paint("stroke", "first"),
    }) +
    element("line", {
      x1: x(shown.low),
      x2: x(shown.high),
      y1: y,
      y2: y,
      "stroke-width": 5,
      ...paint("stroke", "first"),
    }) +
    element("circle", { cx: x(percent), cy: y, r: 4.5, "stroke-width": 1.5, ...paint("stroke", "ink") })
  );
}

function verticalLine(x: number, top: number, bottom: number, label: string, zero: boolean): string {
  return (
    element("line", {
      x1: x,
      x2: x,
      y1: top,
      y2: bottom,
      "stroke-width": zero ? 1.2 : 0.6,
      "stroke-opacity": zero ? 1 : 0.5,
      ...paint("stroke", zero ? "ink" : "rule"),
    }) + element("text", { x, y: bottom + 16, "text-anchor": "middle", "font-size": 12 }, label)
  );
}

function describe({ component, reading }: ComponentComparison, rows: readonly Row[]): string {
  if (rows.length === 0) return `${component}: no difference to draw.`;
  const parts = rows.map(
    ({ label, percent, shown, reading: said }) =>
      `${label} ${formatPercent(percent)} % (${formatPercent(shown.low)} to ${formatPercent(shown.high)}), ${said ?? "no reading"}`,
  );
  return `${component}, ${reading ?? "no reading"}: ${parts.join("; ")}.`;
}
