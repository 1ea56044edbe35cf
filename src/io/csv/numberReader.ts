import { fail } from "../../units/index.js";
import { lineAt } from "./lines.js";
import { quoted } from "./words.js";

/** Reads the cells of one file. */
export interface NumberReader {
  /**
   * Reads a cell; NaN where it is blank.
   * @param start - Place in the text where its row begins.
   */
  readonly read: (cell: string, column: string, start: number) => number;
  /** To be called behind the last cell: refuses a decimal sign that the cells leave open. */
  readonly check: () => void;
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
/** What could be a number with its thousands set apart. */
const THOUSANDS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/**
 * Makes a reader of cells. A decimal comma is taken where a comma does not divide the cells (or where the caller says
 * so), no cell has a decimal point, and at least one cell cannot be thousands: "0,125" and "12,5" are proof, "1,613"
 * is not.
 */
export function numberReader(text: string, delimiter: string, decimal: "." | "," | null): NumberReader {
  const commaAllowed = decimal === "," || (decimal === null && delimiter !== ",");
  let firstComma = -1;
  let firstPoint = -1;
  let proven = decimal === ",";

  const unusual = (cell: string, column: string, start: number): number => {
    const trimmed = cell.trim();
    if (trimmed === "") return Number.NaN;
    const withPoint = commaAllowed ? trimmed.replace(",", ".") : trimmed;
    const value = Number(withPoint);
    if (!NUMBER.test(withPoint) || !Number.isFinite(value)) {
      const where = `line ${lineAt(text, start)}, ${column}`;
      fail(
        "unreadable-file",
        `${where}: ${quoted(cell)} is no number; a cell holds a finite number, or nothing where none was recorded`,
        { where, values: { given: cell } },
      );
    }
    if (withPoint !== trimmed) {
      if (firstComma < 0) firstComma = start;
      proven ||= !THOUSANDS.test(trimmed);
    } else if (firstPoint < 0 && trimmed.includes(".")) firstPoint = start;
    return value;
  };

  return {
    read: (cell, column, start) => {
      if (cell === "") return Number.NaN;
      const value = +cell;
      const first = cell.charCodeAt(0);
      // Blanks, words, infinities and the language's own notations ("0x1F") do not pass here.
      if (value - value !== 0 || first < 43 || first > 57 || cell.charCodeAt(1) > 57) {
        return unusual(cell, column, start);
      }
      if (commaAllowed && firstPoint < 0 && cell.includes(".")) firstPoint = start;
      return value;
    },
    check: () => {
      if (firstComma < 0) return;
      const where = `line ${lineAt(text, firstComma)}`;
      if (firstPoint >= 0) {
        fail(
          "unreadable-file",
          `${where} has a comma inside a number and line ${lineAt(text, firstPoint)} a point; one file writes decimals one way`,
          { argument: "decimal", where },
        );
      }
      if (!proven) {
        fail(
          "unreadable-file",
          `${where} has a comma inside a number, which may stand for decimals or set thousands apart; state decimal: "," or write the numbers with a point`,
          { argument: "decimal", where },
        );
      }
    },
  };
}
