import type { Comparison, MetricComparison } from "../compare/index.js";
import type { Spread } from "../trial/index.js";
import { type Cell, rowsToCsv } from "./rowsToCsv.js";

/** Both trials' values and their difference, whatever they are counted per. */
type Compared = Pick<
  MetricComparison,
  | "baseline"
  | "changed"
  | "difference"
  | "percent"
  | "interval"
  | "readingInterval"
  | "smallestDetectableChange"
>;

const HEADER = [
  "metric",
  "unit",
  "per",
  "component",
  "reading",
  "baselineN",
  "baselineMean",
  "baselineSd",
  "changedN",
  "changedMean",
  "changedSd",
  "difference",
  "percent",
  "differenceLow",
  "differenceHigh",
  "level",
  "readingLow",
  "readingHigh",
  "readingLevel",
  "smallestDetectableChange",
  "smallestDetectableChangeSource",
  "effectSize",
  "normalisedUnit",
  "normalisedDifference",
  "normalisedLow",
  "normalisedHigh",
] as const;

/**
 * Writes a comparison as a tidy table: one row a metric, per step and, where it has a meaning, per kilometre; the work
 * per metre comes last.
 *
 * Columns: `metric` (id), `unit`, `per` (step, kilometre, metre); `component` and `reading` for the metric that speaks
 * for a component, empty for the others; `n`, `mean` and `sd` of the strides of both trials; the `difference` (changed −
 * baseline) with `percent` of the baseline; its interval as shown (`differenceLow`, `differenceHigh`, `level`) and as
 * the reading is taken from (`readingLow`, `readingHigh`, `readingLevel`); the smallest detectable change and its
 * source; Hedges' g; the difference in the normalised unit with its interval at `level`.
 *
 * Units: in the columns `unit` and `normalisedUnit`.
 * Limits: numbers have 12 significant digits and no thousands marks. An empty cell is what a metric does not have: NaN in
 * pandas' `read_csv`, NA in R's `read.csv` with `na.strings = ""`, which texts need.
 * Source: format of this library.
 * @param comparison - From `compareTrials`, or read back from its JSON.
 * @throws GaitKineticsError `not-finite`: a value that is no finite number.
 * @example
 * metricsToCsv(compareTrials(baseline, changed)).startsWith("metric,unit,per,component,reading,") // true
 */
export function metricsToCsv(comparison: Comparison): string {
  const { metrics, components, work } = comparison;
  const rows = metrics.flatMap((metric) => {
    const speaksFor = components.find((component) => component.metric === metric.id);
    const { normalised } = metric;
    const perStep: Cell[] = [
      metric.id,
      metric.unit,
      "step",
      speaksFor?.component ?? null,
      speaksFor?.reading ?? null,
      ...cellsOf(metric),
      metric.effectSize,
      ...(normalised === undefined
        ? []
        : [normalised.unit, normalised.difference, normalised.interval.low, normalised.interval.high]),
    ];
    if (metric.perKilometre === undefined) return [perStep];
    const perKilometre: Cell[] = [
      metric.id,
      `${metric.unit}/km`,
      "kilometre",
      speaksFor?.component ?? null,
      speaksFor?.perKilometre ?? null,
      ...cellsOf(metric.perKilometre),
    ];
    return [perStep, perKilometre];
  });
  if (work.perMetre !== undefined) {
    const { perMetre, reading } = work;
    rows.push(["positiveExternalWork", perMetre.unit, "metre", "work", reading, ...cellsOf(perMetre)]);
  }
  return rowsToCsv(
    HEADER,
    rows.map((row) => [...row, ...Array<null>(HEADER.length - row.length).fill(null)]),
  );
}

function cellsOf(values: Compared): Cell[] {
  const { baseline, changed, difference, percent, interval, readingInterval, smallestDetectableChange } =
    values;
  return [
    ...spreadOf(baseline),
    ...spreadOf(changed),
    difference,
    percent,
    interval.low,
    interval.high,
    interval.level,
    readingInterval.low,
    readingInterval.high,
    readingInterval.level,
    smallestDetectableChange.value,
    smallestDetectableChange.source,
  ];
}

function spreadOf({ n, mean, sd }: Spread): Cell[] {
  return [n, mean, sd];
}
