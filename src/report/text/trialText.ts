import type { MetricSummary, Trial } from "../../trial/index.js";
import { withDefaults } from "../../units/index.js";
import { TRIAL_REPORT_DEFAULTS, type TrialReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { pluralOf } from "../wording/counted.js";
import { measuredCells } from "../wording/measuredCells.js";
import { type MetricGroup, metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { strideNoun, summaryNoun } from "../wording/strideNoun.js";
import { trialFacts } from "../wording/trialFacts.js";
import { betweenFeetLines } from "./betweenFeetLines.js";
import { cautionLines } from "./cautionLines.js";
import { healthLines } from "./healthLines.js";
import { loadOverStepsLines } from "./loadOverStepsLines.js";
import { notComputedLines } from "./notComputedLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

const COLUMNS: readonly Column[] = [
  { heading: "", width: 24, left: true },
  { heading: "mean ± SD", width: 15 },
  { heading: "unit", width: 9, left: true },
  { heading: "normalised", width: 13 },
  { heading: "left", width: 7 },
  { heading: "right", width: 7 },
];

/**
 * Writes a trial as text of at most 80 columns: what was analysed, then every metric by component with its spread
 * between strides, its normalised value and both sides, then the two feet beside each other, the load per kilometre, what
 * was not computed and why, and the cautions.
 *
 * Units: as each row says.
 * Limits: ± is one standard deviation between strides, or contacts where there is none; left and right are means over contacts. Control characters in a
 * name become spaces.
 * Source: layout of this library.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link TRIAL_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * trialText(trial).split("\n").every((line) => line.length <= 80) // true
 */
export function trialText(trial: Trial, options: TrialReportOptions = {}): string {
  const { metrics, title } = withDefaults<TrialReportOptions>(TRIAL_REPORT_DEFAULTS, options);
  const { summary } = trial;
  const nameOf = (id: string) => metricName(id, metrics);
  const groups = metricGroups(Object.keys(summary.metrics), metrics);
  const lines = [
    ...(title === null ? [] : [...wrap(title), ""]),
    ...trialFacts(trial).flatMap(({ label, text }) => wrap(text, label.padEnd(19))),
    "",
    ...(groups.length === 0 ? [] : valueLines(trial, groups)),
    ...betweenFeetLines(trial, metrics),
    ...loadOverStepsLines(trial, metrics),
    ...notComputedLines("Not computed", trial.notComputed, nameOf),
    ...cautionLines(trial.cautions, nameOf),
    ...healthLines(),
  ];
  return `${lines.join("\n")}\n`;
}

/** The table of all values, by component, and what its numbers are. */
function valueLines(trial: Trial, groups: readonly MetricGroup[]): string[] {
  return [
    ...tableHead(COLUMNS),
    ...groups.flatMap((group) => [
      group.heading,
      ...group.metrics.flatMap(({ id, name }) => metricRow(name, trial.summary.metrics[id])),
      "",
    ]),
    ...wrap(
      `± one standard deviation between ${pluralOf(summaryNoun(trial))}; left and right are means over contacts.`,
    ),
    ...fewerLines(trial, groups),
    "",
  ];
}

/**
 * Says how many strides, or contacts, the metrics have that not each of them has. One fewer is the last stride, behind
 * which a neighbour is missing; those are not named.
 */
function fewerLines(trial: Trial, groups: readonly MetricGroup[]): string[] {
  const { strides, metrics } = trial.summary;
  const noun = strideNoun(trial);
  const counts = groups
    .flatMap((group) => group.metrics)
    .map(({ id, name }) => ({ name: name.toLowerCase(), n: metrics[id]?.n ?? 0 }));
  const fewer = counts.filter(({ n }) => n < strides - 1).map(({ name, n }) => `${name} ${n}`);
  return [
    ...(counts.some(({ n }) => n === strides - 1)
      ? wrap(`Metrics that need a later contact have one ${noun} fewer, ${strides - 1}.`)
      : []),
    ...(fewer.length === 0
      ? []
      : wrap(`${capitalised(pluralOf(noun))} with a value, of ${strides}: ${fewer.join(", ")}.`)),
  ];
}

function metricRow(name: string, summary: MetricSummary | undefined): string[] {
  if (summary === undefined) return [];
  const { unit, normalised, left, right } = summary;
  const { meanAndSd, write } = measuredCells(summary);
  return tableRow(COLUMNS, [
    `  ${name}`,
    meanAndSd,
    unit === "1" ? "" : unit,
    normalised === undefined ? "" : `${measuredCells(normalised).mean} ${normalised.unit}`,
    left === undefined ? "" : write(left.mean),
    right === undefined ? "" : write(right.mean),
  ]);
}
