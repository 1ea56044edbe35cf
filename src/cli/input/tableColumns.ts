import type { Recording } from "../../recording/index.js";
import { type DescribedColumn, describeRecording } from "../../report/index.js";
import { fail, isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import type { OpenedFile } from "./openFile.js";
import { readTable } from "./readTable.js";

/** A name that no column has: the refusal of it says what names there are. */
const NO_COLUMN = "\u0000";

/** A column by its numbers alone, before it is told what it is read as. */
export type WrittenColumn = Omit<DescribedColumn, "takenAs" | "leftOut">;

/** A table as it is written. */
export interface WrittenTable {
  readonly columns: readonly WrittenColumn[];
  readonly rows: number;
}

/**
 * Reads the columns of a table as they are written, whatever they mean.
 *
 * @param reading - How its rows and cells are divided; what is stated of columns does not matter.
 * @throws GaitKineticsError as the reader of tables: ragged rows, cells that are no numbers.
 */
export async function tableColumns(
  file: OpenedFile,
  own: RecordingOptions,
  { decimal, delimiter, skip, header, unitRow, missing }: ReadingOptions,
): Promise<WrittenTable> {
  const shape = { decimal, delimiter, skip, header, unitRow, missing };
  const headings = await headingsOf(file, own, shape);
  const recording = await readNumbers(
    file,
    own,
    shape,
    headings.map((_, k) => k + 1),
  );
  const described = describeRecording(recording).channels;
  const columns = headings.map((heading, k) => {
    const found = described.find(({ name }) => name === String(k + 1));
    const { unit = "", least = null, most = null, blank = 0 } = found ?? {};
    const name = header === 0 ? "" : nameOf(heading);
    return { number: k + 1, name, unit, first: firstOf(recording, k + 1), least, most, blank };
  });
  return { columns, rows: recording.channels[0]?.samples.length ?? 0 };
}

/** Reads the numbers of columns; a column that holds words is left out. */
async function readNumbers(
  file: OpenedFile,
  own: RecordingOptions,
  shape: ReadingOptions,
  numbers: readonly number[],
  words: readonly number[] = [],
): Promise<Recording> {
  const columns = Object.fromEntries(numbers.map((number) => [number, `other:${number}`]));
  try {
    const options = { ...shape, columns, ignore: words.map(String) };
    return await readTable(file, { rate: own.rate ?? 1 }, options, "optional");
  } catch (caught) {
    const at = isGaitKineticsError(caught)
      ? /^line \d+, column (\d+)/.exec(caught.where ?? "")?.[1]
      : undefined;
    const number = Number(at);
    if (at === undefined || words.includes(number) || words.length + 1 === numbers.length) throw caught;
    return readNumbers(file, own, shape, numbers, [...words, number]);
  }
}

/** The cells that name columns. */
async function headingsOf(
  file: OpenedFile,
  own: RecordingOptions,
  shape: ReadingOptions,
): Promise<readonly string[]> {
  try {
    await readTable(file, own, { ...shape, ignore: [NO_COLUMN] });
  } catch (caught) {
    if (isGaitKineticsError(caught) && caught.values?.given === NO_COLUMN) {
      return caught.values.allowed as readonly string[];
    }
    throw caught;
  }
  return fail("unreadable-file", "its columns have no names", { argument: "header" });
}

/** A heading without its unit. */
function nameOf(heading: string): string {
  return heading.replace(/\s*(?:\[[^[]*\]|\([^(]*\))$/, "");
}

function firstOf({ channels }: Recording, number: number): number | null {
  const first = channels.find(({ name }) => name === String(number))?.samples[0];
  return first === undefined || Number.isNaN(first) ? null : first;
}
