import type { RunnersComparison, RunnersValues } from "../../compare/index.js";
import { writeJson } from "../../exchange/index.js";
import type { Metric } from "../../metrics/index.js";
import { withDefaults } from "../../units/index.js";
import { runnersFigure } from "../figures/runnersFigure.js";
import { SERIES_REPORT_DEFAULTS, type SeriesReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { intervalWords, levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { overallHeading } from "../wording/overallHeading.js";
import { risenWords, runnersWork } from "../wording/risenWords.js";
import { runnersCells } from "../wording/runnersCells.js";
import { runnersFacts } from "../wording/runnersFacts.js";
import { settleWords } from "../wording/settleWords.js";
import { uncertaintySentence } from "../wording/uncertaintySentence.js";
import { bulletList } from "./bulletList.js";
import { cautionList } from "./cautionList.js";
import { chooser } from "./chooser.js";
import { factList } from "./factList.js";
import { figureBlock } from "./figureBlock.js";
import { healthSection } from "./healthSection.js";
import { missingList } from "./missingList.js";
import { page } from "./page.js";
import { paragraph } from "./paragraph.js";
import { section } from "./section.js";
import { copySection } from "./sections/copySection.js";
import { table } from "./table.js";

/**
 * Writes a comparison of many runners as one self-contained HTML page: the answer, each runner's own difference drawn beside
 * the mean, every metric's numbers, cautions, methods, and JSON to copy out.
 *
 * Units: as each row says.
 * Limits: text from a file is shown as text, whatever markup it holds. Of independent groups no runner has a difference.
 * Source: layout of this library.
 * @param comparison - As `compareRunners` gives it.
 * @param options - {@link SERIES_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; as `writeJson`: a result made by hand that its schema refuses.
 * @example
 * runnersHtml(compareRunners([{ runner: "Ida", baseline, changed }])).startsWith("<!doctype html>") // true
 */
export function runnersHtml(comparison: RunnersComparison, options: SeriesReportOptions = {}): string {
  const { metrics } = withDefaults<SeriesReportOptions>(SERIES_REPORT_DEFAULTS, options);
  const { overall, components, settings, runners } = comparison;
  const perKilometre = (word: "lower" | "higher") =>
    components.filter((one) => one.perKilometre === word).map(({ component }) => component);
  const heading = overallHeading(overall.reading, {
    lower: perKilometre("lower"),
    higher: perKilometre("higher"),
  });
  const kind =
    settings.design === "paired"
      ? `${counted(runners.baseline, "runner")}, each in both conditions`
      : `${counted(runners.baseline, "runner")} in the baseline, ${runners.changed} others in the change`;
  const risen = risenWords(comparison, metrics);
  return page({
    title: `${heading}: ${kind}`,
    kind,
    heading,
    answer: overall.sentence,
    uncertainty: uncertaintySentence(comparison),
    version: settings.version,
    sections: [
      section("What would settle it", bulletList(settleWords(overall.toSettle).map(capitalised))),
      section(
        "The three components",
        bulletList([...components.map(({ sentence }) => sentence), ...runnersWork(comparison, metrics)]),
        risen === "" ? "" : paragraph(risen),
      ),
      section("Each runner", drawings(comparison, metrics)),
      section("Data quality and cautions", cautionList(comparison.cautions, metrics)),
      section("Methods and settings", factList(runnersFacts(comparison, metrics))),
      section(
        "The numbers",
        numbers(comparison, metrics),
        missingList(comparison.notCompared, metrics),
        copySection([{ name: "JSON of the comparison, to copy", text: writeJson(comparison) }]),
      ),
      healthSection(),
    ],
  });
}

function drawings(comparison: RunnersComparison, metrics: readonly Metric[]): string {
  const drawn = comparison.components.flatMap(({ metric: spoken }) =>
    comparison.metrics.filter(({ id, runners }) => id === spoken && runners.length > 0),
  );
  return chooser(
    "runners",
    "Show",
    drawn.map(({ id, unit }, i) => ({
      label: labelled(capitalised(metricName(id, metrics)), unit),
      content: figureBlock(
        [runnersFigure(comparison, { metric: id, metrics, id: `runners-${i}`, width: 420 })],
        "Each runner's own difference, changed less baseline, and that of the average runner.",
      ),
    })),
  );
}

function numbers(comparison: RunnersComparison, metrics: readonly Metric[]): string {
  const byId = new Map(comparison.metrics.map((metric) => [metric.id, metric]));
  const { shownLevel, readingLevel } = comparison.settings;
  const rows = metricGroups([...byId.keys()], metrics).flatMap((group) => [
    { cells: [group.heading] },
    ...group.metrics.flatMap(({ id, name, primary }) => {
      const metric = byId.get(id);
      if (metric === undefined) return [];
      const { unit, perKilometre } = metric;
      const row = (values: RunnersValues, label: string) => ({
        primary,
        cells: [...runnersCells(values, label), intervalWords(values.readingInterval)],
      });
      return [
        row(metric, labelled(name, unit)),
        ...(perKilometre === undefined || !primary
          ? []
          : [row(perKilometre, `${name} per kilometre, ${unit}/km`)]),
      ];
    }),
  ]);
  return table(
    "Means over runners; difference is changed less baseline, of the average runner",
    [
      "metric",
      "baseline",
      "changed",
      "difference",
      `${levelWords(shownLevel)} interval`,
      "%",
      `${levelWords(readingLevel)} interval`,
    ],
    rows,
  );
}
