import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";

/** What stands around a drawing. */
export interface SvgFrame {
  /** Prefix of the ids in the drawing: two figures on one page need two. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** What is drawn, in a few words. */
  readonly title: string;
  /** What it shows, for who cannot see it. */
  readonly description: string;
}

/** Writes a drawing as one SVG element with a title and a description that screen readers read. */
export function svgFigure(
  { id, width, height, title, description }: SvgFrame,
  ...content: readonly string[]
): string {
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-description`,
      "font-family": "sans-serif",
      "font-size": 13,
      fill: "currentColor",
      style:
        "font-family: var(--figure-font, system-ui, sans-serif); max-width: var(--figure-width, 100%); height: auto",
    },
    element("title", { id: `${id}-title` }, escapeMarkup(title)),
    element("desc", { id: `${id}-description` }, escapeMarkup(typographic(description))),
    ...content,
  );
}
