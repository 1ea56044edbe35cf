import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";

/** Writes a section with its heading; nothing where it has no content. */
export function section(heading: string, ...content: readonly string[]): string {
  const inside = content.filter((part) => part !== "");
  return inside.length === 0
    ? ""
    : element("section", {}, element("h2", {}, escapeMarkup(heading)), ...inside);
}
