import type { Alternative } from "../../../compare/index.js";
import { element } from "../../markup/element.js";
import { escapeMarkup } from "../../markup/escapeMarkup.js";
import { typographic } from "../../markup/typographic.js";
import {
  ALTERNATIVES_HEADING,
  ALTERNATIVES_PREFACE,
  type AlternativeWords,
  alternativeSources,
  alternativeWords,
} from "../../wording/alternativeWords.js";
import { bulletList } from "../bulletList.js";
import { paragraph } from "../paragraph.js";
import { section } from "../section.js";

/** Writes the section of what else could be tried; nothing where there is nothing. */
export function alternativesSection(alternatives: readonly Alternative[]): string {
  if (alternatives.length === 0) return "";
  return section(
    ALTERNATIVES_HEADING,
    paragraph(ALTERNATIVES_PREFACE),
    ...alternatives.map((alternative) => block(alternativeWords(alternative))),
    element("p", { class: "sources" }, plain(`Sources: ${alternativeSources(alternatives)}.`)),
  );
}

/** The findings behind the summary are folded away; on paper the sources stand for them. */
function block({ heading, sentence, summary, findings }: AlternativeWords): string {
  return element(
    "div",
    { class: "alternative" },
    element("h3", {}, plain(heading)),
    paragraph(sentence),
    element("ul", {}, ...summary.map(({ kind, text }) => element("li", { class: kind }, plain(text)))),
    element(
      "details",
      {},
      element("summary", {}, escapeMarkup("What was found of each, and by whom")),
      bulletList(findings),
    ),
  );
}

function plain(text: string): string {
  return escapeMarkup(typographic(text));
}
