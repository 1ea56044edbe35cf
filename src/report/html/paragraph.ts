import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";

/** Writes a paragraph of plain text. */
export function paragraph(text: string): string {
  return element("p", {}, escapeMarkup(typographic(text)));
}
