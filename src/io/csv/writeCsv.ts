import Papa from "papaparse";
import { type Channel, checkRecording, type Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { quoted } from "./words.js";

/** Rows that are put together before they join the text. */
const BLOCK = 4096;

/** The columns of the format in their order, by quantity and direction. */
const OWN_COLUMNS: Readonly<Record<string, string>> = {
  "force forward": "forward [N]",
  "force up": "up [N]",
  "force right": "right [N]",
  "centre-of-pressure forward": "cop_forward [m]",
  "centre-of-pressure right": "cop_right [m]",
  "free-moment up": "free_moment [N m]",
};

/**
 * Writes a recording as the library's own delimited text, which {@link readCsv} reads back to the same numbers.
 *
 * Comment lines state rate, runner and trial; a time column comes first, then forces, centre of pressure, free moment
 * and, as `other:NAME [unit]`, what else was recorded. A gap is a blank cell.
 *
 * Units: SI, as in the recording; numbers in full precision.
 * Limits: a channel's own name is kept for `other` alone. Cautions are not written; those about gaps come back on
 * reading.
 * Source: format of this library.
 * @param recording - Checked before it is written; it needs a vertical force to be read back.
 * @throws GaitKineticsError as {@link checkRecording}; `out-of-range`: the name or unit of an `other` channel cannot be
 * written so that it comes back (blank, blanks at its ends, line ends, brackets in a unit).
 * @example
 * writeCsv(recording).includes("time [s],forward [N],up [N],right [N]") // true
 */
export function writeCsv(recording: Recording): string {
  const { sampleRate, startTime, channels } = checkRecording(recording);
  const columns = inOrder(channels);
  const header = Papa.unparse([["time [s]", ...columns.map(headerOf)]]);
  const parts = [...commentsOf(recording), header, "\n"];
  const samples = columns.map((column) => column.samples);
  const rows = samples[0]?.length ?? 0;
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
  return parts.join("");
}

function cellOf(value: number): string {
  if (Number.isNaN(value)) return "";
  return Object.is(value, -0) ? "-0" : String(value);
}

function inOrder(channels: readonly Channel[]): Channel[] {
  const order = Object.keys(OWN_COLUMNS);
  const place = ({ quantity, direction }: Channel) =>
    quantity === "other" ? order.length : order.indexOf(`${quantity} ${direction}`);
  return [...channels].sort((one, two) => place(one) - place(two));
}

function headerOf({ quantity, direction, name, unit }: Channel): string {
  const own = OWN_COLUMNS[`${quantity} ${direction}`];
  if (own !== undefined) return own;
  const whole = (text: string) => text === text.trim() && !/[\r\n]/.test(text);
  if (
    !whole(name) ||
    name === "" ||
    !whole(unit) ||
    /[[\]()]/.test(unit) ||
    (unit === "" && /[\])]$/.test(name))
  ) {
    fail(
      "out-of-range",
      `channel ${quoted(name)} in ${quoted(unit)} cannot be written; a name has no blanks at its ends and no line ends, a unit no brackets`,
      { argument: "channels", where: name, values: { name, unit } },
    );
  }
  return unit === "" ? `other:${name}` : `other:${name} [${unit}]`;
}

function commentsOf({ sampleRate, subject, speed, surface, grade, firstFoot }: Recording): string[] {
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
  ];
}
