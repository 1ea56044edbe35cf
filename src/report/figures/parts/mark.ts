import { element } from "../../markup/element.js";
import { escapeMarkup } from "../../markup/escapeMarkup.js";
import { typographic } from "../../markup/typographic.js";

/**
 * Makes a part of a drawing readable: a page's script may show what it says on hover or focus, and without scripts its
 * title does.
 *
 * @param read - What it says, a finished sentence or number.
 * @param content - The shapes.
 */
export function mark(read: string, ...content: readonly string[]): string {
  const text = typographic(read);
  return element(
    "g",
    { class: "mark", "data-read": text },
    element("title", {}, escapeMarkup(text)),
    ...content,
  );
}
