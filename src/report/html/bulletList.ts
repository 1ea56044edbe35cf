import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";

/** Writes sentences as a list of points; nothing where there are none. */
export function bulletList(sentences: readonly string[]): string {
  if (sentences.length === 0) return "";
  return element(
    "ul",
    {},
    ...sentences.map((sentence) => element("li", {}, escapeMarkup(typographic(sentence)))),
  );
}
