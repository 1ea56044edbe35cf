import { fail } from "../../units/index.js";
import { counted } from "./words.js";

/**
 * Refuses a row of too few cells, or with a cell that is not blank behind the last named column. Where commas divide the
 * cells and there are more than names, each of them a whole number, they may be decimal commas.
 */
export function refuseWidth(
  cells: readonly string[],
  width: number,
  line: number,
  delimiter: string | null,
): void {
  if (cells.length >= width && cells.slice(width).every((cell) => cell.trim() === "")) return;
  const where = `line ${line}`;
  const decimals =
    delimiter === "," && cells.length > width && cells.every((cell) => /^\s*[+-]?\d*\s*$/.test(cell));
  const hint = !decimals
    ? ""
    : width === 1
      ? `; a decimal comma? State decimal: "," and delimiter: ";"`
      : `; decimal commas? Write the numbers with a point, or divide the cells by semicolons and state decimal: "," and delimiter: ";"`;
  fail(
    "unreadable-file",
    `${where} has ${counted(cells.length, "cell")} and the header names ${counted(width, "column")}; every row must have one cell for each${hint}`,
    { where, values: { given: cells.length, allowed: width } },
  );
}

/** Refuses a blank line that numbers follow. */
export function refuseBlankLine(line: number): never {
  const where = `line ${line}`;
  fail(
    "unreadable-file",
    `${where} is blank and numbers follow it; a sample may be missing there: take the line out, or give it a row of its own`,
    { where },
  );
}

/** Refuses a row whose quotation marks do not close. */
export function refuseQuotes(line: number): never {
  const where = `line ${line}`;
  fail(
    "unreadable-file",
    `${where} has a quotation mark that opens a cell and does not close it; inside a quoted cell it is written twice`,
    { where },
  );
}

/** Refuses a row that does not end. */
export function refuseLongRow(line: number, hasQuotes: boolean): never {
  const where = `line ${line}`;
  const cause = hasQuotes
    ? "a quotation mark in it may open a cell and never close it"
    : "the file may lack ends of lines, or be no table of text";
  fail("unreadable-file", `${where} begins a row of more than a million characters; ${cause}`, { where });
}

/** Refuses characters that no text holds. */
export function refuseNul(line: number): never {
  const where = `line ${line}`;
  fail(
    "unreadable-file",
    `${where} holds a NUL character, which no text has; the file may be binary, or UTF-16 without a byte order mark: save it as UTF-8`,
    { where },
  );
}
