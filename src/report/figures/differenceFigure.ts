import type {
  ComparedValues,
  Comparison,
  ComponentComparison,
  MetricComparison,
} from "../../compare/index.js";
import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { type Complete, fail, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { capitalised } from "../wording/capitalised.js";
import { metricName } from "../wording/metricName.js";
import { speakerWords } from "../wording/speakerWords.js";
import { type DifferenceRowUnit, differenceRow, normalisedRow } from "./differenceRow.js";
import { type DifferenceBlock, type DifferenceRow, drawDifferences } from "./drawDifferences.js";

/** How differences are drawn. */
export interface DifferenceFigureOptions {
  /** Entries that name the metrics. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Ids of the metrics, in this order; `null` for the one that speaks for each component. */
  readonly ids?: readonly string[] | null | undefined;
  /** Per cent of the baseline on one scale, or the metric's own or normalised unit on a scale each. */
  readonly unit?: "percent" | "si" | "normalised" | undefined;
  /** Prefix of the ids in the drawing. */
  readonly id?: string | undefined;
  /** Width of the drawing in its own units, from 300; the height follows from what is drawn. */
  readonly width?: number | undefined;
}

/** What speaks for each component in per cent; the catalogue's names; the width of a paper's column, 85 mm at 96 dots per inch. */
export const DIFFERENCE_FIGURE_DEFAULTS: Complete<DifferenceFigureOptions> = {
  metrics: CATALOGUE,
  ids: null,
  unit: "percent",
  id: "differences",
  width: 321,
};

const TITLES = {
  percent: ["Difference in every component", "per cent of the baseline"],
  si: ["Difference in every component", "SI units"],
  normalised: ["Difference in every component", "normalised"],
} as const;

const HEADINGS = {
  percent: "Changed less baseline, % of baseline",
  si: "Changed less baseline, SI units",
  normalised: "Changed less baseline, normalised",
} as const;

/**
 * Draws the difference of every component's primary metric, or of metrics of choice, per step and per kilometre, as an
 * SVG string: a dot, a thick line for the interval shown, a thin one for the interval of the reading, and the margin of
 * `similar` as a shaded range around zero.
 *
 * Formula: changed − baseline with both intervals and the margin; in per cent 100 × each ÷ size of the baseline.
 * Units: %, on one scale; or the metric's unit, or its normalised unit (per step and with the shown interval alone), each
 * row on its own scale.
 * Limits: components that were not recorded in both trials or not compared, or metrics whose baseline is near zero against
 * its own spread, are named without a line. A margin more than three times as wide as all that a scale holds fills the
 * drawing.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param options - {@link DIFFERENCE_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: there is no difference to draw; `out-of-range`: a metric that was not
 * compared, an unknown unit or a width below 300.
 * @example
 * differenceFigure(compareTrials(baseline, changed)).startsWith("<svg") // true
 */
export function differenceFigure(comparison: Comparison, options: DifferenceFigureOptions = {}): string {
  const { metrics, ids, unit, id, width } = withDefaults<DifferenceFigureOptions>(
    DIFFERENCE_FIGURE_DEFAULTS,
    options,
  );
  requireNumber("width", width, { from: 300 });
  requireOneOf("unit", unit, ["percent", "si", "normalised"]);
  const blocks =
    ids === null ? ofComponents(comparison, metrics, unit) : ofIds(comparison, ids, metrics, unit);
  if (blocks.every(({ rows }) => rows.length === 0)) {
    fail("missing-channel", "no component has a difference to draw", { argument: "comparison" });
  }
  const { shownLevel, readingLevel } = comparison.settings;
  const [what, in_] = TITLES[unit];
  return drawDifferences(blocks, {
    id,
    width,
    title: `${ids === null ? what : "Differences"}, ${in_}`,
    heading: HEADINGS[unit],
    oneScale: unit === "percent",
    shownLevel,
    readingLevel,
  });
}

function ofComponents(
  comparison: Comparison,
  metrics: readonly Metric[],
  unit: DifferenceRowUnit,
): DifferenceBlock[] {
  return comparison.components.map((component) => {
    const metric = comparison.metrics.find((one) => one.id === component.metric);
    const rows = metric === undefined ? [] : rowsOf(metric, component, speakerName(metric, metrics), unit);
    const what = speakerWords(component, metric === undefined ? null : unitOf(metric, unit), metrics);
    return { heading: capitalised(component.component), ...explained(what, metric, rows, unit) };
  });
}

function ofIds(
  comparison: Comparison,
  ids: readonly string[],
  metrics: readonly Metric[],
  unit: DifferenceRowUnit,
): DifferenceBlock[] {
  return ids.map((id) => {
    const metric = comparison.metrics.find((one) => one.id === id);
    if (metric === undefined) {
      fail("out-of-range", `"${id}" was not compared`, {
        argument: "ids",
        values: { given: id, allowed: comparison.metrics.map((one) => one.id) },
      });
    }
    const component = comparison.components.find((one) => one.metric === id);
    const name = speakerName(metric, metrics);
    const rows = rowsOf(metric, component, name, unit);
    return { heading: capitalised(name), ...explained(unitOf(metric, unit) ?? "", metric, rows, unit) };
  });
}

function speakerName({ id }: MetricComparison, metrics: readonly Metric[]): string {
  return metricName(id, metrics);
}

/** The unit that stands in a heading; none in per cent or of a ratio. */
function unitOf({ unit: own, normalised }: MetricComparison, unit: DifferenceRowUnit): string | null {
  const written = unit === "percent" ? null : unit === "si" ? own : (normalised?.unit ?? null);
  return written === "1" ? null : written;
}

/** Why a metric that was compared has no line, behind what it is. */
function explained(
  what: string,
  metric: MetricComparison | undefined,
  rows: readonly DifferenceRow[],
  unit: DifferenceRowUnit,
): Pick<DifferenceBlock, "what" | "rows"> {
  if (metric === undefined || rows.length > 0) return { what, rows };
  const why = unit === "percent" ? "baseline near zero, no share of it" : "not normalised in both trials";
  return { what: what === "" ? why : `${what}; ${why}`, rows };
}

function rowsOf(
  metric: MetricComparison,
  component: ComponentComparison | undefined,
  name: string,
  unit: DifferenceRowUnit,
): readonly DifferenceRow[] {
  const labelled = (label: string, reading: string | null | undefined) => ({
    label,
    reading: reading ?? null,
    name,
  });
  const perStep = labelled("per step", component?.reading);
  if (unit === "normalised") {
    return metric.normalised === undefined ? [] : [normalisedRow(perStep, metric.normalised)];
  }
  const row = (words: typeof perStep, values: ComparedValues): readonly DifferenceRow[] => {
    const drawn = differenceRow(words, values, unit === "percent" ? null : metric.unit);
    return drawn === null ? [] : [drawn];
  };
  return [
    ...row(perStep, metric),
    ...(metric.perKilometre === undefined
      ? []
      : row(labelled("per km", component?.perKilometre), metric.perKilometre)),
  ];
}
