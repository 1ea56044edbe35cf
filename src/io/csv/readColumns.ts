import { type AxisMapping, axisMapping } from "../../recording/index.js";
import {
  type Caution,
  type Complete,
  type Dimension,
  fail,
  type UnitFactor,
  unitFactor,
} from "../../units/index.js";
import type { ReadCsvOptions } from "./options.js";
import { refuseUnmatchedNames, UNKNOWN_NAMES } from "./refuseUnmatchedNames.js";
import { AXIS_NAMES, type ColumnRole, OWN_NAMES, roleOf } from "./roleOf.js";
import { splitUnit } from "./splitUnit.js";
import { plainName, quoted } from "./words.js";

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
  const named = header.slice(0, width);
  refuseUnmatchedNames(named, line, options);
  const columns = named
    .map((cell, index) => readColumn(cell, index, line, mapping, options, cautions))
    .filter((column) => column !== null);
  refuseDuplicates(columns, line);
  if (!columns.some(({ role }) => role.kind === "force" && role.direction === "up")) {
    refuseIgnoredVertical(named, line, mapping, options);
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
  if (isIgnored(cell, options)) return null;
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
    refuseOtherUnit(name, stated.trim(), unit, where);
    cautions.push({
      code: "option-over-file",
      message: `the brackets of ${label} hold ${quoted(stated.trim())}, which is no known unit; the unit of the option, ${quoted(unit)}, was used`,
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

function isIgnored(cell: string, { ignore }: Complete<ReadCsvOptions>): boolean {
  const text = cell.trim();
  return ignore.includes(text) || ignore.includes(splitUnit(text)[0]);
}

/** A heading's unit is the file's own statement; an option may repeat it. Brackets may hold other words. */
function refuseOtherUnit(name: string, stated: string, given: string, where: string): void {
  const [inFile, inOption] = [stated, given].map(unitOrNull);
  if (inFile == null) return;
  if (inFile.dimension === inOption?.dimension && inFile.toSi === inOption.toSi) return;
  fail(
    "conflict",
    `${where} states ${quoted(stated)} in its heading, and the option another unit, as units: { ${quoted(name)}: ${quoted(given)} }; leave the option out, or correct the heading if it is wrong`,
    { argument: "units", where, values: { file: stated, option: given } },
  );
}

function unitOrNull(name: string): UnitFactor | null {
  try {
    return unitFactor(name);
  } catch {
    return null;
  }
}

function refuseIgnoredVertical(
  named: readonly string[],
  line: number,
  mapping: AxisMapping | null,
  options: Complete<ReadCsvOptions>,
): void {
  const axis = (["x", "y", "z"] as const).find((name) => mapping?.[name]?.direction === "up");
  const vertical = ["up", `f${axis}`, `f_${axis}`, `force${axis}`, `force_${axis}`];
  const index = named.findIndex(
    (cell) => isIgnored(cell, options) && vertical.includes(plainName(splitUnit(cell.trim())[0])),
  );
  if (index < 0) return;
  const where = `line ${line}, column ${index + 1} ${quoted((named[index] as string).trim())}`;
  fail(
    "missing-channel",
    `${where} holds the vertical force, which is needed, and is left out by ignore: [${options.ignore.map(quoted).join(", ")}]`,
    { argument: "ignore", where },
  );
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

function refuseUnknown(name: string, where: string): never {
  fail(
    "unreadable-file",
    `${where} is no name this reader knows; known are ${OWN_NAMES.join(", ")}, and with axes stated ${AXIS_NAMES}: leave it out with ignore: [${quoted(name)}], or say which it is with columns: { ${quoted(name)}: "${likelyName(name)}" }`,
    { argument: "columns", where, values: { given: name } },
  );
}

/** What a name most likely stands for, as an example of how to say it. */
function likelyName(name: string): string {
  const plain = `_${plainName(name)}_`;
  if (/time|_t_|stamp/.test(plain)) return "time";
  const across = /right|left|later|medi|_ml_/.test(plain);
  const along = /forward|fore|anter|poster|brak|_ap_/.test(plain);
  if (/cop|pressure/.test(plain)) return across ? "cop_right" : "cop_forward";
  if (/moment|torque/.test(plain)) return "free_moment";
  if (along) return "forward";
  return across ? "right" : "up";
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
