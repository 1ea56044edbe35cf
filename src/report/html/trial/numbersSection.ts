import { stepsToCsv, summaryToCsv, writeJson } from "../../../exchange/index.js";
import type { Metric } from "../../../metrics/index.js";
import type { MetricSummary, Trial } from "../../../trial/index.js";
import { pluralOf } from "../../wording/counted.js";
import { levelWords } from "../../wording/intervalWords.js";
import { labelled } from "../../wording/labelled.js";
import { measuredCells } from "../../wording/measuredCells.js";
import { metricGroups } from "../../wording/metricGroups.js";
import { summaryNoun } from "../../wording/strideNoun.js";
import { missingList } from "../missingList.js";
import { section } from "../section.js";
import { copySection } from "../sections/copySection.js";
import { type TableRow, table } from "../table.js";

/** Contacts of about six minutes: beyond them a table of each is too long for a page. */
const MOST_CONTACTS = 1000;

/** Writes every number of a trial, what was not computed, and CSV and JSON to copy out. */
export function numbersSection(trial: Trial, metrics: readonly Metric[]): string {
  const long = trial.steps.length > MOST_CONTACTS;
  return section(
    "The numbers",
    values(trial, metrics),
    trial.notComputed.length === 0 ? "" : `<h3>Not computed</h3>${missingList(trial.notComputed, metrics)}`,
    copySection([
      { name: "CSV of the summary, to copy", text: summaryToCsv(trial) },
      { name: "CSV of every contact, to copy", text: long ? null : stepsToCsv(trial) },
      { name: "JSON of the trial, to copy", text: long ? null : writeJson(trial) },
    ]),
  );
}

function values(trial: Trial, metrics: readonly Metric[]): string {
  const { summary, settings } = trial;
  const over = pluralOf(summaryNoun(trial));
  const rows = metricGroups(Object.keys(summary.metrics), metrics).flatMap(
    ({ heading, metrics: listed }): readonly TableRow[] => [
      { cells: [heading] },
      ...listed.flatMap(({ id, name, primary }) => {
        const found = summary.metrics[id];
        return found === undefined ? [] : [{ primary, cells: [labelled(name, found.unit), ...cells(found)] }];
      }),
    ],
  );
  return table(
    `Means over ${over} ± standard deviation between ${over}; left and right over contacts`,
    [
      "metric",
      "mean ± SD",
      "left",
      "right",
      `${levelWords(settings.level)} interval`,
      "normalised ± SD",
      over,
    ],
    rows,
  );
}

function cells(summary: MetricSummary): string[] {
  const { n, normalised, left, right } = summary;
  const { meanAndSd, interval, write } = measuredCells(summary);
  return [
    meanAndSd,
    left === undefined ? "" : write(left.mean),
    right === undefined ? "" : write(right.mean),
    interval,
    normalised === undefined ? "" : `${measuredCells(normalised).meanAndSd} ${normalised.unit}`,
    String(n),
  ];
}
