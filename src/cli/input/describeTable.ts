import { channelOf, type Recording } from "../../recording/index.js";
import {
  type DescribedChannel,
  type DescribedColumn,
  describeRecording,
  type RecordingDescription,
} from "../../report/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { inQuotes, statedOptions } from "../output/statedOptions.js";
import { likelyColumns } from "./likelyColumns.js";
import type { OpenedFile } from "./openFile.js";
import { refuseUnused } from "./refuseUnused.js";
import { NO_STATEMENTS, type Statements, withStatements } from "./statements.js";
import { type Missing, optionName, type StatedTable, stateTable } from "./stateTable.js";
import { tableColumns, type WrittenColumn, type WrittenTable } from "./tableColumns.js";
import { partOf, takenAs } from "./takenAs.js";
import { windowOf } from "./windowOf.js";

/** Names that a sentence lists. */
const MOST_NAMES = 12;

/**
 * Describes a table: its columns as they are written, all that is not stated of them at once, and a command line that
 * states it.
 *
 * @throws GaitKineticsError what no statement puts right: rows that are torn, cells that are no numbers, names in the
 * options that no column has.
 */
export async function describeTable(
  file: OpenedFile,
  own: RecordingOptions,
  reading: ReadingOptions,
): Promise<RecordingDescription> {
  const { table, header, refusal } = await written(file, own, reading);
  const everything = reading.ignore?.includes("*") === true;
  const typed = everything ? { ...reading, ignore: reading.ignore?.filter((name) => name !== "*") } : reading;
  const start = { ...NO_STATEMENTS, header, ...numbered(table, header) };
  const first = await stateTable(file, own, typed, table, start);
  const unknown = first.missing.flatMap(({ kind, column }) => (kind === "name" && column ? [column] : []));
  const stated = everything ? first : await withLikelyColumns(file, own, typed, table, first, unknown);
  const { recording, statements } = stated;
  if (recording !== null) await refuseUnused(file, recording, own, reading);
  const missing = [
    ...(refusal === null ? [] : [refusal]),
    ...stated.missing.filter(({ kind }) => kind !== "name"),
    ...(everything ? [] : first.missing.filter(({ kind }) => kind === "name")),
  ];
  const columns = describedColumns(table.columns, typed, statements);
  const described =
    recording === null ? rawDescription(table, columns) : ofRecording(recording, own, reading, statements);
  return {
    ...described,
    columns,
    toState: sentencesOf(missing),
    commandLine: missing.length === 0 ? null : commandLine(file.path, recording, own, typed, stated, table),
  };
}

/** The table as it is written; where its first row is one of numbers, as one without names. */
async function written(
  file: OpenedFile,
  own: RecordingOptions,
  reading: ReadingOptions,
): Promise<{
  readonly table: WrittenTable;
  readonly header: number | undefined;
  readonly refusal: Missing | null;
}> {
  try {
    return { table: await tableColumns(file, own, reading), header: undefined, refusal: null };
  } catch (caught) {
    if (!isGaitKineticsError(caught) || caught.argument !== "header" || reading.header !== undefined)
      throw caught;
    const table = await tableColumns(file, own, { ...reading, header: 0 });
    return { table, header: 0, refusal: { kind: "rest", column: null, message: caught.message } };
  }
}

/** Of a table without names one column alone can be told: it is the vertical force. */
function numbered(
  { columns }: WrittenTable,
  header: number | undefined,
): Partial<Pick<Statements, "columns" | "units">> {
  return header === 0 && columns.length === 1 ? { columns: { 1: "up" }, units: { 1: "N" } } : {};
}

/** The table once more, with the unknown names read as what they most likely stand for. */
async function withLikelyColumns(
  file: OpenedFile,
  own: RecordingOptions,
  reading: ReadingOptions,
  table: WrittenTable,
  first: StatedTable,
  unknown: readonly WrittenColumn[],
): Promise<StatedTable> {
  const columns = likelyColumns(unknown);
  if (Object.keys(columns).length === 0) return first;
  try {
    return await stateTable(file, own, reading, table, { ...NO_STATEMENTS, columns });
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return first;
  }
}

function describedColumns(
  columns: readonly WrittenColumn[],
  reading: ReadingOptions,
  statements: Statements,
): DescribedColumn[] {
  const { ignore = [], columns: words, header } = withStatements(reading, statements);
  return columns.map((column) => {
    const { name, number } = column;
    const word = takenAs(column, words);
    const isIgnored = ignore.some(
      (one) => one === name || one === String(number) || partOf(one, name) !== null,
    );
    const leftOut = isIgnored || (header === 0 && word === null);
    return { ...column, takenAs: leftOut ? null : word, leftOut };
  });
}

