import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";

/**
 * Sets drawings side by side, under each other where the screen is narrow, with one caption.
 *
 * @param drawings - SVG; nothing is written where there is none.
 * @param caption - Plain text; none where it is empty.
 * @param layout - `row`: as many beside each other as there are, up to three; `single`: one of its own width.
 */
export function figureBlock(
  drawings: readonly (string | null)[],
  caption: string,
  layout: "row" | "single" = drawings.length > 1 ? "row" : "single",
): string {
  const drawn = drawings.filter((drawing) => drawing !== null);
  if (drawn.length === 0) return "";
  return element(
    "figure",
    {},
    element(
      "div",
      { class: layout },
      ...drawn.map((drawing) => element("div", { class: "drawing" }, drawing)),
    ),
    caption === "" ? "" : element("figcaption", {}, escapeMarkup(typographic(caption))),
  );
}
