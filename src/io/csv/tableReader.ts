import Papa from "papaparse";
import { fail } from "../../units/index.js";
import type { Column, Columns } from "./columns.js";
import { findDelimiter } from "./findDelimiter.js";
import { type GrowingColumns, growingColumns } from "./growingColumns.js";
import { type HeadingReader, headingReader } from "./headingReader.js";
import { lineMap } from "./lineMap.js";
import { type NumberReader, numberReader } from "./numberReader.js";
import type { CsvSettings, Delimiter } from "./options.js";
import { type CommentReader, commentReader } from "./readComments.js";
import { refuseBlankLine, refuseLongRow, refuseNul, refuseQuotes, refuseWidth } from "./refuseRows.js";
import { textPieces } from "./textPieces.js";

/** The numbers of a table, as written: one array a column, NaN where a cell is blank. */
export interface Table {
  readonly columns: Columns;
  readonly comments: CommentReader;
  readonly rows: number;
  /** One array for each of `columns.columns`. */
  readonly values: readonly Float64Array[];
  /** Line, from 1, of a row of numbers, from 0. */
  readonly lineOf: (row: number) => number;
}

/** Takes a text in parts; the table does not depend on where they were cut. */
export interface TableReader {
  readonly push: (part: string) => void;
  readonly finish: () => Table;
}

/** Characters by which the delimiter is found, and the longest row. Source: judgement of this library. */
const SAMPLE = 65_536;
const LONGEST_ROW = 1_048_576;
const HASH = 35;
const NEWLINE = 10;

/** What the parser hands over for a row, and at the end. */
interface Parsed {
  readonly data: readonly (readonly string[])[];
  readonly errors: readonly { readonly type: string }[];
  readonly meta: { readonly cursor: number };
}

/**
 * Makes a reader of delimited text that keeps no row: numbers go into growing columns, comments and names are read as they
 * come. It never holds more of the text than a piece and the row that the piece ends in.
 */
export function tableReader(settings: CsvSettings): TableReader {
  const comments = commentReader();
  const map = lineMap();
  const heading: HeadingReader = headingReader(settings);
  let columns: Columns | null = null;
  let numbers: NumberReader | null = null;
  let values: GrowingColumns | null = null;
  let delimiter: Delimiter | null = settings.delimiter;
  let buffer = "";
  /** Place in the buffer up to which all is read, and the line, from 1, that begins there. */
  let end = 0;
  let line = 1;
  let rows = 0;
  let blankLine = 0;
  let simple = false;

  /** Takes the comment lines at a place; the last line of a file needs no end. */
  const takeComments = (isLast: boolean): void => {
    while (buffer.charCodeAt(end) === HASH) {
      const newline = buffer.indexOf("\n", end);
      if (newline < 0 && !isLast) return;
      const next = newline < 0 ? buffer.length : newline + 1;
      comments.take(buffer.slice(end + 1, next), line);
      end = next;
      line++;
    }
  };

  const open = (width: number, at: number): Columns => {
    const opened = heading.open(width, at);
    columns = opened;
    numbers = numberReader(delimiter as Delimiter, settings.decimal, settings.missing);
    values = growingColumns(opened.columns.length);
    return opened;
  };

  const takeRow = (raw: readonly string[], at: number): void => {
    const cells = delimiter === " " ? raw.filter((cell) => cell !== "") : raw;
    const [first = ""] = cells;
    if (cells.length <= 1 && first.trim() === "") {
      if (columns !== null && blankLine === 0) blankLine = at;
      return;
    }
    const mark = first.charCodeAt(0);
    // Indented, or put in quotation marks by a table program.
    if ((mark === HASH || mark <= 32) && first.trimStart().startsWith("#")) {
      comments.take(
        cells
          .join(delimiter ?? ",")
          .trimStart()
          .slice(1),
        at,
      );
      return;
    }
    if (columns === null && heading.take(cells, at, delimiter === " ")) return;
    const { columns: read, width } = columns ?? open(cells.length, at);
    if (blankLine > 0) refuseBlankLine(blankLine);
    if (cells.length !== width) refuseWidth(cells, width, at, delimiter);
    map.add(rows, at);
    const arrays = (values as GrowingColumns).withRoom(rows);
    const reader = numbers as NumberReader;
    for (let k = 0; k < read.length; k++) {
      const { index, label } = read[k] as Column;
      (arrays[k] as Float64Array)[rows] = reader.read(cells[index] as string, k, label, at);
    }
    rows++;
  };

  const step = ({ data, errors, meta }: Parsed): void => {
    takeComments(true);
    const start = end;
    const at = line;
    end = meta.cursor;
    if (errors.length > 0 && errors.some(({ type }) => type === "Quotes")) refuseQuotes(at);
    if (end - start > LONGEST_ROW) refuseLongRow(at, buffer.includes('"', start));
    line += simple ? 1 : linesIn(buffer, start, end);
    takeRow(data[0] as readonly string[], at);
  };

  const parse = (isLast: boolean): void => {
    delimiter ??= findDelimiter(buffer.slice(end), isLast, settings);
    buffer = buffer.slice(end);
    end = 0;
    simple = !buffer.includes('"');
    const parser = new Papa.Parser({ delimiter, newline: "\n", comments: "#", step: step as never });
    const { errors } = parser.parse(buffer, 0, !isLast) as Parsed;
    takeComments(isLast);
    // One may be a closing quotation mark and blanks that the piece was cut behind.
    if (errors.length > 1) refuseQuotes(line);
    if (buffer.length - end > LONGEST_ROW) refuseLongRow(line, buffer.includes('"', end));
    buffer = buffer.slice(end);
    end = 0;
  };

  const pieces = textPieces(settings.skip, (piece, skipped, isLast) => {
    line += skipped;
    const nul = piece.indexOf("\0");
    buffer += piece;
    if (nul >= 0) refuseNul(line + linesIn(buffer, end, buffer.length - piece.length + nul));
    if (delimiter === null) {
      takeComments(isLast);
      while (buffer.charCodeAt(end) === NEWLINE) {
        end++;
        line++;
        takeComments(isLast);
      }
      const left = buffer.length - end;
      const inComment = buffer.charCodeAt(end) === HASH && left <= LONGEST_ROW;
      if (!isLast && (left < SAMPLE || inComment)) return;
    }
    parse(isLast);
  });

  return {
    push: pieces.push,
    finish: () => {
      pieces.finish();
      if (columns === null && heading.begun()) open(0, line);
      numbers?.check();
      if (columns === null) {
        fail(
          "unreadable-file",
          "the file is empty; it needs a row that names the columns and rows of numbers below",
        );
      }
      if (rows === 0) {
        fail(
          "unreadable-file",
          "the file has no row of numbers below the names of its columns; it needs at least one",
        );
      }
      return {
        columns,
        comments,
        rows,
        values: (values as unknown as GrowingColumns).cut(rows),
        lineOf: map.lineOf,
      };
    },
  };
}

/** Line ends between two places of a text. */
function linesIn(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf("\n", from); at >= 0 && at < to; at = text.indexOf("\n", at + 1)) count++;
  return count;
}
