import { type AxisMapping, axisMapping, type Direction } from "../../recording/index.js";
import { type Caution, type Complete, type Dimension, fail, unitFactor } from "../../units/index.js";
import type { ReadCsvOptions } from "./options.js";
import { plainName, quoted } from "./words.js";

/** What becomes of a column. `zero`: it must hold nothing but zeros and is dropped. */
export type ColumnRole =
  | { readonly kind: "time" }
  | { readonly kind: "force"; readonly direction: Direction }
  | { readonly kind: "centre-of-pressure"; readonly direction: "forward" | "right" }
  | { readonly kind: "free-moment" }
  | { readonly kind: "zero"; readonly reason: string }
  | { readonly kind: "other"; readonly name: string };

/** One column that is read. */
export interface Column {
  /** Place in the row, from 0. */
  readonly index: number;
  /** As the file names it, without the unit. */
  readonly name: string;
  /** For messages: its place, from 1, and the cell of the header. */
  readonly label: string;
  readonly role: ColumnRole;
  /** SI unit of what it becomes; as written for `other`. */
  readonly unit: string;
  /** From the cell's number to SI in the library's frame. */
  readonly factor: number;
}

/** The header, read. */
export interface Columns {
  readonly columns: readonly Column[];
  /** Cells of a row that belong to a name; cells behind these must be blank. */
  readonly width: number;
  /** Cells of the header, unnamed ones at its end included. */
  readonly widest: number;
  readonly cautions: readonly Caution[];
}

/** Among the names to ignore it stands for every name this reader does not know. */
const UNKNOWN_NAMES = "*";
const OWN_NAMES = "time, forward, up, right, cop_forward, cop_right, free_moment";
const AXIS_NAMES = "Fx, Fy, Fz, COPx, COPy, COPz, Tx, Ty, Tz";

/** Reads the header row: what each column holds, in which unit and along which direction. */
export function readColumns(
  header: readonly string[],
  line: number,
  options: Complete<ReadCsvOptions>,
): Columns {
  const mapping = options.axes === null ? null : axisMapping(options.axes);
  if (header.every((cell) => cell.trim() === "" || Number.isFinite(Number(cell)))) {
    fail(
      "unreadable-file",
      `line ${line} holds ${quoted(header.join(" "))}; the first row must name the columns, with units, such as "time [s],forward [N],up [N],right [N]"`,
      { where: `line ${line}` },
    );
  }
  const cautions: Caution[] = [];
  if (mapping?.handedness === -1) {
    cautions.push({
      code: "left-handed-axes",
      message:
        "the axes stated for the file are left-handed and were read as such; check them if that is not meant",
      where: "axes",
    });
  }
  let width = header.length;
  while (width > 0 && header[width - 1]?.trim() === "") width--;
  const columns = header
    .slice(0, width)
    .map((cell, index) => readColumn(cell, index, line, mapping, options, cautions))
    .filter((column) => column !== null);
  refuseDuplicates(columns, line);
  if (!columns.some(({ role }) => role.kind === "force" && role.direction === "up")) {
    const names = header.slice(0, 12).map((cell) => quoted(cell.trim()));
    fail(
      "missing-channel",
      `line ${line} names no column of vertical force, it names ${names.join(", ")}${header.length > 12 ? ", …" : ""}; a column "up [N]" is needed, or one named by an axis that points up or down`,
      { where: `line ${line}`, values: { given: header } },
    );
  }
  return { columns, width, widest: header.length, cautions };
}

function readColumn(
  cell: string,
  index: number,
  line: number,
  mapping: AxisMapping | null,
  options: Complete<ReadCsvOptions>,
  cautions: Caution[],
): Column | null {
  const text = cell.trim();
  const [name, stated] = splitUnit(text);
  if (options.ignore.includes(text) || options.ignore.includes(name)) return null;
  const ofOption = (map: Readonly<Record<string, string>>): string | undefined =>
    [text, name].filter((key) => Object.hasOwn(map, key)).map((key) => map[key])[0];
  const label = `column ${index + 1} ${quoted(text)}`;
  const where = `line ${line}, ${label}`;
  const named = roleOf(ofOption(options.columns) ?? name, where, mapping);
  if (named === null) {
    if (options.ignore.includes(UNKNOWN_NAMES)) return null;
    refuseUnknown(name, where);
  }
  const { role, dimension, sign } = named;
  const given = ofOption(options.units);
  const unit = (given ?? stated).trim();
  if (given !== undefined && stated.trim() !== "" && stated.trim() !== unit) {
    cautions.push({
      code: "option-over-file",
      message: `the file states the unit of ${label} as ${quoted(stated.trim())}, the option as ${quoted(unit)}; the option was used`,
      where: name,
      values: { file: stated.trim(), option: unit },
    });
  }
  const column = { index, name, label, role };
  // A column of zeros is one in every unit.
  if (dimension === null || (role.kind === "zero" && unit === "")) return { ...column, unit, factor: 1 };
  if (unit === "") refuseWithoutUnit(name, dimension, where);
  const { dimension: measured, toSi, si } = unitFactor(unit, where);
  if (measured !== dimension) {
    fail(
      "unit-mismatch",
      `${where} is ${measured} in ${quoted(unit)}; a unit of ${dimension} is needed, such as ${usualUnit(dimension)}`,
      { argument: "units", where, values: { given: unit, allowed: dimension } },
    );
  }
  const turned = options.forceOn === "ground" && (role.kind === "force" || role.kind === "free-moment");
  return { ...column, unit: si, factor: toSi * sign * (turned ? -1 : 1) };
}

