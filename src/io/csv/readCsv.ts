import type { Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { textDecoder } from "../bytes/textDecoder.js";
import { bytesHint, typeName } from "../typeName.js";
import { checkOptions } from "./checkOptions.js";
import { READ_CSV_DEFAULTS, type ReadCsvOptions } from "./options.js";
import { recordingOf } from "./recordingOf.js";
import { tableReader } from "./tableReader.js";

/**
 * Bytes, or characters, that are read as one: a text in memory takes several times its size, and ends at half a milliard
 * characters. Source: judgement of this library.
 */
export const LARGEST_TEXT: number = 268_435_456;

/** Bytes that are decoded at a time. */
const PART = 1_048_576;

/**
 * Reads a recording from delimited text: the library's own format, or any table of force or marker columns whose axes
 * and units are stated.
 *
 * The first row that is no comment names the columns, each with its unit in brackets or parentheses:
 * `time [s],forward [N],up [N],right [N],cop_forward [m],cop_right [m],free_moment [N m]`, in any order, any subset
 * that has `up`. Behind an `@` stands the plate, where there are several: `up@left [N]`. Columns named by axis (`Fx`,
 * `COPz`, `Ty`) need `axes`. `marker:NAME:forward [m]` (or `up`, `right`, or an axis) is a marker's way, `sample` a counter
 * of rows; a column `other:NAME [unit]` is kept as it is; an unknown name is refused until `ignore` or `columns` says what
 * to do with it. The delimiter is found: tab, semicolon, comma, bar or blanks. Several rows of names, none, a row of
 * units, lines to skip, words for missing values: see {@link ReadCsvOptions}. Comment lines begin with `#`;
 * `# mass: 70 kg`, `# height: 1.78 m`, `# speed: 3.3 m/s`, `# surface: belt`, `# grade: 0`, `# first foot: left`,
 * `# footwear: road shoe, 250 g` and `# sample rate: 1000 Hz` are read, in SI units alone, all others are plain comments. Where an option and a comment
 * differ, the option counts, with a `Caution`.
 *
 * Units: N, m, N·m, s and their multiples in the file; SI in the recording.
 * Limits: a blank cell is a gap (NaN): normal for centre of pressure, free moment and markers, a `Caution` with line and
 * column for a force. Times must be even within {@link TIME_TOLERANCE}; beside a stated rate they are checked as far as
 * their digits allow. Columns of centre of pressure along the vertical are taken only if zero ({@link ZERO_TOLERANCE}),
 * and dropped. Points that seem to set thousands apart (`1.613` beside `613`, no number with another count of decimals) are
 * refused until `decimal` states what they are; where every number without a point is 0, nothing shows it. A force
 * beyond 100 kN, a length or moment beyond a million m or N m is no recorded one and is refused with its place (judgement of
 * this library). Axis directions are never guessed. Bytes are UTF-8, UTF-16 with a byte order mark, or else Latin-1 with a
 * `Caution`. Up to {@link LARGEST_TEXT} bytes or characters, a row up to 1 048 576 characters.
 * Source: format of this library; axes as `axisMapping` of the recording states.
 * @param text - The file's text or its bytes; a byte order mark and any line ending pass.
 * @param options - {@link READ_CSV_DEFAULTS} where left out.
 * @throws GaitKineticsError `unreadable-file`: empty, ragged, a cell that is no number, an unknown or repeated column;
 * `missing-channel`: no vertical force; `unknown-axes`; `unknown-unit`; `unit-mismatch`; `uneven-time`;
 * `too-short`: one row and no rate; `missing-value`: neither times nor rate, or times that count samples; `out-of-range`:
 * an implausible mass, height, speed or grade, a name in `ignore`, `units` or `columns` that no column has, or a word in
 * `columns` that is none of the names above, a text that is too large; `conflict`: a unit in `units` other than the heading's;
 * `unknown-option`; `wrong-type`; `not-finite`.
 * @example
 * readCsv("# mass: 70 kg\ntime [s],up [N]\n0,0\n0.001,12.5\n0.002,30").sampleRate // 1000
 * readCsv("Fz\n700\n701", { sampleRate: 1000, axes: { z: "up" }, units: { Fz: "N" } }).channels[0]?.direction // "up"
 * readCsv("633.2\n628.5", { sampleRate: 600, header: 0, columns: { 1: "up" }, units: { 1: "N" } }).channels.length // 1
 */
export function readCsv(text: string | Uint8Array, options: ReadCsvOptions = {}): Recording {
  const settings = checkOptions(options);
  const size = typeof text === "string" || text instanceof Uint8Array ? text.length : refuseType(text);
  if (size > LARGEST_TEXT) refuseSize(size, typeof text === "string" ? "characters" : "bytes");
  const reader = tableReader(settings);
  if (typeof text === "string") {
    reader.push(text);
    return recordingOf(reader.finish(), settings, []);
  }
  const decoder = textDecoder();
  for (let from = 0; from < size; from += PART) reader.push(decoder.push(text.subarray(from, from + PART)));
  reader.push(decoder.finish());
  return recordingOf(reader.finish(), settings, decoder.cautions);
}

function refuseType(given: unknown): never {
  fail("wrong-type", `text is ${typeName(given)}; a string or a Uint8Array is needed${bytesHint(given)}`, {
    argument: "text",
  });
}

function refuseSize(size: number, what: string): never {
  fail(
    "out-of-range",
    `text has ${size} ${what}; up to ${LARGEST_TEXT} are read at once: give the file in parts to readCsvStream`,
    { argument: "text", values: { given: size, allowed: LARGEST_TEXT } },
  );
}
