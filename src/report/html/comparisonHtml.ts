import type { Comparison } from "../../compare/index.js";
import type { Trial } from "../../trial/index.js";
import { fail, withDefaults } from "../../units/index.js";
import { element } from "../markup/element.js";
import { COMPARISON_REPORT_DEFAULTS, type ComparisonReportOptions } from "../options.js";
import { answerParts } from "../wording/answerParts.js";
import { capitalised } from "../wording/capitalised.js";
import { curvesMethod } from "../wording/clusterSentences.js";
import { comparedFacts } from "../wording/comparedFacts.js";
import { comparisonMethods } from "../wording/comparisonMethods.js";
import { driftWords } from "../wording/driftSentences.js";
import { limitFacts } from "../wording/limitFacts.js";
import { methodsBesides, methodsParagraph } from "../wording/methodsParagraph.js";
import { whyNoDrift } from "../wording/notMade.js";
import { overallHeading } from "../wording/overallHeading.js";
import { settleWords } from "../wording/settleWords.js";
import { uncertaintySentence } from "../wording/uncertaintySentence.js";
import { bulletList } from "./bulletList.js";
import { cautionList } from "./cautionList.js";
import type { Compared } from "./comparison/compared.js";
import { componentsSection } from "./comparison/componentsSection.js";
import { curvesSection } from "./comparison/curvesSection.js";
import { numbersSection } from "./comparison/numbersSection.js";
import { symmetrySection } from "./comparison/symmetrySection.js";
import { workSection } from "./comparison/workSection.js";
import { factList } from "./factList.js";
import { healthSection } from "./healthSection.js";
import { page } from "./page.js";
import { paragraph } from "./paragraph.js";
import { section } from "./section.js";
import { alternativesSection } from "./sections/alternativesSection.js";
import { landingSection } from "./sections/landingSection.js";
import { stepsSection } from "./sections/stepsSection.js";
import { twoColumns } from "./sections/twoColumns.js";

/**
 * Writes a comparison as one self-contained HTML page: the answer first with its uncertainty, then the three components
 * with their differences, mean curves, single steps, landing, work, the two feet, what else could be tried, cautions,
 * methods, and every number as a table and as CSV and JSON to copy out. It loads nothing; one small script of the
 * library's own reads values out of figures and switches units, and without it everything is shown.
 *
 * Units: as each row says.
 * Limits: text from a file is shown as text, whatever markup it holds. Of several trials the first of each condition is
 * drawn.
 * Source: layout of this library.
 * @param comparison - As `compareTrials` gives it.
 * @param baseline - The trial of the baseline, or its trials, that were compared.
 * @param changed - The same of the change.
 * @param options - {@link COMPARISON_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; `missing-value`: no trial of a condition; `missing-channel`, and as
 * `writeJson`: a trial or comparison made by hand that lacks what the page draws or its schema needs.
 * @example
 * comparisonHtml(compareTrials(baseline, changed), baseline, changed).startsWith("<!doctype html>") // true
 */
export function comparisonHtml(
  comparison: Comparison,
  baseline: Trial | readonly Trial[],
  changed: Trial | readonly Trial[],
  options: ComparisonReportOptions = {},
): string {
  const { metrics, names, curves } = withDefaults<ComparisonReportOptions>(
    COMPARISON_REPORT_DEFAULTS,
    options,
  );
  const [before, after] = [trialsOf(baseline, "baseline"), trialsOf(changed, "changed")];
  const compared: Compared = {
    comparison,
    baseline: before.first,
    changed: after.first,
    trials: { baseline: before.count, changed: after.count },
    metrics,
    curves,
  };
  const { overall, settings } = comparison;
  const heading = overallHeading(overall.reading, overall.perKilometre);
  const { answer, besides } = answerParts(overall.sentence);
  return page({
    title: names === null ? heading : `${heading}: ${names.baseline}, ${names.changed}`,
    kind: names === null ? "Two conditions compared" : `${names.baseline} compared with ${names.changed}`,
    heading,
    answer,
    uncertainty: uncertaintySentence(comparison),
    version: settings.version,
    sections: [
      section("What would settle it", bulletList(settleWords(overall.toSettle).map(capitalised))),
      componentsSection(compared),
      section("Also more load", besides === "" ? "" : paragraph(besides)),
      curvesSection(compared),
      twoColumns(
        stepsSection(
          before.first,
          after.first,
          metrics,
          driftWords(comparison, metrics),
          whyNoDrift(comparison),
        ) + landingSection(before.first, after.first),
        workSection(comparison) + symmetrySection(compared),
      ),
      alternativesSection(comparison.alternatives),
      section("Data quality and cautions", cautionList(comparison.cautions, metrics)),
      methodsSection(compared, names),
      numbersSection(compared),
      healthSection(),
    ],
  });
}

function methodsSection(
  { comparison, baseline, changed, metrics, curves }: Compared,
  names: { readonly baseline: string; readonly changed: string } | null,
): string {
  const besides = methodsBesides(changed.settings, baseline.settings);
  return section(
    "Methods and settings",
    element(
      "div",
      { class: "methods" },
      paragraph([comparisonMethods(comparison, metrics), curvesMethod(curves)].filter(Boolean).join(" ")),
      paragraph(`Baseline. ${methodsParagraph(baseline.settings)} Changed. ${besides}`),
    ),
    factList([...comparedFacts(comparison, names), ...limitFacts(comparison, metrics)]),
  );
}

/** The first trial of a condition, and how many there are. */
function trialsOf(
  trials: Trial | readonly Trial[],
  argument: string,
): { readonly first: Trial; readonly count: number } {
  const list = "schema" in trials ? [trials] : trials;
  const [first] = list;
  if (first === undefined) {
    fail("missing-value", `${argument} holds no trial; at least one is needed to draw`, { argument });
  }
  return { first, count: list.length };
}
