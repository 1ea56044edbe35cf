import type { AxisMapping } from "../../recording/index.js";
import { type Dimension, fail } from "../../units/index.js";
import { isNamed, PATTERN_SIGN } from "./columnNames.js";
import type { Column } from "./columns.js";
import type { CsvSettings } from "./options.js";
import { AXIS_NAMES, OWN_NAMES } from "./roleOf.js";
import { splitUnit } from "./splitUnit.js";
import { unitOrNull } from "./unitOrNull.js";
import { listed, plainName, quoted } from "./words.js";

/** Refuses a first row of numbers: it names nothing. */
export function refuseNumbers(names: readonly string[], line: number): void {
  if (!names.every((name) => name === "" || Number.isFinite(Number(name)))) return;
  fail(
    "unreadable-file",
    `line ${line} holds ${quoted(names.join(" "))}; the first row must name the columns, with units, such as "time [s],forward [N],up [N],right [N]"; where the file has no such row state header: 0 and its columns by number, as columns: { "1": "up" }`,
    { argument: "header", where: `line ${line}` },
  );
}

/** Refuses the line that tells a table program what divides the cells: it names nothing. */
export function refuseDelimiterLine([first = "", ...others]: readonly string[], line: number): void {
  if (!/^sep=.?(?:$|\s)/i.test(first) || others.some((name) => name !== "" && !name.startsWith("sep=")))
    return;
  const where = `line ${line}`;
  fail(
    "unreadable-file",
    `${where} holds ${quoted(first)}, a table program's note of what divides the cells, and no names; leave it out with skip: ${line}`,
    { argument: "skip", where },
  );
}

/** Refuses a table without vertical force, and says where it is among the columns left out. */
export function refuseWithoutVertical(
  named: readonly string[],
  line: number,
  mapping: AxisMapping | null,
  settings: CsvSettings,
): never {
  const axis = (["x", "y", "z"] as const).find((name) => mapping?.[name]?.direction === "up");
  const vertical = ["up", `f${axis}`, `f_${axis}`, `force${axis}`, `force_${axis}`];
  const ignored = (text: string, index: number) =>
    settings.ignore.some((name) => name !== PATTERN_SIGN && isNamed(name, text, index + 1));
  const index = named.findIndex(
    (text, k) => ignored(text, k) && vertical.includes(plainName(splitUnit(text)[0])),
  );
  if (index >= 0) {
    const where = `line ${line}, column ${index + 1} ${quoted(named[index] as string)}`;
    fail(
      "missing-channel",
      `${where} holds the vertical force, which is needed, and is left out by ignore: [${listed(settings.ignore)}]`,
      { argument: "ignore", where },
    );
  }
  const what =
    settings.header === 0
      ? `no column is stated as vertical force; state one by its number, as columns: { "1": "up" }`
      : `line ${line} names no column of vertical force, it names ${listed(named)}; a column "up [N]" is needed, or one named by an axis that points up or down`;
  const rest =
    settings.verticalForce === "needed" ? ', or verticalForce: "optional" for a table of other things' : "";
  fail("missing-channel", `${what}${rest}`, {
    where: `line ${line}`,
    values: { given: named.slice(0, 100) },
  });
}

/** Refuses a column that measures something and has no unit. */
export function refuseWithoutUnit(name: string, dimension: Dimension, where: string): never {
  const unit = usualUnit(dimension);
  const rest =
    dimension === "time"
      ? `, or leave it out with ignore: [${quoted(name)}] and state sampleRate; where it counts samples, columns: { ${quoted(name)}: "sample" }`
      : "";
  fail(
    "unknown-unit",
    `${where} states no unit; write it into the header, as ${quoted(`${name} [${unit}]`)}, or state it as units: { ${quoted(name)}: "${unit}" }${rest}`,
    { argument: "units", where, values: { column: name } },
  );
}

/** Refuses a name that stands for nothing; `unit`, where one is known, tells what it may stand for. */
export function refuseUnknown(
  name: string,
  unit: string,
  number: number,
  line: number,
  where: string,
): never {
  if (name === "") {
    fail(
      "unreadable-file",
      `${where} has no name; where the names stand further down, state skip: ${line}, or leave the column out with ignore: ["${number}"], or say which it is with columns: { "${number}": "up" }`,
      { argument: "columns", where, values: { given: name } },
    );
  }
  fail(
    "unreadable-file",
    `${where} is no name this reader knows; known are ${OWN_NAMES.join(", ")}, and with axes stated ${AXIS_NAMES}: leave it out with ignore: [${quoted(name)}], or say which it is with columns: { ${quoted(name)}: ${quoted(likelyName(name, unit))} }`,
    { argument: "columns", where, values: { given: name } },
  );
}

/** What a name most likely stands for, as an example of how to say it. */
function likelyName(name: string, unit: string): string {
  const plain = `_${plainName(name)}_`;
  const dimension = unitOrNull(unit)?.dimension;
  const [, base, axis] = /^(.*[^\s_.-])[\s_.-]*([xyz])$/i.exec(name) ?? [];
  if (/time|_t_|stamp/.test(plain)) return "time";
  if (/_(frame|sample|index|row)s?_/.test(plain)) return "sample";
  const across = /right|left|later|medi|_ml_/.test(plain);
  const along = /forward|fore|anter|poster|brak|_ap_/.test(plain);
  if (/cop|pressure/.test(plain)) return across ? "cop_right" : "cop_forward";
  const turns = dimension === "moment" || /moment|torque|_m_?[xyz]\d*_/.test(plain);
  if (turns) return /free/.test(plain) || !/[xyz]\d*_$/.test(plain) ? "free_moment" : `other:${name}`;
  if (dimension === "length" && axis !== undefined) return `marker:${base}:${axis.toLowerCase()}`;
  if (unit !== "" && dimension !== "force") return `other:${name}`;
  if (along) return "forward";
  return across ? "right" : "up";
}

/** A unit of a dimension, for examples. */
export function usualUnit(dimension: Dimension): string {
  const units: Partial<Record<Dimension, string>> = { time: "s", length: "m", moment: "N m" };
  return units[dimension] ?? "N";
}

/** Refuses two columns of one meaning. */
export function refuseDuplicates(columns: readonly Column[], line: number): void {
  const seen = new Map<string, Column>();
  for (const column of columns) {
    if (column.role.kind === "zero") continue;
    const { kind, ...rest } = column.role;
    const key = JSON.stringify([kind, ...Object.entries(rest).sort()]);
    const same = seen.get(key);
    if (same !== undefined) {
      const what = [kind, ...Object.values(rest)].join(" ");
      fail(
        "unreadable-file",
        `line ${line}, ${column.label} holds ${what}, as ${same.label} does; each may stand once: leave one out with ignore`,
        { argument: "ignore", where: `line ${line}, ${column.label}` },
      );
    }
    seen.set(key, column);
  }
}
