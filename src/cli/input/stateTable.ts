import type { Axes, Recording } from "../../recording/index.js";
import { type GaitKineticsError, isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { isTypable } from "./likelyColumns.js";
import { likelyUnit } from "./likelyUnit.js";
import type { OpenedFile } from "./openFile.js";
import { readTable } from "./readTable.js";
import { refusingOptions } from "./refusingOptions.js";
import { type Statements, withStatements } from "./statements.js";
import type { WrittenColumn, WrittenTable } from "./tableColumns.js";
import { takenAs } from "./takenAs.js";

/** A column that lacks a unit, or has a name that is not known; any other sentence. */
export interface Missing {
  readonly kind: "unit" | "name" | "axes" | "rate" | "rest";
  readonly column: WrittenColumn | null;
  readonly message: string;
}

/** A table read with all stated that it does not say. */
export interface StatedTable {
  /** `null` where nothing that could be stated makes it one. */
  readonly recording: Recording | null;
  readonly statements: Statements;
  readonly missing: readonly Missing[];
}

/** A repair of what was refused: what more is stated, and what is said of it. */
type Repair = readonly [more: Partial<Statements>, missing: Missing | null];

/** Right-handed mappings without a change of sign: one of them reads any table whose axes are not stated. */
const AS_STORED: readonly Axes[] = [
  { x: "right", y: "forward", z: "up" },
  { x: "forward", y: "up", z: "right" },
  { x: "up", y: "right", z: "forward" },
];

/** Each refusal names one column or one thing: more are no table that can be stated. */
const MOST_REPAIRS = 9000;

/**
 * Reads a table again and again, each time with what the refusal before asked for, until it is read.
 *
 * @param table - The same, as it is written.
 * @throws GaitKineticsError what no statement puts right, such as a cell that is no number.
 */
export async function stateTable(
  file: OpenedFile,
  own: RecordingOptions,
  reading: ReadingOptions,
  table: WrittenTable,
  start: Statements,
): Promise<StatedTable> {
  const missing: Missing[] = [];
  let statements = start;
  let verticalForce: "needed" | "optional" = "needed";
  for (let round = 0; round < MOST_REPAIRS; round++) {
    const options = withStatements(reading, statements);
    const rate = own.rate ?? (statements.rateMissing ? 1 : undefined);
    try {
      const recording = await refusingOptions(() =>
        readTable(file, { ...own, rate }, options, verticalForce),
      );
      return { recording, statements, missing };
    } catch (caught) {
      if (!isGaitKineticsError(caught)) throw caught;
      if (caught.code === "missing-channel") {
        if (verticalForce === "optional") break;
        missing.push({ kind: "rest", column: null, message: caught.message });
        verticalForce = "optional";
        continue;
      }
      const repair = repairOf(caught, table, reading, statements);
      if (repair === null) throw caught;
      const [more, what] = repair;
      statements = { ...statements, ...more };
      if (what !== null) missing.push(what);
    }
  }
  return { recording: null, statements, missing };
}

function repairOf(
  refusal: GaitKineticsError,
  { columns, rows }: WrittenTable,
  reading: ReadingOptions,
  statements: Statements,
): Repair | null {
  const { code, argument, message, where = "" } = refusal;
  const column = columns[Number(/column (\d+)/.exec(where)?.[1] ?? 0) - 1] ?? null;
  const missing = (kind: Missing["kind"]): Missing => ({ kind, column, message });
  const leftOut = column && { ignore: [...statements.ignore, optionName(column, columns)] };
  if (argument === "axes") return axesRepair(code, missing("axes"), columns, reading, statements);
  if (argument === "sampleRate") {
    if (statements.rateMissing) return null;
    const counter = column && { columns: { ...statements.columns, [optionName(column, columns)]: "sample" } };
    return [{ rateMissing: true, ...counter }, missing("rate")];
  }
  if (column === null || leftOut === null) return null;
  if (code === "unknown-unit") {
    const name = optionName(column, columns);
    if (Object.hasOwn(statements.units, name)) return null;
    const word = takenAs(column, withStatements(reading, statements).columns) ?? column.name;
    if (/^t(?:ime)?$/i.test(word) && countsRows(column, rows)) {
      const counter = { columns: { ...statements.columns, [name]: "sample" } };
      return [{ rateMissing: true, ...counter }, missing("unit")];
    }
    return [
      { units: { ...statements.units, [name]: likelyUnit(word, column, rows) } },
      column.unit === "" ? missing("unit") : { ...missing("rest"), column: null },
    ];
  }
  if (code === "uneven-time") return [{ ...leftOut, rateMissing: true }, missing("rest")];
  if (argument === "columns") return [leftOut, missing("name")];
  // A unit of another quantity, or two columns of one meaning.
  if (code === "unit-mismatch" || argument === "ignore") return [leftOut, missing("rest")];
  return null;
}

/** Whether a time may be a counter: by its ends it rises by 1 from row to row. */
function countsRows({ first, least, most }: WrittenColumn, rows: number): boolean {
  return rows > 1 && first === least && Number.isInteger(first) && (most ?? 0) - (first ?? 0) === rows - 1;
}

/** Axes of the file's own, the one with the largest force up; another where the height is not zero by these. */
function axesRepair(
  code: string,
  missing: Missing,
  columns: readonly WrittenColumn[],
  reading: ReadingOptions,
  { axes }: Statements,
): Repair | null {
  if (reading.axes !== undefined) return null;
  const order = mappings(columns);
  if (axes === undefined) return [{ axes: order[0] }, missing];
  const next = order[order.indexOf(axes) + 1];
  return code === "unreadable-file" && next !== undefined ? [{ axes: next }, null] : null;
}

function mappings(columns: readonly WrittenColumn[]): readonly Axes[] {
  const sizeAlong = (axis: "x" | "y" | "z"): number =>
    Math.max(
      ...columns
        .filter(({ name }) => new RegExp(`^f(?:orce)?_?${axis}(?:@|$)`, "i").test(name))
        .map(({ least, most }) => Math.max(Math.abs(least ?? 0), Math.abs(most ?? 0))),
      0,
    );
  const upright = (mapping: Axes) => (["x", "y", "z"] as const).find((axis) => mapping[axis] === "up") ?? "z";
  return [...AS_STORED].sort((one, two) => sizeAlong(upright(two)) - sizeAlong(upright(one)));
}

/** How an option speaks of a column: by its name, or by its number where that would be torn or is another's too. */
export function optionName({ name, number }: WrittenColumn, columns: readonly WrittenColumn[]): string {
  const shared = columns.some((other) => other.number !== number && other.name === name);
  return isTypable(name) && !shared ? name : String(number);
}