/** Splits `up [N]` and `up (N)` into name and unit; the unit is empty where none is stated. */
function splitUnit(text: string): readonly [name: string, unit: string] {
  const opening = text.endsWith("]")
    ? text.lastIndexOf("[")
    : text.endsWith(")")
      ? text.lastIndexOf("(")
      : -1;
  return opening < 0 ? [text, ""] : [text.slice(0, opening).trim(), text.slice(opening + 1, -1)];
}

function refuseWithoutUnit(name: string, dimension: Dimension, where: string): never {
  const unit = usualUnit(dimension);
  const rest =
    dimension === "time" ? `, or leave it out with ignore: [${quoted(name)}] and state sampleRate` : "";
  fail(
    "unknown-unit",
    `${where} states no unit; write it into the header, as ${quoted(`${name} [${unit}]`)}, or state it as units: { ${quoted(name)}: "${unit}" }${rest}`,
    { argument: "units", where, values: { column: name } },
  );
}

/** What a name stands for, what it must measure (`null`: anything), and the sign that brings it to the library's frame. */
interface NamedRole {
  readonly role: ColumnRole;
  readonly dimension: Dimension | null;
  readonly sign: 1 | -1;
}

/** The role of a name; `null` where this reader knows none by it. */
function roleOf(name: string, where: string, mapping: AxisMapping | null): NamedRole | null {
  if (/^other:./i.test(name)) {
    return { role: { kind: "other", name: name.slice("other:".length).trim() }, dimension: null, sign: 1 };
  }
  const plain = plainName(name);
  switch (plain) {
    case "time":
    case "t":
      return { role: { kind: "time" }, dimension: "time", sign: 1 };
    case "forward":
    case "up":
    case "right":
      return { role: { kind: "force", direction: plain }, dimension: "force", sign: 1 };
    case "cop_forward":
      return { role: { kind: "centre-of-pressure", direction: "forward" }, dimension: "length", sign: 1 };
    case "cop_right":
      return { role: { kind: "centre-of-pressure", direction: "right" }, dimension: "length", sign: 1 };
    case "free_moment":
      return { role: { kind: "free-moment" }, dimension: "moment", sign: 1 };
  }
  const named = /^(f|force|cop|t)_?([xyz])$/.exec(plain);
  if (named === null) return null;
  return axisRole(named[1] as string, named[2] as "x" | "y" | "z", where, mapping);
}

function refuseUnknown(name: string, where: string): never {
  fail(
    "unreadable-file",
    `${where} is no name this reader knows; known are ${OWN_NAMES}, and with axes stated ${AXIS_NAMES}: leave it out with ignore: [${quoted(name)}], or say which it is with columns: { ${quoted(name)}: "up" }`,
    { argument: "columns", where, values: { given: name } },
  );
}

/** The role of a column named by an axis. */
function axisRole(
  prefix: string,
  axis: "x" | "y" | "z",
  where: string,
  mapping: AxisMapping | null,
): NamedRole {
  const mapped = mapping?.[axis];
  if (mapped === undefined) {
    fail(
      "unknown-axes",
      `${where} is named by axis ${axis}, and where that points is not stated; state it as axes: { x: "right", y: "forward", z: "up" } with the file's own directions (forward, backward, up, down, right, left)`,
      { argument: "axes", where },
    );
  }
  const { direction, sign } = mapped;
  if (prefix === "f" || prefix === "force") {
    return { role: { kind: "force", direction }, dimension: "force", sign };
  }
  if (prefix === "cop") {
    if (direction !== "up")
      return { role: { kind: "centre-of-pressure", direction }, dimension: "length", sign };
    const reason = "the centre of pressure lies on the ground, at height 0";
    return { role: { kind: "zero", reason }, dimension: "length", sign };
  }
  if (direction !== "up") {
    const reason = "a free moment turns about the vertical alone";
    return { role: { kind: "zero", reason }, dimension: "moment", sign };
  }
  const handedness = mapping?.handedness ?? null;
  if (handedness === null) {
    fail(
      "unknown-axes",
      `${where} is a moment, whose sign needs the directions of x, y and z; state all three in axes`,
      { argument: "axes", where },
    );
  }
  return {
    role: { kind: "free-moment" },
    dimension: "moment",
    sign: sign * handedness > 0 ? 1 : -1,
  };
}

function usualUnit(dimension: Dimension): string {
  const units: Partial<Record<Dimension, string>> = { time: "s", length: "m", moment: "N m" };
  return units[dimension] ?? "N";
}

function refuseDuplicates(columns: readonly Column[], line: number): void {
  const keyOf = ({ role }: Column) => (role.kind === "zero" ? null : Object.values(role).join(" "));
  for (const [index, column] of columns.entries()) {
    const key = keyOf(column);
    const same = columns.slice(0, index).find((earlier) => key !== null && keyOf(earlier) === key);
    if (same !== undefined) {
      fail(
        "unreadable-file",
        `line ${line}, ${column.label} holds ${key}, as ${same.label} does; each may stand once: leave one out with ignore`,
        { argument: "ignore", where: `line ${line}, ${column.label}` },
      );
    }
  }
}
