import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";

/**
 * Writes a text to copy out of the page, folded away.
 *
 * @param name - Plain text: what it is.
 * @param text - As it is to be copied.
 */
export function copyBlock(name: string, text: string): string {
  return element(
    "details",
    { class: "copies" },
    element("summary", {}, escapeMarkup(name)),
    element("button", { type: "button", class: "copy" }, "Copy"),
    element(
      "textarea",
      {
        readonly: "readonly",
        rows: 8,
        cols: 80,
        wrap: "off",
        spellcheck: "false",
        "aria-label": name,
      },
      escapeMarkup(text),
    ),
  );
}
