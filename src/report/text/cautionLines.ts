import type { Caution } from "../../units/index.js";
import { cautionSentence } from "../wording/cautionSentence.js";
import { wrap } from "./wrap.js";

/** Lists cautions in words under their heading; nothing where there are none. */
export function cautionLines(cautions: readonly Caution[], nameOf: (id: string) => string): string[] {
  if (cautions.length === 0) return [];
  return ["Cautions", ...cautions.flatMap((caution) => wrap(cautionSentence(caution, nameOf), "- ")), ""];
}
