import { type Attributes, element } from "../../markup/element.js";
import { escapeMarkup } from "../../markup/escapeMarkup.js";
import { typographic } from "../../markup/typographic.js";

/** Size of the words beside a drawing, px. */
export const SMALL_SIZE = 12;
/** Size of headings, px. */
export const HEADING_SIZE = 13;

/** Writes a line of small text; attributes overrule. */
export function words(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element("text", { x, y, "font-size": SMALL_SIZE, ...attributes }, escapeMarkup(typographic(text)));
}

/** Writes a heading line. */
export function headingWords(x: number, y: number, text: string): string {
  return words(x, y, text, { "font-size": HEADING_SIZE, "font-weight": 600 });
}
