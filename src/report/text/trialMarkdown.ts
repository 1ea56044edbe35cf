import type { Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import { withDefaults } from "../../units/index.js";
import { TRIAL_REPORT_DEFAULTS, type TrialReportOptions } from "../options.js";
import { betweenFeet } from "../wording/betweenFeet.js";
import { capitalised } from "../wording/capitalised.js";
import { cautionSentence } from "../wording/cautionSentence.js";
import { pluralOf } from "../wording/counted.js";
import { HEALTH_CAUTIONS } from "../wording/healthCautions.js";
import { levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { loadOverSteps } from "../wording/loadOverSteps.js";
import { measuredCells } from "../wording/measuredCells.js";
import { methodsParagraph } from "../wording/methodsParagraph.js";
import { metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { reasonGroups } from "../wording/reasonGroups.js";
import { summaryNoun } from "../wording/strideNoun.js";
import { trialFacts } from "../wording/trialFacts.js";
import { trialSentence } from "../wording/trialSentence.js";
import { markdownList, markdownParagraph, markdownSection } from "./markdownLines.js";
import { markdownTable } from "./markdownTable.js";

/**
 * Writes a trial as Markdown with tables: the answer, every metric with its spread, interval and sides, the two feet, the
 * load per kilometre, data quality, methods, and what was not computed.
 *
 * Units: as each row says.
 * Limits: text from a file is escaped: it makes no markup and no link. Tables are those of GitHub Flavored Markdown.
 * Source: layout of this library.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link TRIAL_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * trialMarkdown(trial, { title: "usual" }).split("\n")[0] // "# usual"
 */
export function trialMarkdown(trial: Trial, options: TrialReportOptions = {}): string {
  const { metrics, title } = withDefaults<TrialReportOptions>(TRIAL_REPORT_DEFAULTS, options);
  const nameOf = (id: string) => metricName(id, metrics);
  const lines = [
    ...markdownSection(title ?? "One recording", markdownParagraph(trialSentence(trial, metrics)), 1),
    ...markdownSection(
      "What was analysed",
      markdownList(trialFacts(trial).map(({ label, text }) => `${label}: ${text}`)),
    ),
    ...markdownSection("The numbers", numbers(trial, metrics)),
    ...markdownSection("Left and right", feet(trial, metrics)),
    ...loads(trial, metrics),
    ...markdownSection(
      "Not computed",
      markdownList(
        reasonGroups(trial.notComputed, nameOf).map(({ reason, names }) =>
          capitalised(`${names.join(", ")}: ${reason}.`),
        ),
      ),
    ),
    ...markdownSection(
      "Data quality and cautions",
      markdownList(trial.cautions.map((caution) => cautionSentence(caution, nameOf))),
    ),
    ...markdownSection("Methods and settings", markdownParagraph(methodsParagraph(trial.settings))),
    ...markdownSection("Health", markdownList(HEALTH_CAUTIONS)),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

function numbers(trial: Trial, metrics: readonly Metric[]): string[] {
  const { summary, settings } = trial;
  const over = pluralOf(summaryNoun(trial));
  const rows = metricGroups(Object.keys(summary.metrics), metrics).flatMap((group) =>
    group.metrics.flatMap(({ id, name }) => {
      const found = summary.metrics[id];
      if (found === undefined) return [];
      const { unit, n, normalised, left, right } = found;
      const { meanAndSd, interval, write } = measuredCells(found);
      return [
        [
          labelled(name, unit),
          meanAndSd,
          left === undefined ? "" : write(left.mean),
          right === undefined ? "" : write(right.mean),
          interval,
          normalised === undefined ? "" : `${measuredCells(normalised).meanAndSd} ${normalised.unit}`,
          String(n),
        ],
      ];
    }),
  );
  const level = `${levelWords(settings.level)} interval`;
  return [
    ...markdownTable(["metric", "mean ± SD", "left", "right", level, "normalised ± SD", over], rows),
    ...markdownParagraph(`± one standard deviation between ${over}; left and right are means over contacts.`),
  ];
}

function feet(trial: Trial, metrics: readonly Metric[]): string[] {
  const { rows, notes, level } = betweenFeet(trial, metrics);
  return [
    ...markdownTable(
      ["metric", "index, %", `${level} interval`, "right − left"],
      rows.map(({ name, index, interval, difference }) => [name, index, interval, difference]),
    ),
    ...markdownList(notes),
  ];
}

function loads(trial: Trial, metrics: readonly Metric[]): string[] {
  const words = loadOverSteps(trial, metrics);
  if (words === null) return [];
  return markdownSection(words.heading, [
    ...markdownParagraph(capitalised(words.sentence)),
    ...markdownTable(
      ["metric", "mean ± SD", "left", "right", "normalised"],
      words.rows.map(({ name, unit, sum, left, right, normalised }) => [
        labelled(name, unit),
        sum,
        left,
        right,
        normalised,
      ]),
    ),
  ]);
}
