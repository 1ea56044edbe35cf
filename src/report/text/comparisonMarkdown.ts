import type { Comparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { withDefaults } from "../../units/index.js";
import { COMPARISON_REPORT_DEFAULTS, type ComparisonReportOptions } from "../options.js";
import { ALTERNATIVES_HEADING, ALTERNATIVES_PREFACE, alternativeWords } from "../wording/alternativeWords.js";
import { answerParts } from "../wording/answerParts.js";
import { behindReading } from "../wording/behindReading.js";
import { besideSpeed } from "../wording/besideSpeed.js";
import { capitalised } from "../wording/capitalised.js";
import { cautionSentence } from "../wording/cautionSentence.js";
import { clusterSentences, curvesMethod } from "../wording/clusterSentences.js";
import { comparedFacts } from "../wording/comparedFacts.js";
import { type Compared, comparedRow } from "../wording/comparedRow.js";
import { comparisonMethods } from "../wording/comparisonMethods.js";
import { driftSentences } from "../wording/driftSentences.js";
import { HEALTH_CAUTIONS } from "../wording/healthCautions.js";
import { intervalWords, levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { limitFacts } from "../wording/limitFacts.js";
import { metricGroups } from "../wording/metricGroups.js";
import { metricName } from "../wording/metricName.js";
import { whyNoCurves, whyNoDrift } from "../wording/notMade.js";
import { reasonGroups } from "../wording/reasonGroups.js";
import { settleWords } from "../wording/settleWords.js";
import { speakers } from "../wording/speakers.js";
import { speedSentences } from "../wording/speedSentences.js";
import { uncertaintySentence } from "../wording/uncertaintySentence.js";
import { markdownList, markdownParagraph, markdownSection } from "./markdownLines.js";
import { markdownTable } from "./markdownTable.js";

/**
 * Writes a comparison as Markdown with tables: the answer with its uncertainty, readings and what they rest on, work, drift,
 * whole curves where they are given, what else could be tried with findings and sources, cautions, methods and every number.
 *
 * Units: as each row says.
 * Limits: text from a file is escaped: it makes no markup and no link. Tables are those of GitHub Flavored Markdown.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param options - {@link COMPARISON_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * comparisonMarkdown(compareTrials(baseline, changed)).startsWith("# ") // true
 */
export function comparisonMarkdown(comparison: Comparison, options: ComparisonReportOptions = {}): string {
  const { metrics, names, curves } = withDefaults<ComparisonReportOptions>(
    COMPARISON_REPORT_DEFAULTS,
    options,
  );
  const { overall, components, work, alternatives, cautions, notCompared } = comparison;
  const nameOf = (id: string) => metricName(id, metrics);
  const { answer, besides } = answerParts(overall.sentence);
  const drift = driftSentences(comparison, metrics);
  const lines = [
    ...markdownSection(
      names === null ? "Two conditions compared" : `${names.baseline} compared with ${names.changed}`,
      [...markdownParagraph(answer), ...markdownParagraph(uncertaintySentence(comparison))],
      1,
    ),
    ...markdownSection("What would settle it", markdownList(settleWords(overall.toSettle).map(capitalised))),
    ...markdownSection("The three components", [
      ...markdownList(components.map(({ sentence }) => sentence)),
      ...readings(comparison, metrics),
      ...behind(comparison, metrics),
      ...markdownList(speedSentences(comparison, metrics)),
    ]),
    ...markdownSection("Also more load", markdownParagraph(besides)),
    ...markdownSection(
      "Mean curves of stance",
      markdownList(curves.length === 0 ? [whyNoCurves(comparison)] : curves.flatMap(clusterSentences)),
    ),
    ...markdownSection(
      "Drift within a trial",
      markdownList(drift.length === 0 ? [whyNoDrift(comparison)] : drift),
    ),
    ...markdownSection("Work", [...markdownParagraph(work.sentence), ...perMetre(comparison)]),
    ...alternativesOf(comparison, alternatives.length),
    ...markdownSection(
      "Data quality and cautions",
      markdownList(cautions.map((caution) => cautionSentence(caution, nameOf))),
    ),
    ...markdownSection("Methods and settings", [
      ...markdownParagraph(comparisonMethods(comparison, metrics)),
      ...markdownParagraph(curvesMethod(curves)),
      ...markdownList(
        [...comparedFacts(comparison, names), ...limitFacts(comparison, metrics)].map(
          ({ label, text }) => `${label}: ${text}`,
        ),
      ),
    ]),
    ...markdownSection("The numbers", numbers(comparison, metrics)),
    ...markdownSection(
      "Not compared",
      markdownList(
        reasonGroups(notCompared, nameOf).map((group) =>
          capitalised(`${group.names.join(", ")}: ${group.reason}.`),
        ),
      ),
    ),
    ...markdownSection("Health", markdownList(HEALTH_CAUTIONS)),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

function differenceHeadings({ settings }: Comparison): readonly string[] {
  return ["baseline", "changed", "difference", `${levelWords(settings.shownLevel)} interval`, "%"];
}

function cells(values: Compared): readonly string[] {
  const { baseline, changed, difference, interval, percent } = comparedRow(values);
  return [baseline, changed, difference, interval, percent];
}

function readings(comparison: Comparison, metrics: readonly Metric[]): string[] {
  const rows = speakers(comparison).flatMap(({ component, metric }) => {
    const name = labelled(metricName(metric.id, metrics), metric.unit);
    const row = (per: string, reading: string | null, values: Compared) => [
      component.component,
      `${name}, ${per}`,
      reading ?? "",
      ...cells(values),
    ];
    return [
      row(`per step${besideSpeed(metric)}`, component.reading, metric),
      ...(metric.perKilometre === undefined
        ? []
        : [row("per kilometre", component.perKilometre, metric.perKilometre)]),
    ];
  });
  return markdownTable(["component", "metric", "reading", ...differenceHeadings(comparison)], rows, 3);
}

function behind(comparison: Comparison, metrics: readonly Metric[]): string[] {
  const level = levelWords(comparison.settings.readingLevel);
  return markdownTable(
    [
      "metric",
      `${level} interval`,
      "by bootstrap",
      "smallest detectable change",
      "margin",
      "no rise beyond it",
    ],
    speakers(comparison).map(({ metric }) => {
      const words = behindReading(metric);
      return [
        labelled(metricName(metric.id, metrics), metric.unit),
        words.interval,
        words.bootstrap,
        words.smallestDetectableChange,
        words.margin,
        words.noRiseBeyondMargin,
      ];
    }),
  );
}

function perMetre(comparison: Comparison): string[] {
  const { perMetre: values } = comparison.work;
  return values === undefined
    ? []
    : markdownTable(
        ["", ...differenceHeadings(comparison)],
        [[`positive external work per metre, ${values.unit}`, ...cells(values)]],
      );
}

function alternativesOf({ alternatives }: Comparison, count: number): string[] {
  if (count === 0) return [];
  return markdownSection(ALTERNATIVES_HEADING, [
    ...markdownParagraph(ALTERNATIVES_PREFACE),
    ...alternatives
      .map(alternativeWords)
      .flatMap(({ heading, sentence, findings }) =>
        markdownSection(heading, [...markdownParagraph(sentence), ...markdownList(findings)], 3),
      ),
  ]);
}

function numbers(comparison: Comparison, metrics: readonly Metric[]): string[] {
  const groups = metricGroups(
    comparison.metrics.map(({ id }) => id),
    metrics,
  );
  const rows = groups.flatMap((group) =>
    group.metrics.flatMap(({ id, name }) => {
      const metric = comparison.metrics.find((candidate) => candidate.id === id);
      if (metric === undefined) return [];
      const { normalised, effectSize } = metric;
      return [
        [
          `${labelled(name, metric.unit)}${besideSpeed(metric)}`,
          ...cells(metric),
          normalised === undefined ? "" : `${intervalWords(normalised.interval)} ${normalised.unit}`,
          effectSize === null ? "" : effectSize.toFixed(2),
        ],
      ];
    }),
  );
  return markdownTable(
    ["metric", ...differenceHeadings(comparison), "normalised interval", "Hedges' g"],
    rows,
  );
}
