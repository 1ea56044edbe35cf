import type { Alternative } from "../../compare/index.js";
import {
  ALTERNATIVES_HEADING,
  ALTERNATIVES_PREFACE,
  alternativeSources,
  alternativeWords,
} from "../wording/alternativeWords.js";
import { wrap } from "./wrap.js";

/** Lists what else could be tried, with what it costs and the sources; nothing where there is nothing. */
export function alternativeLines(alternatives: readonly Alternative[]): string[] {
  if (alternatives.length === 0) return [];
  return [
    ALTERNATIVES_HEADING,
    ...wrap(ALTERNATIVES_PREFACE, "  "),
    ...alternatives
      .map(alternativeWords)
      .flatMap(({ heading, sentence, summary }) => [
        ...wrap(heading, "- "),
        ...wrap(sentence, "  "),
        ...summary.flatMap(({ text }) => wrap(text, "  - ")),
      ]),
    ...wrap(`Sources: ${alternativeSources(alternatives)}.`, "  "),
    "",
  ];
}
