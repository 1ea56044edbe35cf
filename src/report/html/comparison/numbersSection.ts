import type { Comparison, MetricComparison } from "../../../compare/index.js";
import { metricsToCsv, writeJson } from "../../../exchange/index.js";
import type { Metric } from "../../../metrics/index.js";
import type { Spread } from "../../../trial/index.js";
import { besideSpeed } from "../../wording/besideSpeed.js";
import { levelWords } from "../../wording/intervalWords.js";
import { labelled } from "../../wording/labelled.js";
import { type MetricGroup, metricGroups } from "../../wording/metricGroups.js";
import { chooser } from "../chooser.js";
import { missingList } from "../missingList.js";
import { section } from "../section.js";
import { copySection } from "../sections/copySection.js";
import { type TableRow, table } from "../table.js";
import type { Compared } from "./compared.js";
import { differenceHeadings, rowCells } from "./rowCells.js";

/** Writes every number: in SI units or per body weight, what was not compared, and CSV and JSON to copy out. */
export function numbersSection(compared: Compared): string {
  const { comparison, metrics } = compared;
  return section(
    "The numbers",
    chooser("numbers", "Values in", [
      { label: "SI units", content: siTable(comparison, metrics) },
      { label: "per body weight or mass", content: normalisedTable(compared) },
    ]),
    missingSection(comparison, metrics),
    copySection([
      { name: "CSV of the comparison, to copy", text: metricsToCsv(comparison) },
      { name: "JSON of the comparison, to copy", text: writeJson(comparison) },
    ]),
  );
}

function missingSection({ notCompared }: Comparison, metrics: readonly Metric[]): string {
  return notCompared.length === 0 ? "" : `<h3>Not compared</h3>${missingList(notCompared, metrics)}`;
}

function siTable(comparison: Comparison, metrics: readonly Metric[]): string {
  return table(
    "Per step: means over strides; difference is changed less baseline",
    ["metric", ...differenceHeadings(comparison), "Hedges' g"],
    groupRows(comparison, metrics, (metric, { name, primary }) => [
      {
        primary,
        cells: [
          `${labelled(name, metric.unit)}${besideSpeed(metric)}`,
          ...rowCells(metric),
          effect(metric.effectSize),
        ],
      },
    ]),
  );
}

function normalisedTable({ comparison, baseline, changed, trials, metrics }: Compared): string {
  const single = trials.baseline === 1 && trials.changed === 1;
  const rows = groupRows(comparison, metrics, (metric, { id, name, primary }): TableRow[] => {
    const { normalised } = metric;
    if (normalised === undefined) return [];
    const [one, other] = [baseline, changed].map((trial) => trial.summary.metrics[id]?.normalised);
    const [before, after, difference, interval] = rowCells({
      ...normalised,
      baseline: single && one !== undefined ? one : NOTHING,
      changed: single && other !== undefined ? other : NOTHING,
      percent: null,
    });
    const means = single && one !== undefined && other !== undefined ? [before, after] : ["", ""];
    return [
      {
        primary,
        cells: [
          `${labelled(name, normalised.unit)}${besideSpeed(metric)}`,
          ...means,
          difference,
          interval,
        ].map((cell) => cell ?? ""),
      },
    ];
  });
  return table(
    "Per step: normalised means over strides; difference is changed less baseline",
    ["metric", "baseline", "changed", "difference", `${levelWords(comparison.settings.shownLevel)} interval`],
    rows,
  );
}

/** Stands for a mean that is not shown; it leaves the decimals of its row alone. */
const NOTHING: Spread = { n: 0, mean: 0, sd: null, interval: null };

/** Rows of every group that has any, each group under its heading. */
function groupRows(
  comparison: Comparison,
  metrics: readonly Metric[],
  rowsOf: (metric: MetricComparison, listed: MetricGroup["metrics"][number]) => readonly TableRow[],
): readonly TableRow[] {
  const byId = new Map(comparison.metrics.map((metric) => [metric.id, metric]));
  return metricGroups([...byId.keys()], metrics).flatMap(({ heading, metrics: listed }) => {
    const rows = listed.flatMap((one) => {
      const metric = byId.get(one.id);
      return metric === undefined ? [] : rowsOf(metric, one);
    });
    return rows.length === 0 ? [] : [{ cells: [heading] }, ...rows];
  });
}

function effect(value: number | null): string {
  return value === null ? "" : value.toFixed(2);
}
