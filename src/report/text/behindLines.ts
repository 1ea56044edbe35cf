import type { Comparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { behindReading } from "../wording/behindReading.js";
import { capitalised } from "../wording/capitalised.js";
import { levelWords } from "../wording/intervalWords.js";
import { labelled } from "../wording/labelled.js";
import { metricName } from "../wording/metricName.js";
import { speakers } from "../wording/speakers.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

/** Sets what the readings per step rest on; nothing where no component has numbers. */
export function behindLines(comparison: Comparison, metrics: readonly Metric[]): string[] {
  const spoken = speakers(comparison);
  if (spoken.length === 0) return [];
  const level = levelWords(comparison.settings.readingLevel);
  const columns: readonly Column[] = [
    { heading: "Readings rest on", width: 24, left: true },
    { heading: level, width: 14 },
    { heading: "by bootstrap", width: 14 },
    { heading: "SDC", width: 6 },
    { heading: "margin", width: 6 },
    { heading: "no rise", width: 9 },
  ];
  return [
    ...tableHead(columns),
    ...spoken.flatMap(({ metric }) => {
      const words = behindReading(metric);
      return tableRow(columns, [
        `  ${labelled(capitalised(metricName(metric.id, metrics)), metric.unit)}`,
        words.interval,
        words.bootstrap,
        words.smallestDetectableChange,
        words.margin,
        words.noRiseBeyondMargin,
      ]);
    }),
    ...wrap("SDC: smallest detectable change; no rise: none beyond the margin, by the interval."),
    "",
  ];
}
