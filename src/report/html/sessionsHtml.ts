import type { SessionSeries } from "../../compare/index.js";
import { writeJson } from "../../exchange/index.js";
import { withDefaults } from "../../units/index.js";
import { sessionsFigure } from "../figures/sessionsFigure.js";
import { SERIES_REPORT_DEFAULTS, type SeriesReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricName } from "../wording/metricName.js";
import { sessionCells } from "../wording/sessionCells.js";
import { sessionsFacts } from "../wording/sessionsFacts.js";
import { sessionsInOrder } from "../wording/sessionsInOrder.js";
import { bulletList } from "./bulletList.js";
import { cautionList } from "./cautionList.js";
import { chooser } from "./chooser.js";
import { factList } from "./factList.js";
import { figureBlock } from "./figureBlock.js";
import { healthSection } from "./healthSection.js";
import { missingList } from "./missingList.js";
import { page } from "./page.js";
import { section } from "./section.js";
import { copySection } from "./sections/copySection.js";
import { table } from "./table.js";

/**
 * Writes a series of sessions of one runner as one self-contained HTML page: which sessions lie outside, each metric's
 * sessions drawn and in numbers against the baseline that stood when they were recorded, cautions, and JSON to copy out.
 *
 * Units: as each table says.
 * Limits: text from a file is shown as text, whatever markup it holds. Above and below say where a number lies, not
 * whether that is well.
 * Source: layout of this library.
 * @param series - As `compareSessions` gives it.
 * @param options - {@link SERIES_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`; as `writeJson`: a result made by hand that its schema refuses.
 * @example
 * typeof sessionsHtml // "function"
 */
export function sessionsHtml(series: SessionSeries, options: SeriesReportOptions = {}): string {
  const { metrics } = withDefaults<SeriesReportOptions>(SERIES_REPORT_DEFAULTS, options);
  const { settings, notCompared, cautions } = series;
  const { metrics: ordered, sentences } = sessionsInOrder(series, metrics);
  const level = levelWords(settings.level);
  const count = Math.max(0, ...series.metrics.map(({ sessions }) => sessions.length));
  const panels = ordered.map((metric, i) => {
    const name = labelled(capitalised(metricName(metric.id, metrics)), metric.unit);
    const drawing = sessionsFigure(series, {
      metric: metric.id,
      metrics,
      id: `sessions-${i}`,
      width: 420,
      height: 260,
    });
    const rows = metric.sessions.map((session) => ({ cells: sessionCells(session) }));
    return {
      label: name,
      content:
        figureBlock([drawing], `${name}, session by session against the baseline.`) +
        table(
          `${name}; blank where the baseline is still being gathered`,
          [
            "session",
            "mean",
            "baseline",
            "difference",
            `${level} interval`,
            "smallest detectable change",
            "place",
          ],
          rows,
        ),
    };
  });
  return page({
    title: "Sessions of one runner",
    kind: `${counted(count, "session")} of one runner against their own baseline`,
    heading: "Sessions of one runner",
    answer: sentences.join(" "),
    version: settings.version,
    sections: [
      section("Session by session", chooser("sessions", "Show", panels)),
      section("What lies outside", bulletList(sentences)),
      section("Data quality and cautions", cautionList(cautions, metrics), missingList(notCompared, metrics)),
      section("Methods and settings", factList(sessionsFacts(series))),
      section("The numbers", copySection([{ name: "JSON of the series, to copy", text: writeJson(series) }])),
      healthSection(),
    ],
  });
}
