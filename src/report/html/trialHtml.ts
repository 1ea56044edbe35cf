import type { Trial } from "../../trial/index.js";
import { withDefaults } from "../../units/index.js";
import { TRIAL_REPORT_DEFAULTS, type TrialReportOptions } from "../options.js";
import { methodsParagraph } from "../wording/methodsParagraph.js";
import { trialFacts } from "../wording/trialFacts.js";
import { trialSentence } from "../wording/trialSentence.js";
import { cautionList } from "./cautionList.js";
import { factList } from "./factList.js";
import { healthSection } from "./healthSection.js";
import { page } from "./page.js";
import { paragraph } from "./paragraph.js";
import { section } from "./section.js";
import { landingSection } from "./sections/landingSection.js";
import { stepsSection } from "./sections/stepsSection.js";
import { twoColumns } from "./sections/twoColumns.js";
import { curvesSection } from "./trial/curvesSection.js";
import { loadSection } from "./trial/loadSection.js";
import { numbersSection } from "./trial/numbersSection.js";
import { symmetrySection } from "./trial/symmetrySection.js";
import { workSection } from "./trial/workSection.js";

/**
 * Writes a trial as one self-contained HTML page: the answer first, then mean curves, single steps, landing, work, the two
 * feet, the load per kilometre, data quality, methods, and every number as a table and as CSV and JSON to copy out. It
 * loads nothing; one small script of the library's own reads values out of figures and switches units, and without it
 * everything is shown.
 *
 * Units: as each row says.
 * Limits: text from a file is shown as text, whatever markup it holds. Of a trial above 1000 contacts the page does not
 * carry the table of every contact and the JSON.
 * Source: layout of this library.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link TRIAL_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; `missing-channel`, `missing-value`, and as `writeJson`: a trial made by hand
 * whose curves are empty, or that its schema refuses.
 * @example
 * trialHtml(trial).startsWith("<!doctype html>") // true
 */
export function trialHtml(trial: Trial, options: TrialReportOptions = {}): string {
  const { metrics, title } = withDefaults<TrialReportOptions>(TRIAL_REPORT_DEFAULTS, options);
  const name = title ?? "One recording";
  return page({
    title: `${name}: force between foot and ground`,
    kind: "Force between foot and ground, one recording",
    heading: name,
    answer: trialSentence(trial, metrics),
    version: trial.settings.version,
    sections: [
      curvesSection(trial),
      twoColumns(
        stepsSection(trial, null, metrics, []) + landingSection(trial, null),
        workSection(trial) + symmetrySection(trial, metrics),
      ),
      loadSection(trial, metrics),
      section("Data quality and cautions", factList(trialFacts(trial)), cautionList(trial.cautions, metrics)),
      section("Methods and settings", paragraph(methodsParagraph(trial.settings))),
      numbersSection(trial, metrics),
      healthSection(),
    ],
  });
}
