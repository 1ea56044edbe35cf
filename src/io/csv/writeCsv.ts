import Papa from "papaparse";
import { checkRecording, type Recording } from "../../recording/index.js";
import { type Complete, fail, withDefaults } from "../../units/index.js";
import { withoutTrail } from "./readComments.js";
import { type WrittenColumn, writtenColumns } from "./writtenColumns.js";

/** A part of a recording that a table of one rate may be unable to hold. */
export type LeftOut = "markers" | "platforms" | "events";

/** What may be lost. */
export interface WriteCsvOptions {
  /** Parts to leave out; a recording with a part that a table cannot hold is refused where it is not named here. */
  readonly leaveOut?: readonly LeftOut[] | undefined;
}

/** Nothing is lost unseen. */
export const WRITE_CSV_DEFAULTS: Complete<WriteCsvOptions> = { leaveOut: [] };

/** Rows that are put together before they join the text. */
const BLOCK = 4096;

/**
 * Writes a recording as the library's own delimited text, which {@link readCsv} reads back to the same numbers.
 *
 * Comment lines state rate, runner and trial; a time column comes first, then forces, centre of pressure and free moment,
 * those of a plate with its name behind an `@`, then, as `other:NAME [unit]`, what else was recorded, and markers, as
 * `marker:NAME:forward [m]`. A gap is a blank cell.
 *
 * Units: SI, as in the recording; numbers in full precision.
 * Limits: a channel's own name is kept for `other` alone. Force platforms as recorded, events, and markers at another rate
 * or of another start than the channels find no place in the table: such a recording is refused until `leaveOut` names what
 * may be lost. Cautions are not written; those about gaps come back on reading.
 * Source: format of this library.
 * @param recording - Checked before it is written; it needs a vertical force or a marker to be read back by default.
 * @param options - {@link WRITE_CSV_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link checkRecording}; `missing-value`: the table cannot hold a part that `leaveOut` does not
 * name; `missing-channel`: nothing is left to write; `out-of-range`: a name, plate, unit or footwear cannot be written so that it
 * comes back (blank, blanks at its ends, line ends, brackets in a unit), an unknown word in `leaveOut`; `unknown-option`;
 * `wrong-type`.
 * @example
 * writeCsv(recording).includes("time [s],forward [N],up [N],right [N]") // true
 */
export function writeCsv(recording: Recording, options: WriteCsvOptions = {}): string {
  const leaveOut = checkedLeaveOut(withDefaults(WRITE_CSV_DEFAULTS, options).leaveOut);
  const { channels, markers, platforms = [], events = [], ...rest } = checkRecording(recording);
  const needed = (what: LeftOut, why: string): void => {
    if (!leaveOut.includes(what)) refuseLoss(what, why);
  };
  if (platforms.length > 0) needed("platforms", "force platforms as recorded, with corners and calibration");
  if (events.length > 0) needed("events", "events");
  const keepsMarkers = markers !== undefined && !leaveOut.includes("markers");
  const clock = channels.length > 0 ? rest : (markers ?? rest);
  if (keepsMarkers && !isOnClock(recording, clock)) {
    needed(
      "markers",
      `markers at ${markers.sampleRate} Hz from ${markers.startTime} s beside channels at ${rest.sampleRate} Hz from ${rest.startTime} s, or of another length`,
    );
  }
  const columns = writtenColumns(channels, keepsMarkers ? markers.markers : []);
  if (columns.length === 0) {
    fail("missing-channel", "nothing is left to write; a channel or a marker is needed", {
      argument: "recording",
    });
  }
  const header = Papa.unparse([["time [s]", ...columns.map(({ heading }) => heading)]]);
  const comments = commentsOf({ ...rest, sampleRate: clock.sampleRate });
  return [...comments, header, "\n", ...rowsOf(columns, clock)].join("");
}

function checkedLeaveOut(leaveOut: readonly LeftOut[]): readonly LeftOut[] {
  const known: readonly string[] = ["markers", "platforms", "events"];
  if (!Array.isArray(leaveOut)) {
    fail("wrong-type", 'leaveOut is no list, such as ["events"]', { argument: "leaveOut" });
  }
  const odd = leaveOut.find((word) => !known.includes(word));
  if (odd !== undefined) {
    fail(
      "out-of-range",
      `leaveOut names ${JSON.stringify(odd) ?? String(odd)}; known are ${known.join(", ")}`,
      {
        argument: "leaveOut",
        values: { given: odd, allowed: known },
      },
    );
  }
  return leaveOut;
}

function refuseLoss(what: LeftOut, why: string): never {
  fail(
    "missing-value",
    `the recording has ${why}, which a table of one rate cannot hold; state leaveOut: ["${what}"] to write it without, or write another format`,
    { argument: "leaveOut", values: { part: what } },
  );
}

function isOnClock(
  { channels, markers }: Recording,
  { sampleRate, startTime }: { readonly sampleRate: number; readonly startTime: number },
): boolean {
  if (markers === undefined) return true;
  const samples = channels[0]?.samples.length;
  const frames = markers.markers[0]?.forward.length;
  return (
    markers.sampleRate === sampleRate &&
    markers.startTime === startTime &&
    (samples === undefined || frames === undefined || samples === frames)
  );
}

function rowsOf(
  columns: readonly WrittenColumn[],
  { sampleRate, startTime }: { readonly sampleRate: number; readonly startTime: number },
): string[] {
  const samples = columns.map((column) => column.samples);
  const rows = samples[0]?.length ?? 0;
  const parts: string[] = [];
  for (let from = 0; from < rows; from += BLOCK) {
    const to = Math.min(rows, from + BLOCK);
    let block = "";
    for (let i = from; i < to; i++) {
      block += startTime + i / sampleRate;
      for (let k = 0; k < samples.length; k++)
        block += `,${cellOf((samples[k] as Float64Array)[i] as number)}`;
      block += "\n";
    }
    parts.push(block);
  }
  return parts;
}

function cellOf(value: number): string {
  return Number.isNaN(value) ? "" : String(value);
}

type Statements = Pick<
  Recording,
  "sampleRate" | "subject" | "speed" | "surface" | "grade" | "firstFoot" | "footwear"
>;

function commentsOf({
  sampleRate,
  subject,
  speed,
  surface,
  grade,
  firstFoot,
  footwear,
}: Statements): string[] {
  if (footwear !== undefined && withoutTrail(footwear) !== footwear) refuseFootwear(footwear);
  const line = (key: string, value: number | string | undefined, unit = ""): string[] =>
    value === undefined ? [] : [`# ${key}: ${value}${unit}\n`];
  return [
    ...line("sample rate", sampleRate, " Hz"),
    ...line("mass", subject.mass, " kg"),
    ...line("height", subject.height, " m"),
    ...line("speed", speed, " m/s"),
    ...line("surface", surface),
    ...line("grade", grade),
    ...line("first foot", firstFoot),
    ...line("footwear", footwear),
  ];
}

function refuseFootwear(footwear: string): never {
  fail(
    "out-of-range",
    `footwear is ${JSON.stringify(footwear)}; in a table it must not end in a comma, a semicolon or a quotation mark, which table programs put behind a line`,
    { argument: "footwear", values: { given: footwear } },
  );
}
