import { wrap } from "./wrap.js";

/** Lists sentences under their heading, with an empty line behind; nothing where there are none. */
export function listLines(heading: string, sentences: readonly string[]): string[] {
  if (sentences.length === 0) return [];
  return [...wrap(heading), ...sentences.flatMap((sentence) => wrap(sentence, "- ")), ""];
}
