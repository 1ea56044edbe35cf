import Papa from "papaparse";
import { fail } from "../units/index.js";
import { significant } from "./significant.js";

/** What a cell may hold; `null` is written as an empty cell. */
export type Cell = string | number | boolean | null;

/** First characters by which a table program takes a text for a formula; the wide ones count in East Asian versions. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/**
 * Writes rows as comma separated text with a header, as RFC 4180 quotes it, lines ending in `\n`. Text that a table
 * program would take for a formula ({@link FORMULA}) gets an apostrophe in front; numbers do not.
 * Truth is written as `TRUE` and `FALSE`, which R reads too; it takes `true` for a text.
 */
export function rowsToCsv(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const cells = rows.map((row, index) =>
    row.map((cell, column) => {
      if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
      return typeof cell === "number" ? rounded(cell, index, header[column]) : cell;
    }),
  );
  return `${Papa.unparse([[...header], ...cells], { newline: "\n", escapeFormulae: FORMULA })}\n`;
}

function rounded(value: number, index: number, column: string | undefined): number {
  if (!Number.isFinite(value)) {
    fail(
      "not-finite",
      `row ${index + 1}, column "${column}" is ${value}; a result is a finite number or null`,
      {
        where: `row ${index + 1}, ${column}`,
      },
    );
  }
  return significant(value);
}
