import { HEALTH_CAUTIONS } from "../wording/healthCautions.js";
import { wrap } from "./wrap.js";

/** Sets the health cautions under their heading. */
export function healthLines(): string[] {
  return ["Health", ...HEALTH_CAUTIONS.flatMap((sentence) => wrap(sentence, "- "))];
}
