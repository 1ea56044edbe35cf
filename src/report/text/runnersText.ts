import type { RunnersComparison, RunnersMetric } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { withDefaults } from "../../units/index.js";
import { SERIES_REPORT_DEFAULTS, type SeriesReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatNumber } from "../wording/formatNumber.js";
import { intervalWords, levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { risenWords, runnersWork } from "../wording/risenWords.js";
import { runnersCells } from "../wording/runnersCells.js";
import { runnersFacts } from "../wording/runnersFacts.js";
import { settleWords } from "../wording/settleWords.js";
import { uncertaintySentence } from "../wording/uncertaintySentence.js";
import { cautionLines } from "./cautionLines.js";
import { factLines } from "./factLines.js";
import { healthLines } from "./healthLines.js";
import { listLines } from "./listLines.js";
import { notComputedLines } from "./notComputedLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/**
 * Writes a comparison of many runners as text of at most 80 columns: the answer, the three components with their readings,
 * each metric's mean difference with its interval, each runner's own difference, and how it was computed.
 *
 * Units: as each row says.
 * Limits: of independent groups no runner has a difference of their own.
 * Source: layout of this library.
 * @param comparison - As `compareRunners` gives it.
 * @param options - {@link SERIES_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * runnersText(compareRunners([{ runner: "Ida", baseline, changed }])).split("\n").every((line) => line.length <= 80) // true
 */
export function runnersText(comparison: RunnersComparison, options: SeriesReportOptions = {}): string {
  const { metrics } = withDefaults<SeriesReportOptions>(SERIES_REPORT_DEFAULTS, options);
  const { overall, components, notCompared, cautions } = comparison;
  const nameOf = (id: string) => metricName(id, metrics);
  const spoken = components.map(({ metric }) => metric);
  const risen = risenWords(comparison, metrics);
  const lines = [
    ...wrap(overall.sentence),
    ...wrap(uncertaintySentence(comparison)),
    ...(overall.toSettle === undefined || overall.toSettle.length === 0
      ? []
      : wrap(settleWords(overall.toSettle).join("; "), "What would settle it: ", "  ")),
    "",
    ...components.flatMap(({ sentence }) => wrap(sentence, "- ")),
    ...runnersWork(comparison, metrics).flatMap((sentence) => wrap(sentence, "- ")),
    "",
    ...(risen === "" ? [] : [...wrap(risen), ""]),
    ...tableOf(comparison, metrics),
    ...comparison.metrics
      .filter(({ id }) => spoken.includes(id))
      .flatMap((metric) => runnerLines(metric, nameOf)),
    ...runnersFacts(comparison, metrics).flatMap(factLines),
    "",
    ...notComputedLines("Not compared", notCompared, nameOf),
    ...cautionLines(cautions, nameOf),
    ...healthLines(),
  ];
  return `${lines.join("\n")}\n`;
}

function tableOf(comparison: RunnersComparison, entries: readonly Metric[]): string[] {
  const columns: readonly Column[] = [
    { heading: "Means over runners", width: 27, left: true },
    { heading: "baseline", width: 8 },
    { heading: "changed", width: 8 },
    { heading: "differs", width: 8 },
    { heading: `${levelWords(comparison.settings.shownLevel)} interval`, width: 17 },
    { heading: "%", width: 6 },
  ];
  const byId = new Map(comparison.metrics.map((metric) => [metric.id, metric]));
  const groups = metricGroups([...byId.keys()], entries);
  if (groups.length === 0) return [];
  return [
    ...tableHead(columns),
    ...groups.flatMap((group) => [
      group.heading,
      ...group.metrics.flatMap(({ id, name, primary }) => {
        const metric = byId.get(id);
        if (metric === undefined) return [];
        const { unit, perKilometre } = metric;
        return [
          ...tableRow(columns, runnersCells(metric, `  ${labelled(name, unit)}`)),
          ...(perKilometre === undefined || !primary
            ? []
            : tableRow(columns, runnersCells(perKilometre, `    per kilometre, ${unit}/km`))),
        ];
      }),
    ]),
    "",
  ];
}

/** What each runner did, and how much runners differ in it. */
function runnerLines(metric: RunnersMetric, nameOf: (id: string) => string): string[] {
  const { id, unit, runners, betweenRunners, betweenTrials } = metric;
  const spread = [
    `standard deviation between runners ${formatNumber(betweenRunners)} ${unit}`,
    ...(betweenTrials === null ? [] : [`from trial to trial ${formatNumber(betweenTrials)} ${unit}`]),
  ].join(", ");
  return listLines(
    capitalised(`${nameOf(id)}, each runner's own difference; ${spread}`),
    runners.map(({ runner, difference, interval }) => {
      const between = interval === null ? "" : ` (${intervalWords(interval)})`;
      return `${runner}: ${formatDifference(difference)} ${unit}${between}`;
    }),
  );
}
