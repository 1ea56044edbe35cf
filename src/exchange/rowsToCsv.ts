import Papa from "papaparse";
import { fail } from "../units/index.js";

/** What a cell may hold; `null` is written as an empty cell. */
export type Cell = string | number | boolean | null;

/** Significant digits of a number in an exchange file: engines agree to fewer than the 17 that a number has. */
const SIGNIFICANT_DIGITS = 12;

/**
 * Writes rows as comma separated text with a header, lines ending in `\n`. Text that a table program would take for a
 * formula (`=`, `+`, `-`, `@` first) gets an apostrophe in front; numbers do not.
 */
export function rowsToCsv(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const cells = rows.map((row, index) =>
    row.map((cell, column) => (typeof cell === "number" ? rounded(cell, index, header[column]) : cell)),
  );
  return `${Papa.unparse([[...header], ...cells], { newline: "\n", escapeFormulae: true })}\n`;
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
  return Number(value.toPrecision(SIGNIFICANT_DIGITS));
}
