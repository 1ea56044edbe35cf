import {
  type Channel,
  checkRecording,
  type MarkerSet,
  type Recording,
  type Subject,
} from "../../recording/index.js";
import { type Caution, fail } from "../../units/index.js";
import { shownStatement } from "../shownStatement.js";
import type { Column } from "./columns.js";
import { markersOf } from "./markersOf.js";
import type { CsvSettings } from "./options.js";
import type { Statements } from "./readComments.js";
import { sampleGrid } from "./sampleGrid.js";
import { scaled } from "./scaled.js";
import type { Table } from "./tableReader.js";
import { counted, quoted } from "./words.js";

/**
 * Largest value, in m or N·m, of a column that must be zero and is dropped: the height of the centre of pressure, a
 * free moment about a horizontal axis. Source: judgement of this library, well below what any platform resolves.
 */
export const ZERO_TOLERANCE: number = 0.001;

const STATED = [
  "mass",
  "height",
  "speed",
  "surface",
  "grade",
  "firstFoot",
  "footwear",
  "sampleRate",
] as const;

/** Makes a recording of a table that was read and what the caller states. */
export function recordingOf(table: Table, settings: CsvSettings, before: readonly Caution[]): Recording {
  const said = overrule(table.comments.statements, settings);
  const { sampleRate, startTime, cautions } = sampleGrid(table, said.values.sampleRate ?? null);
  const { channels, gaps } = channelsOf(table);
  const { markers, cautions: markerCautions } = markersOf(table);
  const { mass, height, speed, surface, grade, firstFoot, footwear } = said.values;
  const subject: Subject = {
    ...(mass !== undefined && { mass }),
    ...(height !== undefined && { height }),
  };
  const markerSet: MarkerSet | null = markers.length > 0 ? { sampleRate, startTime, markers } : null;
  const recording: Recording = {
    sampleRate,
    startTime,
    channels,
    ...(markerSet !== null && { markers: markerSet }),
    subject,
    ...(speed !== undefined && { speed }),
    ...(surface !== undefined && { surface }),
    ...(grade !== undefined && { grade }),
    ...(firstFoot !== undefined && { firstFoot }),
    ...(footwear !== undefined && { footwear }),
    origin: { format: "csv", rows: table.rows },
    cautions: [
      ...before,
      ...table.columns.cautions,
      ...table.comments.cautions,
      ...said.cautions,
      ...cautions,
      ...markerCautions,
      ...gaps,
    ],
  };
  return checkRecording(recording);
}

/** Puts what the caller states over what the file states, and says where they differ. */
function overrule(
  statements: Statements,
  settings: CsvSettings,
): { readonly values: Statements; readonly cautions: readonly Caution[] } {
  const values: Record<string, number | string> = { ...statements };
  const cautions: Caution[] = [];
  for (const key of STATED) {
    const stated = settings[key];
    if (stated === null) continue;
    const inFile = statements[key];
    if (inFile !== undefined && inFile !== stated) {
      cautions.push({
        code: "option-over-file",
        message: `the file states ${key} ${shownStatement(key, inFile)}, the option ${shownStatement(key, stated)}; the option was used`,
        where: key,
        values: { file: inFile, option: stated },
      });
    }
    values[key] = stated;
  }
  return { values: values as Statements, cautions };
}

function channelsOf({ columns, values, lineOf }: Table): {
  readonly channels: readonly Channel[];
  readonly gaps: readonly Caution[];
} {
  const channels: Channel[] = [];
  const gaps: Caution[] = [];
  for (const [k, column] of columns.columns.entries()) {
    const { name, role, unit } = column;
    if (role.kind === "time" || role.kind === "sample" || role.kind === "marker") continue;
    const samples = scaled(values[k] as Float64Array, column, lineOf);
    if (role.kind === "zero") {
      refuseNonZero(samples, column, role.reason, lineOf);
      continue;
    }
    if (role.kind === "force") gaps.push(...gapsOf(samples, column, lineOf));
    channels.push({
      name: role.kind === "other" ? role.name : name,
      quantity: role.kind,
      direction: role.kind === "other" ? null : role.kind === "free-moment" ? "up" : role.direction,
      unit,
      samples,
      ...(role.plate !== undefined && { plate: role.plate }),
    });
  }
  return { channels, gaps };
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

function gapsOf(
  samples: Float64Array,
  { label, name, index }: Column,
  lineOf: (row: number) => number,
): Caution[] {
  let count = 0;
  for (let i = 0; i < samples.length; i++) if (Number.isNaN(samples[i])) count++;
  if (count === 0) return [];
  const line = lineOf(samples.findIndex(Number.isNaN));
  return [
    {
      code: "gap",
      message: `${label} has ${counted(count, "blank cell")} of ${samples.length}, the first in line ${line}; fill them before the force is used`,
      where: name,
      values: { count, line, column: index + 1 },
    },
  ];
}
