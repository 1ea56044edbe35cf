import type { Comparison, ComponentComparison, MetricComparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { withDefaults } from "../../units/index.js";
import { COMPARISON_REPORT_DEFAULTS, type ComparisonReportOptions } from "../options.js";
import { answerParts } from "../wording/answerParts.js";
import { besideSpeed } from "../wording/besideSpeed.js";
import { capitalised } from "../wording/capitalised.js";
import { clusterSentences, curvesMethod } from "../wording/clusterSentences.js";
import { type Compared, comparedRow } from "../wording/comparedRow.js";
import { comparisonFacts } from "../wording/comparisonFacts.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { driftSentences } from "../wording/driftSentences.js";
import { formatDifference } from "../wording/formatDifference.js";
import { labelled } from "../wording/labelled.js";
import { metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { whyNoCurves, whyNoDrift } from "../wording/notMade.js";
import { plainNumber } from "../wording/plainNumber.js";
import { settleWords } from "../wording/settleWords.js";
import { speakerWords } from "../wording/speakerWords.js";
import { speedSentences } from "../wording/speedSentences.js";
import { uncertaintySentence } from "../wording/uncertaintySentence.js";
import { alternativeLines } from "./alternativeLines.js";
import { behindLines } from "./behindLines.js";
import { cautionLines } from "./cautionLines.js";
import { factLines } from "./factLines.js";
import { healthLines } from "./healthLines.js";
import { listLines } from "./listLines.js";
import { notComputedLines } from "./notComputedLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

const REST = "All other metrics. A difference is changed less baseline; these carry no reading.";

/**
 * Writes a comparison as text of at most 80 columns: the answer as a sentence, the three components with their
 * readings and what these rest on, the work, drift, what else could be tried, every other metric, what was compared and
 * how, and the cautions.
 *
 * Units: as each row says.
 * Limits: the interval shown is narrower than the one a reading is taken from. Control characters in a name become
 * spaces.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param options - {@link COMPARISON_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * comparisonText(compareTrials(baseline, changed)).split("\n").every((line) => line.length <= 80) // true
 */
export function comparisonText(comparison: Comparison, options: ComparisonReportOptions = {}): string {
  const { metrics, names, curves } = withDefaults<ComparisonReportOptions>(
    COMPARISON_REPORT_DEFAULTS,
    options,
  );
  const level = `${plainNumber(100 * comparison.settings.shownLevel)} % interval`;
  const primary = componentColumns(level);
  const secondary = metricColumns(level);
  const spoken = comparison.components.map(({ metric }) => metric);
  const rest = comparison.metrics.filter(({ id }) => !spoken.includes(id));
  const groups = metricGroups(
    rest.map(({ id }) => id),
    metrics,
  );
  const nameOf = (id: string) => metricName(id, metrics);
  const byId = new Map(comparison.metrics.map((metric) => [metric.id, metric]));
  const { answer, besides } = answerParts(comparison.overall.sentence);
  const drift = driftSentences(comparison, metrics);
  const lines = [
    ...wrap(answer),
    ...wrap(uncertaintySentence(comparison)),
    ...settleLines(comparison),
    "",
    ...comparison.components.flatMap(({ sentence }) => wrap(sentence, "- ")),
    "",
    ...(besides === "" ? [] : [...wrap(besides), ""]),
    ...tableHead(primary),
    ...comparison.components.flatMap((component) =>
      componentRows(primary, component, byId.get(component.metric ?? ""), metrics),
    ),
    "",
    "Work",
    ...wrap(comparison.work.sentence, "  "),
    ...workRow(primary, comparison.work),
    "",
    ...behindLines(comparison, metrics),
    ...listLines(
      "Drift within a trial, first stride to last",
      drift.length === 0 ? [whyNoDrift(comparison)] : drift,
    ),
    ...listLines("Difference in speed", speedSentences(comparison, metrics)),
    ...listLines(
      "Whole curves of stance",
      curves.length === 0
        ? [whyNoCurves(comparison)]
        : [...curves.flatMap(clusterSentences), curvesMethod(curves)],
    ),
    ...alternativeLines(comparison.alternatives),
    ...(groups.length === 0 ? [] : wrap(REST)),
    ...(groups.length === 0 ? [] : tableHead(secondary)),
    ...groups.flatMap((group) => [
      group.heading,
      ...group.metrics.flatMap(({ id, name }) => metricRow(secondary, name, byId.get(id))),
    ]),
    ...(groups.length === 0 ? [] : [""]),
    ...comparisonFacts(comparison, metrics, names).flatMap(factLines),
    "",
    ...notComputedLines("Not compared", comparison.notCompared, nameOf),
    ...cautionLines(comparison.cautions, nameOf),
    ...healthLines(),
  ];
  return `${lines.join("\n")}\n`;
}

function componentColumns(level: string): readonly Column[] {
  return [
    { heading: "", width: 15, left: true },
    { heading: "reading", width: 9, left: true },
    { heading: "baseline", width: 8 },
    { heading: "changed", width: 8 },
    { heading: "difference", width: 10 },
    { heading: level, width: 18 },
    { heading: "%", width: 6 },
  ];
}

function metricColumns(level: string): readonly Column[] {
  return [
    { heading: "", width: 29, left: true },
    { heading: "baseline", width: 8 },
    { heading: "changed", width: 7 },
    { heading: "differs", width: 7 },
    { heading: level, width: 18 },
    { heading: "%", width: 6 },
  ];
}

function componentRows(
  columns: readonly Column[],
  component: ComponentComparison,
  metric: MetricComparison | undefined,
  entries: readonly Metric[],
): string[] {
  const heading = `${capitalised(component.component)}: ${speakerWords(component, metric?.unit ?? null, entries)}`;
  if (metric === undefined) return wrap(heading);
  const { normalised, perKilometre } = metric;
  return [
    ...wrap(heading),
    ...readingRow(columns, `  per step${besideSpeed(metric)}`, component.reading, metric),
    ...(perKilometre === undefined
      ? []
      : readingRow(columns, "  per kilometre", component.perKilometre, perKilometre)),
    ...(normalised === undefined ? [] : normalisedRow(columns, normalised)),
  ];
}

function readingRow(
  columns: readonly Column[],
  label: string,
  reading: string | null,
  compared: Compared,
): string[] {
  const { baseline, changed, difference, interval, percent } = comparedRow(compared);
  return tableRow(columns, [label, reading ?? "", baseline, changed, difference, interval, percent]);
}

/** The reading is in the sentence above. */
function workRow(columns: readonly Column[], { perMetre }: Comparison["work"]): string[] {
  return perMetre === undefined ? [] : readingRow(columns, `  in ${perMetre.unit}`, null, perMetre);
}

function settleLines({ overall: { toSettle = [] } }: Comparison): string[] {
  return toSettle.length === 0 ? [] : wrap(settleWords(toSettle).join("; "), "What would settle it: ", "  ");
}

/** The normalised difference has an interval of its own and no ends. */
function normalisedRow(
  columns: readonly Column[],
  { unit, difference, interval }: NonNullable<MetricComparison["normalised"]>,
): string[] {
  const decimals = Math.min(4, decimalsFor(difference, (interval.high - interval.low) / 2));
  const signed = (value: number) => formatDifference(value, decimals);
  const between = `${signed(interval.low)} to ${signed(interval.high)}`;
  return tableRow(columns, [`  in ${unit}`, "", "", "", signed(difference), between, ""]);
}

function metricRow(columns: readonly Column[], name: string, metric: MetricComparison | undefined): string[] {
  if (metric === undefined) return [];
  const cells = comparedRow(metric);
  const label = `  ${labelled(name, metric.unit)}${besideSpeed(metric)}`;
  return tableRow(columns, [
    label,
    cells.baseline,
    cells.changed,
    cells.difference,
    cells.interval,
    cells.percent,
  ]);
}