function ofRecording(
  recording: Recording,
  { from, to, firstFoot }: RecordingOptions,
  reading: ReadingOptions,
  { axes, rateMissing }: Statements,
): RecordingDescription {
  const described = describeRecording(rateMissing ? recording : windowOf(recording, { from, to, firstFoot }));
  const framed = reading.axes !== undefined || axes === undefined;
  const { channels, markers } = described;
  return {
    ...described,
    framed,
    channels: framed ? channels : channels.map(withoutDirection),
    ...(rateMissing && {
      duration: null,
      sampleRate: null,
      markers: markers && { ...markers, sampleRate: null },
    }),
  };
}

/** The channel without a direction that was not stated. */
function withoutDirection(channel: DescribedChannel): DescribedChannel {
  return { ...channel, holds: channel.holds?.replace(/ (?:forward|up|right)$/, "") ?? null };
}

/** A table that no statement makes a recording: its columns and nothing else. */
function rawDescription({ rows }: WrittenTable, columns: readonly DescribedColumn[]): RecordingDescription {
  const nothing = { speed: null, surface: null, grade: null, firstFoot: null, footwear: null, markers: null };
  const none = { subject: {}, platforms: [], events: [], toState: [], cautions: [], commandLine: null };
  return {
    ...nothing,
    ...none,
    format: "csv",
    storage: null,
    framed: false,
    lengthUnit: "m",
    duration: null,
    sampleRate: null,
    samples: rows,
    startTime: 0,
    columns,
    channels: [],
  };
}

/** One sentence for all columns of which the same is said. */
function sentencesOf(missing: readonly Missing[]): string[] {
  const of = (kind: Missing["kind"]) => missing.filter((one) => one.kind === kind);
  const joined = (kind: Missing["kind"], said: (names: string) => string): string[] => {
    const found = of(kind);
    return found.length > 1 ? [said(namesOf(found))] : found.map(({ message }) => message);
  };
  return [
    ...of("axes").map(({ message }) => message),
    ...joined(
      "name",
      (names) =>
        `${names} are names that are not known; say which they are with --columns, or leave them out with --ignore`,
    ),
    ...joined(
      "unit",
      (names) => `${names} state no unit; write it into the heading, as "Fz [N]", or state it with --units`,
    ),
    ...of("rate").map(({ message }) => message),
    ...of("rest").map(({ message }) => message),
  ];
}

function namesOf(missing: readonly Missing[]): string {
  const names = missing.map(({ column }) => JSON.stringify(column?.name || String(column?.number)));
  const more = names.length - MOST_NAMES;
  return more <= 0 ? names.join(", ") : `${names.slice(0, MOST_NAMES).join(", ")} and ${more} more`;
}

/** A command line that states what is missing; `null` where no statement does. */
function commandLine(
  path: string,
  recording: Recording | null,
  { rate }: RecordingOptions,
  reading: ReadingOptions,
  { statements, missing }: StatedTable,
  { columns }: WrittenTable,
): string | null {
  const isBeyond = missing.some(({ kind, column }) => kind === "rest" && column !== null);
  if (recording === null || isBeyond) return null;
  const verb = channelOf(recording, "force", "up") === undefined ? "describe" : "analyse";
  const options = statedOptions(
    withStatements(reading, { ...statements, units: gathered(statements, columns) }),
    rate === undefined ? (statements.rateMissing ? "? Hz" : null) : `${rate} Hz`,
  );
  return `gait-kinetics ${verb} ${inQuotes(path)} ${options}`;
}

/** Units by the patterns that stand for columns, where those of one pattern are alike. */
function gathered(
  { units, columns: words }: Statements,
  columns: readonly WrittenColumn[],
): Readonly<Record<string, string>> {
  let rest: Readonly<Record<string, string>> = units;
  const byPattern: Record<string, string> = {};
  for (const pattern of Object.keys(words).filter((name) => name.includes("*"))) {
    const names = columns
      .filter((column) => partOf(pattern, column.name) !== null && !Object.hasOwn(words, column.name))
      .map((column) => optionName(column, columns))
      .filter((name) => name in rest && takenAs({ name, number: 0 }, words) !== null);
    const [one] = names;
    if (one === undefined || names.some((name) => rest[name] !== rest[one])) continue;
    byPattern[pattern] = rest[one] as string;
    rest = Object.fromEntries(Object.entries(rest).filter(([name]) => !names.includes(name)));
  }
  return { ...byPattern, ...rest };
}
