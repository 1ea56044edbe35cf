import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";

/** One row: the first cell heads it. A row with one cell heads those below it. */
export interface TableRow {
  readonly cells: readonly string[];
  readonly primary?: boolean;
}

/**
 * Writes a table. On a narrow screen each row becomes a block of labelled lines, so every element carries its role
 * and every cell its label.
 *
 * @param caption - Plain text.
 * @param headings - Plain text; the first stands over the row heads.
 * @param rows - Plain text.
 */
export function table(caption: string, headings: readonly string[], rows: readonly TableRow[]): string {
  if (rows.length === 0) return "";
  const head = headings.map((heading) =>
    element("th", { scope: "col", role: "columnheader" }, escapeMarkup(typographic(heading))),
  );
  return element(
    "table",
    { role: "table", class: rows.length > SHORT ? undefined : "short" },
    element("caption", {}, escapeMarkup(caption)),
    element("thead", { role: "rowgroup" }, element("tr", { role: "row" }, ...head)),
    element("tbody", { role: "rowgroup" }, ...rows.map((row) => tableRow(row, headings))),
  );
}

/** Rows of a table that paper does not cut in two. */
const SHORT = 12;

function tableRow({ cells, primary }: TableRow, headings: readonly string[]): string {
  const [first = "", ...rest] = cells;
  if (rest.length === 0) {
    const head = element(
      "th",
      { scope: "rowgroup", role: "rowheader", colspan: headings.length },
      escapeMarkup(typographic(first)),
    );
    return element("tr", { role: "row", class: "group" }, head);
  }
  return element(
    "tr",
    { role: "row", class: primary ? "primary" : undefined },
    element("th", { scope: "row", role: "rowheader" }, escapeMarkup(typographic(first))),
    ...rest.map((cell, i) =>
      element(
        "td",
        { role: "cell", "data-label": headings[i + 1] },
        escapeMarkup(typographic(grouped(cell))),
      ),
    ),
  );
}

/** Sets thousands apart where a number has five digits or more. */
function grouped(text: string): string {
  return text.replace(/(?<![.\d])\d{5,}(?![.\d])/g, (digits) => digits.replace(/\B(?=(\d{3})+$)/g, "\u202f"));
}
