import type { Caution } from "../../units/index.js";
import { capitalised } from "./capitalised.js";

/** Places that the sentence of a caution speaks of anyway. */
const DIRECTIONS: readonly string[] = ["forward", "up", "right"];

/**
 * Says a caution in one sentence, with the place in front where the sentence does not name it.
 *
 * @param caution - As a result carries it.
 * @param nameOf - Gives a metric's name for its id; other words as they are.
 */
export function cautionSentence({ message, where }: Caution, nameOf: (id: string) => string): string {
  const place = (where ?? "")
    .split(", ")
    .filter((part) => part !== "" && !DIRECTIONS.includes(part) && !message.includes(part))
    .map(nameOf)
    .join(", ");
  const sentence = place === "" ? message : `${place}: ${message}`;
  return `${capitalised(sentence)}${/[.!?]$/.test(sentence) ? "" : "."}`;
}
