import type { SessionMetric, SessionSeries } from "../../compare/index.js";
import { withDefaults } from "../../units/index.js";
import { SERIES_REPORT_DEFAULTS, type SeriesReportOptions } from "../options.js";
import { capitalised } from "../wording/capitalised.js";
import { levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricName } from "../wording/metricName.js";
import { sessionCells } from "../wording/sessionCells.js";
import { sessionsFacts } from "../wording/sessionsFacts.js";
import { sessionsInOrder } from "../wording/sessionsInOrder.js";
import { cautionLines } from "./cautionLines.js";
import { healthLines } from "./healthLines.js";
import { notComputedLines } from "./notComputedLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/**
 * Writes a series of sessions of one runner as text of at most 80 columns: which sessions lie outside, then each metric's
 * sessions against the baseline that stood when they were recorded.
 *
 * Units: as each table says.
 * Limits: `above` and `below` say where the number lies, not whether that is well.
 * Source: layout of this library.
 * @param series - As `compareSessions` gives it.
 * @param options - {@link SERIES_REPORT_DEFAULTS} where left out.
 * @throws GaitKineticsError `unknown-option`.
 * @example
 * typeof sessionsText // "function"
 */
export function sessionsText(series: SessionSeries, options: SeriesReportOptions = {}): string {
  const { metrics } = withDefaults<SeriesReportOptions>(SERIES_REPORT_DEFAULTS, options);
  const { settings, notCompared, cautions } = series;
  const { metrics: ordered, sentences } = sessionsInOrder(series, metrics);
  const nameOf = (id: string) => metricName(id, metrics);
  const lines = [
    ...sentences.flatMap((sentence) => wrap(sentence)),
    "",
    ...ordered.flatMap((metric) => metricLines(metric, levelWords(settings.level), nameOf)),
    ...sessionsFacts(series).flatMap(({ label, text }) => wrap(text, label.padEnd(19))),
    "",
    ...notComputedLines("Not compared", notCompared, nameOf),
    ...cautionLines(cautions, nameOf),
    ...healthLines(),
  ];
  return `${lines.join("\n")}\n`;
}

function metricLines(
  { id, unit, sessions }: SessionMetric,
  level: string,
  nameOf: (id: string) => string,
): string[] {
  const columns: readonly Column[] = [
    { heading: "", width: 20, left: true },
    { heading: "session", width: 8 },
    { heading: "baseline", width: 8 },
    { heading: "differs", width: 8 },
    { heading: `${level} interval`, width: 17 },
    { heading: "SDC", width: 6 },
    { heading: "place", width: 7, left: true },
  ];
  return [
    ...wrap(capitalised(labelled(nameOf(id), unit))),
    ...tableHead(columns),
    ...sessions.flatMap((session) => {
      const [name = "", ...cells] = sessionCells(session);
      return tableRow(columns, [`  ${name}`, ...cells]);
    }),
    ...wrap("SDC: smallest detectable change; no baseline yet where the row is blank."),
    "",
  ];
}
