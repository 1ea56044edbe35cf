import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";

/** Sets drawings side by side, under each other where the screen is narrow, with one caption. */
export function figureBlock(drawings: readonly string[], caption: string): string {
  if (drawings.length === 0) return "";
  const drawn = drawings.length === 1 ? drawings.join("") : element("div", { class: "pair" }, ...drawings);
  return element("figure", {}, drawn, element("figcaption", {}, escapeMarkup(caption)));
}
