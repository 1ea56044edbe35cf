import { fail } from "../../units/index.js";
import { pointWatch } from "./pointWatch.js";
import { quoted } from "./words.js";

/** Reads the cells of one file. */
export interface NumberReader {
  /** Reads a cell of a column, from 0, with its name for messages; NaN where it is blank or a word for a missing value. */
  readonly read: (cell: string, column: number, label: string, line: number) => number;
  /** To be called behind the last cell: refuses a decimal sign that the cells leave open. */
  readonly check: () => void;
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
/** What could be a number with its thousands set apart. */
const THOUSANDS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/**
 * Makes a reader of cells. A decimal comma is taken where a comma does not divide the cells (or where the caller says
 * so), no cell has a decimal point, and at least one cell cannot be thousands: "0,125" and "12,5" are proof, "1,613"
 * is not. A point is a decimal sign, but where it does not divide thousands by all that the file shows: see {@link pointWatch}.
 */
export function numberReader(
  delimiter: string,
  decimal: "." | "," | null,
  missing: readonly string[],
): NumberReader {
  const commaAllowed = decimal === "," || (decimal === null && delimiter !== ",");
  const words = new Set(missing.map((word) => word.trim().toLowerCase()));
  const sentinels = missing.filter((word) => NUMBER.test(word.trim())).map(Number);
  const blank = words.has("");
  // Where a comma divides the cells nobody sets thousands apart by points.
  const watch = commaAllowed && decimal === null ? pointWatch() : null;
  let firstComma = 0;
  let firstPoint = 0;
  let proven = decimal === ",";

  const unlessMissing = (value: number): number => (sentinels.includes(value) ? Number.NaN : value);

  const unusual = (cell: string, column: number, label: string, line: number): number => {
    const trimmed = cell.trim();
    if (words.has(trimmed.toLowerCase())) return Number.NaN;
    const withPoint = commaAllowed ? trimmed.replace(",", ".") : trimmed;
    const value = Number(withPoint);
    if (!NUMBER.test(withPoint) || !Number.isFinite(value))
      refuseWord(cell, label, line, missing, !commaAllowed);
    if (withPoint !== trimmed) {
      if (firstComma === 0) firstComma = line;
      proven ||= !THOUSANDS.test(trimmed);
    } else {
      if (firstPoint === 0 && trimmed.includes(".")) firstPoint = line;
      watch?.take(trimmed, value, column, line);
    }
    return unlessMissing(value);
  };

  return {
    read: (cell, column, label, line) => {
      if (cell === "" && blank) return Number.NaN;
      const value = +cell;
      const first = cell.charCodeAt(0);
      // Blanks, words, infinities and the language's own notations ("0x1F") do not pass here.
      if (value - value !== 0 || !(first >= 43 && first <= 57) || cell.charCodeAt(1) > 57) {
        return unusual(cell, column, label, line);
      }
      if (commaAllowed && firstPoint === 0 && cell.includes(".")) firstPoint = line;
      watch?.take(cell, value, column, line);
      return sentinels.length === 0 ? value : unlessMissing(value);
    },
    check: () => {
      if (firstComma === 0) {
        const suspect = watch?.suspect() ?? 0;
        if (suspect > 0) refusePoint(suspect);
        return;
      }
      const where = `line ${firstComma}`;
      if (firstPoint > 0) {
        fail(
          "unreadable-file",
          `${where} has a comma inside a number and line ${firstPoint} a point; one file writes decimals one way`,
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

function refusePoint(line: number): never {
  const where = `line ${line}`;
  fail(
    "unreadable-file",
    `${where} has a point inside a number that seems to set thousands apart: every number with a point has three digits behind it, and its neighbours without one are far larger, as 613 beside 1.613; write thousands without a point, or state decimal: "." if it stands for decimals`,
    { argument: "decimal", where },
  );
}

function refuseWord(
  cell: string,
  column: string,
  line: number,
  missing: readonly string[],
  commaDivides: boolean,
): never {
  const where = `line ${line}, ${column}`;
  const words = missing.filter((word) => word.trim() !== "").map(quoted);
  const blank = words.length < missing.length ? "nothing" : "";
  const none = [blank, ...words.slice(0, 8)].filter((word) => word !== "").join(", ");
  const gaps =
    none === ""
      ? "; a word for a missing value is stated by missing"
      : `, or ${none} where none was recorded (missing states other words)`;
  const comma =
    commaDivides && NUMBER.test(cell.trim().replace(",", ".")) ? `; a decimal comma? State decimal: ","` : "";
  fail(
    "unreadable-file",
    `${where}: ${quoted(cell)} is no number; a cell holds a finite number${gaps}${comma}`,
    {
      where,
      values: { given: cell.slice(0, 200) },
    },
  );
}
