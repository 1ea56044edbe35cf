import { type AxisMapping, axisMapping } from "../../recording/index.js";
import { type Caution, fail, unitFactor } from "../../units/index.js";
import { isNamed, PATTERN_SIGN, statementOf } from "./columnNames.js";
import type { Column, Columns } from "./columns.js";
import { columnUnit, refuseOption } from "./columnUnit.js";
import type { Heading } from "./heading.js";
import type { CsvSettings } from "./options.js";
import {
  refuseDelimiterLine,
  refuseDuplicates,
  refuseNumbers,
  refuseUnknown,
  refuseWithoutUnit,
  refuseWithoutVertical,
  usualUnit,
} from "./refuseColumns.js";
import { refuseUnmatchedNames } from "./refuseUnmatchedNames.js";
import { type NamedRole, roleOf } from "./roleOf.js";
import { splitUnit } from "./splitUnit.js";
import { counted, quoted } from "./words.js";

/** Columns that are read at most: more are a file that is no recording. Source: judgement of this library. */
const MOST_COLUMNS = 4096;

/** Reads the rows above the numbers: what each column holds, in which unit and along which direction. */
export function readColumns(heading: Heading, settings: CsvSettings): Columns {
  const { names, line } = heading;
  const mapping = settings.axes === null ? null : axisMapping(settings.axes);
  if (settings.header > 0) {
    refuseDelimiterLine(names, line);
    refuseNumbers(names, line);
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
  let width = names.length;
  while (width > 0 && names[width - 1] === "") width--;
  const named = names.slice(0, width);
  refuseUnmatchedNames(named, line, settings);
  const columns: Column[] = [];
  const unitCautions: Caution[] = [];
  for (const [index, text] of named.entries()) {
    const column = readColumn(text, index, heading, mapping, settings, unitCautions);
    if (column !== null) columns.push(column);
    if (columns.length > MOST_COLUMNS) {
      const message = `line ${line} names more than ${MOST_COLUMNS} columns to be read; leave out with ignore what is no part of the recording`;
      fail("out-of-range", message, { argument: "ignore", where: `line ${line}` });
    }
  }
  refuseUselessPattern(unitCautions, columns, named, line, settings);
  refuseDuplicates(columns, line);
  const enough = ({ role }: Column) =>
    role.kind === "marker" || (role.kind === "force" && role.direction === "up");
  if (columns.length === 0 || (settings.verticalForce === "needed" && !columns.some(enough))) {
    refuseWithoutVertical(named, line, mapping, settings);
  }
  return { columns, width, cautions: [...cautions, ...joined(unitCautions)] };
}

function readColumn(
  text: string,
  index: number,
  { line, units, unitLine }: Heading,
  mapping: AxisMapping | null,
  settings: CsvSettings,
  cautions: Caution[],
): Column | null {
  if (isIgnored(text, index, settings)) return null;
  const [name, stated] = splitUnit(text);
  const bare = settings.header === 0;
  const label = bare ? `column ${index + 1}` : `column ${index + 1} ${quoted(text)}`;
  const where = `line ${line}, ${label}`;
  const named = namedRole(text, name, index, where, mapping, settings);
  const row = units?.[index] ?? "";
  const option = statementOf(settings.units, text, index + 1);
  if (named === null) {
    if (bare || settings.ignore.includes(PATTERN_SIGN)) return null;
    refuseUnknown(name, stated.trim() || option?.value || row, index + 1, line, where);
  }
  const { role, dimension, sign } = named;
  const decided = columnUnit({ heading: stated.trim(), row, option, unitLine }, name, label, where);
  cautions.push(...decided.cautions);
  const { unit } = decided;
  const ownUnit = option === null;
  const column = { index, name, label, role, ownUnit };
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
  const turned = settings.forceOn === "ground" && (role.kind === "force" || role.kind === "free-moment");
  return { ...column, unit: si, factor: toSi * sign * (turned ? -1 : 1) };
}

/** By the option's exact name, by the name the file gives, by the option's pattern. */
function namedRole(
  text: string,
  name: string,
  index: number,
  where: string,
  mapping: AxisMapping | null,
  { columns, header }: CsvSettings,
): NamedRole | null {
  const statement = statementOf(columns, text, index + 1);
  if (statement?.exact) return roleOf(statement.value, where, mapping);
  const own = header === 0 ? null : roleOf(name, where, mapping);
  if (own !== null || statement === null) return own;
  return roleOf(
    statement.value.replace(PATTERN_SIGN, () => statement.part),
    where,
    mapping,
  );
}

function isIgnored(text: string, index: number, { ignore }: CsvSettings): boolean {
  return ignore.some((name) => name !== PATTERN_SIGN && isNamed(name, text, index + 1));
}

/** Refuses a pattern of units that every column it means overrules by its heading: it would be ignored unseen. */
function refuseUselessPattern(
  cautions: readonly Caution[],
  columns: readonly Column[],
  named: readonly string[],
  line: number,
  { units }: CsvSettings,
): void {
  const overruled = cautions.filter(({ code }) => code === "heading-over-option");
  for (const { where = "", values } of overruled) {
    const meant = columns.filter(
      ({ index }) => statementOf(units, named[index] as string, index + 1)?.name === values?.pattern,
    );
    if (meant.some(({ name }) => !overruled.some((one) => one.where === name))) continue;
    const label = meant.find(({ name }) => name === where)?.label ?? quoted(where);
    refuseOption(where, String(values?.file), String(values?.option), `line ${line}, ${label}`);
  }
}

/** One caution for all columns of which the same is said. */
function joined(cautions: readonly Caution[]): Caution[] {
  const groups = new Map<string, Caution[]>();
  for (const caution of cautions) {
    const key = JSON.stringify(caution.values);
    groups.set(key, [...(groups.get(key) ?? []), caution]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group as [Caution, ...Caution[]];
    const more = group.length - 1;
    return more === 0
      ? first
      : { ...first, message: `${first.message}; likewise for ${counted(more, "other column")}` };
  });
}
