import type { Recording } from "../recording/index.js";
import { fail } from "../units/index.js";
import { formatOf } from "./bytes/formatOf.js";
import { READ_C3D_DEFAULTS, type ReadC3dOptions } from "./c3d/options.js";
import { readC3d } from "./c3d/readC3d.js";
import { READ_CSV_DEFAULTS, type ReadCsvOptions } from "./csv/options.js";
import { readCsv } from "./csv/readCsv.js";
import { bytesHint, typeName } from "./typeName.js";

/** What a file does not say of itself, whichever format it has; each format takes its own. */
export interface ReadRecordingOptions extends ReadCsvOptions, ReadC3dOptions {}

/** The names of each format's options. */
const FORMATS: Readonly<Record<"c3d" | "csv", { readonly name: string; readonly defaults: object }>> = {
  c3d: { name: "a C3D file", defaults: READ_C3D_DEFAULTS },
  csv: { name: "a table of text", defaults: READ_CSV_DEFAULTS },
};

/**
 * Reads a recording from a file's bytes, a C3D file or delimited text, told apart by what they hold.
 *
 * Units: as {@link readC3d} and {@link readCsv}.
 * Limits: an option that the format does not take is refused, not ignored. Archives, spreadsheets, images, JSON and other
 * formats are refused by name; Motion-BIDS is several files and has a reader of its own.
 * Source: the C3D standard's header (c3d.org): byte 2 is 0x50, reserved words are zero; what else must hold `readC3d` checks.
 * @param bytes - The whole file.
 * @param options - Those of the format found; the formats' defaults where left out.
 * @throws GaitKineticsError as the format's reader; `unreadable-file`: a format that is not read; `unknown-option`: an option
 * of the other format, or of none; `wrong-type`.
 * @example
 * readRecording(Uint8Array.from("up [N]\n700\n701", (letter) => letter.charCodeAt(0)), { sampleRate: 1000 }).origin.format // "csv"
 */
export function readRecording(bytes: Uint8Array, options: ReadRecordingOptions = {}): Recording {
  if (!(bytes instanceof Uint8Array)) {
    const hint = typeof bytes === "string" ? "; readCsv reads a text" : bytesHint(bytes);
    fail("wrong-type", `bytes are ${typeName(bytes)}; a Uint8Array is needed${hint}`, { argument: "bytes" });
  }
  if (typeof options !== "object" || options === null) {
    fail("wrong-type", `options are ${String(options)}; an object is needed`, { argument: "options" });
  }
  const seen = formatOf(bytes);
  switch (seen.kind) {
    case "c3d":
      return readC3d(bytes, onlyOf("c3d", options));
    case "text":
      return readCsv(bytes, onlyOf("csv", options));
    case "foreign":
      return fail(
        "unreadable-file",
        `the file looks like ${seen.name}; a C3D file or a table of text (CSV, TSV) is needed: export or unpack it first`,
        { argument: "bytes", values: { seen: seen.name } },
      );
  }
}

/** The options, where the format takes them all; one that says no more than the default is no statement. */
function onlyOf<O extends object>(format: "c3d" | "csv", options: O): O {
  const { name, defaults } = FORMATS[format];
  const other = FORMATS[format === "c3d" ? "csv" : "c3d"];
  const own: Record<string, unknown> = {};
  const strange: string[] = [];
  for (const [key, value] of Object.entries(options)) {
    if (Object.hasOwn(defaults, key) || !Object.hasOwn(other.defaults, key)) own[key] = value;
    else if (value !== undefined && JSON.stringify(value) !== JSON.stringify(other.defaults[key as never])) {
      strange.push(key);
    }
  }
  if (strange.length > 0) {
    fail(
      "unknown-option",
      `the file is ${name}, and ${strange.join(", ")} ${strange.length === 1 ? "is an option" : "are options"} of ${other.name}; leave ${strange.length === 1 ? "it" : "them"} out`,
      { argument: strange[0], values: { given: strange, allowed: Object.keys(defaults) } },
    );
  }
  return own as O;
}
