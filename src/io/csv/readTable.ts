import Papa from "papaparse";
import { fail } from "../../units/index.js";
import { lineAt, nextLine } from "./lines.js";
import { type NumberReader, numberReader } from "./numberReader.js";
import type { Column, Columns } from "./readColumns.js";
import type { CommentLine } from "./readComments.js";
import { counted } from "./words.js";

/** The numbers of a table, as written: one array a column, NaN where a cell is blank. */
export interface Table {
  readonly columns: Columns;
  readonly comments: readonly CommentLine[];
  readonly rows: number;
  /** One array for each of `columns.columns`. */
  readonly values: readonly Float64Array[];
  /** Line, from 1, of a row of numbers, from 0. */
  readonly lineOf: (row: number) => number;
}

/** Characters the parser reads at a time: given the text whole, it takes twice the time and memory. */
const PIECE = 1_048_576;
const FIRST_CAPACITY = 4096;
const HASH = 35;

/**
 * Reads a delimited text row by row into one growing array a column; no row outlives its turn.
 *
 * @param text - Without a byte order mark, lines ending in `\n`.
 * @param decimal - The decimal sign, or `null` to find it.
 * @param readHeader - Reads the first row that is no comment.
 */
export function readTable(
  text: string,
  decimal: "." | "," | null,
  readHeader: (cells: readonly string[], line: number) => Columns,
): Table {
  const comments: CommentLine[] = [];
  let columns: Columns | null = null;
  let numbers: NumberReader | null = null;
  let values: Float64Array[] = [];
  let starts = new Float64Array(FIRST_CAPACITY);
  let rows = 0;
  let end = 0;
  let blankLine = -1;

  const takeComments = (from: number): number => {
    let place = from;
    while (text.charCodeAt(place) === HASH) {
      const next = nextLine(text, place);
      comments.push({ place, text: text.slice(place + 1, next) });
      place = next;
    }
    return place;
  };

  const takeRow = (cells: readonly string[], start: number, delimiter: string): void => {
    const [first = ""] = cells;
    if (cells.length === 1 && first.trim() === "") {
      if (columns !== null && blankLine < 0) blankLine = start;
      return;
    }
    // Indented, or put in quotation marks by a table program.
    if (first.trimStart().startsWith("#")) {
      comments.push({ place: start, text: cells.join(delimiter).trimStart().slice(1) });
      return;
    }
    if (columns === null || numbers === null) {
      columns = readHeader(cells, lineAt(text, start));
      numbers = numberReader(text, delimiter, decimal);
      values = columns.columns.map(() => new Float64Array(FIRST_CAPACITY));
      return;
    }
    if (blankLine >= 0) refuseBlankLine(text, blankLine);
    if (cells.length !== columns.width) checkWidth(cells, columns, text, start);
    if (rows === starts.length) {
      values = values.map(doubled);
      starts = doubled(starts);
    }
    starts[rows] = start;
    for (let k = 0; k < values.length; k++) {
      const { index, label } = columns.columns[k] as Column;
      (values[k] as Float64Array)[rows] = numbers.read(cells[index] as string, label, start);
    }
    rows++;
  };

  Papa.parse<string[]>(text, {
    comments: "#",
    newline: "\n",
    delimiter: delimiterOf(text),
    chunkSize: PIECE,
    fastMode: false,
    step: ({ data, errors, meta }) => {
      const start = takeComments(end);
      end = meta.cursor;
      if (errors.some(({ type }) => type === "Quotes")) refuseQuotes(text, start);
      takeRow(data, start, meta.delimiter);
    },
  });
  takeComments(end);
  (numbers as NumberReader | null)?.check();
  return finished(columns, comments, rows, values, (row) => lineAt(text, starts[row] as number));
}

/** The delimiter of the first lines. Blank lines must not count there, and must be seen when the rows are read. */
function delimiterOf(text: string): string {
  const { meta } = Papa.parse<string[]>(text.slice(0, PIECE), {
    comments: "#",
    newline: "\n",
    delimitersToGuess: [",", ";", "\t"],
    skipEmptyLines: "greedy",
    preview: 1,
  });
  return meta.delimiter;
}

function finished(
  columns: Columns | null,
  comments: readonly CommentLine[],
  rows: number,
  values: readonly Float64Array[],
  lineOf: (row: number) => number,
): Table {
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
  return { columns, comments, rows, values: values.map((column) => column.slice(0, rows)), lineOf };
}

function doubled(samples: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * samples.length);
  longer.set(samples);
  return longer;
}

/** Cells behind the last named column may be there or not, and must be blank. */
function checkWidth(cells: readonly string[], { width, widest }: Columns, text: string, start: number): void {
  const rest = cells.slice(width).findIndex((cell) => cell.trim() !== "");
  if (cells.length >= width && cells.length <= widest && rest < 0) return;
  const where = `line ${lineAt(text, start)}`;
  fail(
    "unreadable-file",
    `${where} has ${counted(cells.length, "cell")} and the header names ${counted(width, "column")}; every row must have one cell for each`,
    { where, values: { given: cells.length, allowed: width } },
  );
}

function refuseBlankLine(text: string, place: number): never {
  const where = `line ${lineAt(text, place)}`;
  fail(
    "unreadable-file",
    `${where} is blank and numbers follow it; a sample may be missing there: take the line out, or give it a row of its own`,
    { where },
  );
}

function refuseQuotes(text: string, place: number): never {
  const where = `line ${lineAt(text, place)}`;
  fail(
    "unreadable-file",
    `${where} has a quotation mark that opens a cell and does not close it; inside a quoted cell it is written twice`,
    { where },
  );
}
