import type { Metric } from "../../metrics/index.js";
import type { Caution } from "../../units/index.js";
import { cautionSentence } from "../wording/cautionSentence.js";
import { metricName } from "../wording/metricName.js";
import { bulletList } from "./bulletList.js";
import { paragraph } from "./paragraph.js";

/** Lists cautions in words, or says that there is none. */
export function cautionList(cautions: readonly Caution[], metrics: readonly Metric[]): string {
  if (cautions.length === 0) return paragraph("No caution was raised.");
  return bulletList(cautions.map((caution) => cautionSentence(caution, (id) => metricName(id, metrics))));
}
