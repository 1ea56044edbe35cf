import type { Metric } from "../../metrics/index.js";
import type { Curve, MetricSummary, Trial } from "../../trial/index.js";
import { withDefaults } from "../../units/index.js";
import { curveFigure } from "../figures/curveFigure.js";
import { TRIAL_REPORT_DEFAULTS, type TrialReportOptions } from "../options.js";
import { betweenFeet } from "../wording/betweenFeet.js";
import { capitalised } from "../wording/capitalised.js";
import { pluralOf } from "../wording/counted.js";
import { labelled } from "../wording/labelled.js";
import { loadOverSteps } from "../wording/loadOverSteps.js";
import { measuredCells } from "../wording/measuredCells.js";
import { methodsParagraph } from "../wording/methodsParagraph.js";
import { type MetricGroup, metricGroups } from "../wording/metricGroups.js";
import { plainNumber } from "../wording/plainNumber.js";
import { summaryNoun } from "../wording/strideNoun.js";
import { trialFacts } from "../wording/trialFacts.js";
import { trialSentence } from "../wording/trialSentence.js";
import { cautionList } from "./cautionList.js";
import { factList } from "./factList.js";
import { figureBlock } from "./figureBlock.js";
import { healthSection } from "./healthSection.js";
import { missingList } from "./missingList.js";
import { page } from "./page.js";
import { paragraph } from "./paragraph.js";
import { section } from "./section.js";
import { table } from "./table.js";

/** Narrow enough to be read on a telephone. */
const PANEL = { width: 400, height: 280 } as const;

const CHANNELS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;

/**
 * Writes a trial as one self-contained HTML page: the answer first, then every component with its mean curves and
 * numbers, timing, placement and work, the two feet, the load per kilometre, data quality, methods and health cautions. It loads nothing and runs nothing.
 *
 * Units: as each row says.
 * Limits: text from a file is shown as text, whatever markup it holds.
 * Source: layout of this library.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link TRIAL_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; `missing-channel`, `missing-value`: a trial made by hand whose curves are
 * empty.
 * @example
 * trialHtml(trial).startsWith("<!doctype html>") // true
 */
export function trialHtml(trial: Trial, options: TrialReportOptions = {}): string {
  const { metrics, title } = withDefaults<TrialReportOptions>(TRIAL_REPORT_DEFAULTS, options);
  const groups = metricGroups(Object.keys(trial.summary.metrics), metrics);
  const name = title ?? "One recording";
  return page({
    title: `${name}: force between foot and ground`,
    kind: "Force between foot and ground, one recording",
    heading: name,
    answer: trialSentence(trial, metrics),
    version: trial.settings.version,
    sections: [
      section("What was analysed", factList(trialFacts(trial))),
      ...groups.map((group) => section(group.heading, curvesOf(trial, group.key), numbers(trial, group))),
      section("Left and right", feet(trial, metrics)),
      ...loads(trial, metrics),
      section("Not computed", missingList(trial.notComputed, metrics)),
      section("Data quality and cautions", cautionList(trial.cautions, metrics)),
      section("Methods and settings", paragraph(methodsParagraph(trial.settings))),
      healthSection(),
    ],
  });
}

function feet(trial: Trial, metrics: readonly Metric[]): string {
  const { rows, notes, level } = betweenFeet(trial, metrics);
  return (
    table(
      "Symmetry index, 100 (right − left) ÷ mean of both feet; positive where the right is the larger",
      ["", "index, %", `${level} interval`, "right − left"],
      rows.map(({ name, index, interval, difference }) => ({ cells: [name, index, interval, difference] })),
    ) + notes.map((note) => paragraph(note)).join("")
  );
}

function loads(trial: Trial, metrics: readonly Metric[]): string[] {
  const words = loadOverSteps(trial, metrics);
  if (words === null) return [];
  const rows = words.rows.map(({ name, sum, unit, normalised, left, right }) => ({
    cells: [labelled(name, unit), sum, left, right, normalised],
  }));
  return [
    section(
      words.heading,
      paragraph(capitalised(words.sentence)),
      table(`${words.heading}: sums over steps`, ["", "mean ± SD", "left", "right", "normalised"], rows),
    ),
  ];
}

function curvesOf(trial: Trial, key: MetricGroup["key"]): string {
  if (key !== "vertical" && key !== "anteroposterior" && key !== "mediolateral") return "";
  const curves: readonly Curve[] = Object.values(trial.curves[CHANNELS[key]] ?? {});
  if (curves.length === 0) return "";
  return figureBlock(
    [curveFigure(trial, { component: key, unit: trial.settings.mass === null ? "N" : "BW", ...PANEL })],
    curves.some(({ sd }) => sd !== null)
      ? "Mean curve of stance; the band is one standard deviation between contacts."
      : "The curve of one contact over stance.",
  );
}

function numbers(trial: Trial, { heading, metrics }: MetricGroup): string {
  const { summary, settings } = trial;
  const over = pluralOf(summaryNoun(trial));
  const rows = metrics.flatMap(({ id, name, primary }) => {
    const found = summary.metrics[id];
    return found === undefined ? [] : [{ primary, cells: [labelled(name, found.unit), ...cells(found)] }];
  });
  const interval = `${plainNumber(100 * settings.level)} % interval`;
  return table(
    `${heading}: means over ${over} ± standard deviation between ${over}; left and right over contacts`,
    ["", "mean ± SD", "left", "right", interval, "normalised ± SD", over],
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
