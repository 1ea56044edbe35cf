import {
  type Channel,
  checkRecording,
  PLAUSIBLE_BOUNDS,
  type Recording,
  type Subject,
} from "../../recording/index.js";
import {
  type Caution,
  type Complete,
  fail,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { lineAt } from "./lines.js";
import { READ_CSV_DEFAULTS, type ReadCsvOptions } from "./options.js";
import { type Column, readColumns } from "./readColumns.js";
import { readComments, type Statements } from "./readComments.js";
import { readTable, type Table } from "./readTable.js";
import { AXIS_NAMES, isKnownName, OWN_NAMES } from "./roleOf.js";
import { timeGrid } from "./timeGrid.js";
import { counted, quoted } from "./words.js";

/**
 * Largest value, in m or N·m, of a column that must be zero and is dropped: the height of the centre of pressure, a
 * free moment about a horizontal axis. Source: judgement of this library, well below what any platform resolves.
 */
export const ZERO_TOLERANCE: number = 0.001;

/**
 * Reads a recording from delimited text: the library's own format, or any table of force columns whose axes and units
 * are stated.
 *
 * The first row that is no comment names the columns, each with its unit in brackets or parentheses:
 * `time [s],forward [N],up [N],right [N],cop_forward [m],cop_right [m],free_moment [N m]`, in any order, any subset
 * that has `up`. Columns named by axis (`Fx`, `COPz`, `Ty`) need `axes`. A column `other:NAME [unit]` is kept as it is;
 * an unknown name is refused until `ignore` or `columns` says what to do with it. The delimiter is found: comma,
 * semicolon or tab. Comment lines begin with `#`; `# mass: 70 kg`, `# height: 1.78 m`, `# speed: 3.3 m/s`,
 * `# surface: belt`, `# grade: 0`, `# first foot: left` and `# sample rate: 1000 Hz` are read, in SI units alone, all
 * others are plain comments. Where an option and a comment differ, the option counts, with a `Caution`.
 *
 * Units: N, m, N·m, s and their multiples in the file; SI in the recording.
 * Limits: a blank cell is a gap (NaN): normal for centre of pressure and free moment, which do not exist in flight, a
 * `Caution` for a force. Times must be even within {@link TIME_TOLERANCE}. Columns of centre of pressure along the
 * vertical are taken only if zero ({@link ZERO_TOLERANCE}), and dropped. Axis directions are never guessed.
 * Source: format of this library; axes as `axisMapping` of the recording states.
 * @param text - The file's text, decoded; a byte order mark and any line ending pass.
 * @param options - {@link READ_CSV_DEFAULTS} where left out.
 * @throws GaitKineticsError `unreadable-file`: empty, ragged, a cell that is no number, an unknown or repeated column;
 * `missing-channel`: no vertical force; `unknown-axes`; `unknown-unit`; `unit-mismatch`; `uneven-time`; `too-short`: one
 * row and no rate; `missing-value`: neither times nor rate; `out-of-range`: an implausible mass, height, speed or grade, a name
 * in `ignore`, `units` or `columns` that no column has, or a word in `columns` that is none of the names above;
 * `conflict`: a unit in `units` other than the header's;
 * `unknown-option`; `wrong-type`; `not-finite`.
 * @example
 * readCsv("# mass: 70 kg\ntime [s],up [N]\n0,0\n0.001,12.5\n0.002,30").sampleRate // 1000
 * readCsv("Fz\n700\n701", { sampleRate: 1000, axes: { z: "up" }, units: { Fz: "N" } }).channels[0]?.direction // "up"
 */
export function readCsv(text: string, options: ReadCsvOptions = {}): Recording {
  const settings = checkedOptions(options);
  if (typeof text !== "string") {
    fail("wrong-type", `text is ${typeof text}; a string is needed (decode bytes with TextDecoder)`, {
      argument: "text",
    });
  }
  const plain = (text.startsWith("\uFEFF") ? text.slice(1) : text).replace(/\r\n?/g, "\n");
  const table = readTable(plain, settings.decimal, (cells, line) => readColumns(cells, line, settings));
  const { statements, cautions } = readComments(table.comments, ({ place }) => lineAt(plain, place));
  const said = overrule(statements, settings);
  const { sampleRate, startTime } = gridOf(table, said.values.sampleRate ?? null);
  const { channels, gaps } = channelsOf(table);
  const { mass, height, speed, surface, grade, firstFoot } = said.values;
  const subject: Subject = {
    ...(mass !== undefined && { mass }),
    ...(height !== undefined && { height }),
  };
  return checkRecording({
    sampleRate,
    startTime,
    channels,
    subject,
    ...(speed !== undefined && { speed }),
    ...(surface !== undefined && { surface }),
    ...(grade !== undefined && { grade }),
    ...(firstFoot !== undefined && { firstFoot }),
    origin: { format: "csv", rows: table.rows },
    cautions: [...table.columns.cautions, ...cautions, ...said.cautions, ...gaps],
  });
}

function checkedOptions(options: ReadCsvOptions): Complete<ReadCsvOptions> {
  const settings = withDefaults(READ_CSV_DEFAULTS, options);
  const { mass, height, speed, grade, sampleRate, surface, firstFoot, decimal } = settings;
  if (mass !== null) requireNumber("mass", mass, PLAUSIBLE_BOUNDS.mass);
  if (height !== null) requireNumber("height", height, PLAUSIBLE_BOUNDS.height);
  if (speed !== null) requireNumber("speed", speed, PLAUSIBLE_BOUNDS.speed);
  if (grade !== null) requireNumber("grade", grade, PLAUSIBLE_BOUNDS.grade);
  if (sampleRate !== null) requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  if (surface !== null) requireOneOf("surface", surface, ["ground", "belt"]);
  if (firstFoot !== null) requireOneOf("firstFoot", firstFoot, ["left", "right"]);
  if (decimal !== null) requireOneOf("decimal", decimal, [".", ","]);
  requireOneOf("forceOn", settings.forceOn, ["runner", "ground"]);
  const isText = (value: unknown): boolean => typeof value === "string";
  if (!Array.isArray(settings.ignore) || !settings.ignore.every(isText)) {
    fail("wrong-type", 'ignore is no list of column names, such as ["Time"]', { argument: "ignore" });
  }
  for (const name of ["units", "columns"] as const) {
    const map: unknown = settings[name];
    if (typeof map !== "object" || map === null || !Object.values(map).every(isText)) {
      const example = name === "units" ? '{ Fx: "N" }' : '{ Fv: "up" }';
      fail("wrong-type", `${name} is no object with a text for each column, such as ${example}`, {
        argument: name,
      });
    }
  }
  for (const [name, word] of Object.entries(settings.columns)) if (!isKnownName(word)) refuseWord(name, word);
  return settings;
}

function refuseWord(name: string, word: string): never {
  const turned =
    word === "down" || word === "backward" || word === "left"
      ? `; a column that points ${word} is named by an axis, as columns: { ${quoted(name)}: "Fz" } with axes: { z: "${word}" }`
      : "";
  fail(
    "out-of-range",
    `columns states ${quoted(name)} as ${quoted(word)}, which this reader does not know; known are ${OWN_NAMES.join(", ")}, with axes stated ${AXIS_NAMES}, and "other:" with a name${turned}`,
    { argument: "columns", values: { column: name, given: word, allowed: OWN_NAMES } },
  );
}

/** Puts what the caller states over what the file states, and says where they differ. */
function overrule(
  statements: Statements,
  settings: Complete<ReadCsvOptions>,
): { readonly values: Statements; readonly cautions: readonly Caution[] } {
  const values: Record<string, number | string> = { ...statements };
  const cautions: Caution[] = [];
  for (const key of ["mass", "height", "speed", "surface", "grade", "firstFoot", "sampleRate"] as const) {
    const stated = settings[key];
    if (stated === null) continue;
    const inFile = statements[key];
    if (inFile !== undefined && inFile !== stated) {
      cautions.push({
        code: "option-over-file",
        message: `the file states ${key} ${inFile}, the option ${stated}; the option was used`,
        where: key,
        values: { file: inFile, option: stated },
      });
    }
    values[key] = stated;
  }
  return { values: values as Statements, cautions };
}

function gridOf(
  { columns, values, lineOf, rows }: Table,
  stated: number | null,
): { readonly sampleRate: number; readonly startTime: number } {
  const k = columns.columns.findIndex(({ role }) => role.kind === "time");
  const column = columns.columns[k];
  if (column === undefined) {
    if (stated !== null) return { sampleRate: stated, startTime: 0 };
    fail(
      "missing-value",
      `the file has ${counted(rows, "row")} and neither a column "time [s]" nor a rate; state sampleRate, in Hz, or write "# sample rate: 1000 Hz" into the file`,
      { argument: "sampleRate" },
    );
  }
  const times = scaled(values[k] as Float64Array, column.factor);
  return timeGrid(times, stated, (row) => `line ${lineOf(row)}, ${column.label}`);
}

function channelsOf({ columns, values, lineOf }: Table): {
  readonly channels: readonly Channel[];
  readonly gaps: readonly Caution[];
} {
  const channels: Channel[] = [];
  const gaps: Caution[] = [];
  for (const [k, column] of columns.columns.entries()) {
    const { name, role, unit, factor } = column;
    const samples = scaled(values[k] as Float64Array, factor);
    switch (role.kind) {
      case "time":
        break;
      case "zero":
        refuseNonZero(samples, column, role.reason, lineOf);
        break;
      case "other":
        channels.push({ name: role.name, quantity: "other", direction: null, unit, samples });
        break;
      case "free-moment":
        channels.push({ name, quantity: role.kind, direction: "up", unit, samples });
        break;
      case "force":
        gaps.push(...gapsOf(samples, column, lineOf));
        channels.push({ name, quantity: role.kind, direction: role.direction, unit, samples });
        break;
      case "centre-of-pressure":
        channels.push({ name, quantity: role.kind, direction: role.direction, unit, samples });
        break;
    }
  }
  return { channels, gaps };
}

/** Brings a column to SI, in place: the array is the reader's own. */
function scaled(samples: Float64Array, factor: number): Float64Array {
  if (factor !== 1) for (let i = 0; i < samples.length; i++) samples[i] = (samples[i] as number) * factor;
  return samples;
}

function refuseNonZero(
  samples: Float64Array,
  { label, name }: Column,
  reason: string,
  lineOf: (row: number) => number,
): void {
  const row = samples.findIndex((sample) => Math.abs(sample) > ZERO_TOLERANCE);
  if (row < 0) return;
  const where = `line ${lineOf(row)}, ${label}`;
  fail(
    "unreadable-file",
    `${where} holds ${samples[row]} in SI units, and must be 0 within ${ZERO_TOLERANCE}: ${reason}; leave the column out with ignore: [${quoted(name)}] if its zero lies elsewhere, and check the axes`,
    { argument: "axes", where, values: { given: samples[row], allowed: ZERO_TOLERANCE } },
  );
}

function gapsOf(samples: Float64Array, { label, name }: Column, lineOf: (row: number) => number): Caution[] {
  let count = 0;
  for (let i = 0; i < samples.length; i++) if (Number.isNaN(samples[i])) count++;
  if (count === 0) return [];
  const line = lineOf(samples.findIndex(Number.isNaN));
  return [
    {
      code: "gap",
      message: `${label} has ${counted(count, "blank cell")} of ${samples.length}, the first in line ${line}; fill them before the force is used`,
      where: name,
      values: { count, line },
    },
  ];
}
