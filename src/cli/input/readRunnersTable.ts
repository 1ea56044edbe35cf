import { dirname, isAbsolute, join } from "node:path";
import { InvalidArgumentError } from "commander";
import Papa from "papaparse";
import { fail, isGaitKineticsError } from "../../units/index.js";
import { RECORDING_READERS, type RecordingOptions } from "../options/inputOptions.js";
import type { TrialSource } from "./trialSource.js";

/** A row of the table: which recording of which runner is of which condition. */
export interface RunnerRow extends TrialSource {
  readonly runner: string;
  readonly condition: "baseline" | "changed";
}

/** Columns that every table has. */
const NEEDED = ["runner", "condition", "file"] as const;

/** Columns that state something of a recording, in the words of the command line's options. */
const STATING = Object.keys(RECORDING_READERS) as (keyof RecordingOptions)[];

type Column = (typeof NEEDED)[number] | keyof RecordingOptions;

/** A column with the unit of its heading. */
interface Heading {
  readonly column: Column;
  readonly name: string;
  readonly unit: string;
}

/**
 * Reads the table of a study: a row for each recording, with columns runner, condition (baseline or changed) and file,
 * and what the files do not say of themselves; units stand in the cells (`70 kg`) or in the headings (`mass [kg]`).
 *
 * @param text - Of the table: cells parted by commas, semicolons or tabs; lines that begin with # are comments.
 * @param path - Of the table; files are named as seen from its folder.
 * @param stated - What holds for all recordings; a cell counts before it.
 * @throws GaitKineticsError `unreadable-file`: a heading that is not known or lacks, a row with too many or too few
 * cells, a cell that is not what its column holds; `conflict`: stated for all what every row states of its own.
 */
export function readRunnersTable(text: string, path: string, stated: RecordingOptions): readonly RunnerRow[] {
  const { data, errors } = Papa.parse<string[]>(text, { delimitersToGuess: [",", ";", "\t"] });
  const torn = errors.find(({ type }) => type === "Quotes");
  if (torn !== undefined)
    refuse(`line ${(torn.row ?? 0) + 1}`, "a quotation mark is not closed, or stands inside a cell");
  const lines = data
    .map((cells, k) => ({ cells: cells.map((cell) => cell.trim()), where: `line ${k + 1}` }))
    .filter(({ cells }) => cells.some((cell) => cell !== "") && !cells[0]?.startsWith("#"));
  const [head, ...rows] = lines;
  if (head === undefined) refuse("line 1", `the table is empty; ${COLUMNS_NEEDED}`);
  const headings = headingsOf(head.cells, head.where);
  if (rows.length === 0) refuse(head.where, "no row stands under the headings; each recording needs one");
  const read = rows.map(({ cells, where }) => rowOf(cells, where, headings, path, stated));
  refuseTwice(
    read,
    rows.map(({ where }) => where),
  );
  refuseOverruled(
    rows.map(({ cells }) => cells),
    headings,
    stated,
  );
  return read;
}

const COLUMNS_NEEDED = `its first row names the columns: ${NEEDED.join(", ")}, and of ${STATING.map(wordsOf).join(", ")} those that are stated`;

function headingsOf(cells: readonly string[], where: string): readonly Heading[] {
  const headings = cells.map((cell): Heading => {
    const [, name = cell, unit = ""] = /^(.*?)\s*[[(]([^\])]*)[\])]$/.exec(cell) ?? [];
    const letters = name.toLowerCase().replace(/[\s_-]/g, "");
    const column = [...NEEDED, ...STATING].find((one) => one.toLowerCase() === letters);
    if (column === undefined) refuse(where, `"${cell}" is no column of it; ${COLUMNS_NEEDED}`);
    return { column, name: cell, unit };
  });
  const columns = headings.map(({ column }) => column);
  const twice = headings.find(({ column }, k) => columns.indexOf(column) < k);
  if (twice !== undefined) refuse(where, `"${twice.name}" stands twice; each column stands once`);
  const lacking = NEEDED.find((column) => !columns.includes(column));
  if (lacking !== undefined) refuse(where, `there is no column "${lacking}"; ${COLUMNS_NEEDED}`);
  return headings;
}

function rowOf(
  cells: readonly string[],
  where: string,
  headings: readonly Heading[],
  path: string,
  stated: RecordingOptions,
): RunnerRow {
  if (cells.length !== headings.length) {
    refuse(
      where,
      `it has ${cells.length} cells and the headings are ${headings.length}; a cell with a comma in it is put in quotation marks`,
    );
  }
  const cellOf = (column: Column): string => cells[headings.findIndex((one) => one.column === column)] ?? "";
  for (const column of NEEDED) {
    if (cellOf(column) === "") refuse(where, `its cell "${column}" is empty; it is needed`);
  }
  const condition = cellOf("condition").toLowerCase();
  if (condition !== "baseline" && condition !== "changed") {
    refuse(where, `its condition is "${cellOf("condition")}"; it must be baseline or changed`);
  }
  const own = headings.flatMap(({ column, unit }) => {
    const cell = cellOf(column);
    return column in RECORDING_READERS && cell !== ""
      ? [
          [
            column,
            statementOf(column as keyof RecordingOptions, unit === "" ? cell : `${cell} ${unit}`, where),
          ],
        ]
      : [];
  });
  const file = cellOf("file");
  return {
    runner: cellOf("runner"),
    condition,
    path: isAbsolute(file) ? file : join(dirname(path), file),
    own: { ...stated, ...(Object.fromEntries(own) as RecordingOptions) },
  };
}

function statementOf(column: keyof RecordingOptions, text: string, where: string): unknown {
  try {
    return RECORDING_READERS[column](text);
  } catch (caught) {
    if (!(caught instanceof InvalidArgumentError) && !isGaitKineticsError(caught)) throw caught;
    return refuse(where, `its ${wordsOf(column)} is "${text}": ${caught.message.replace(/\.$/, "")}`);
  }
}

function refuseTwice(rows: readonly RunnerRow[], places: readonly string[]): void {
  const keys = rows.map(({ path, own, runner, condition }) =>
    JSON.stringify([runner, condition, path, own.from, own.to]),
  );
  const again = keys.findIndex((key, k) => keys.indexOf(key) < k);
  if (again < 0) return;
  const first = keys.indexOf(keys[again] as string);
  refuse(places[again] as string, `it says the same as ${places[first]}; each recording counts once`);
}

/** What every cell of a column states itself is not stated for all besides. */
function refuseOverruled(
  rows: readonly (readonly string[])[],
  headings: readonly Heading[],
  stated: RecordingOptions,
): void {
  const overruled = headings.find(
    ({ column }, k) =>
      column in RECORDING_READERS &&
      stated[column as keyof RecordingOptions] !== undefined &&
      rows.every((cells) => cells[k] !== ""),
  );
  if (overruled === undefined) return;
  const flag = `--${wordsOf(overruled.column).replaceAll(" ", "-")}`;
  fail(
    "conflict",
    `${flag} is without effect: every row states its own in column "${overruled.name}"; leave the option out`,
    { argument: overruled.column },
  );
}

/** `firstFoot` as two words. */
function wordsOf(column: string): string {
  return column.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function refuse(where: string, what: string): never {
  fail("unreadable-file", `${where}: ${what}`, { where });
}
