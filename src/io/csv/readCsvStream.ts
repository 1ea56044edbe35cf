import type { Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { textDecoder } from "../bytes/textDecoder.js";
import { typeName } from "../typeName.js";
import { checkOptions } from "./checkOptions.js";
import type { ReadCsvOptions } from "./options.js";
import { recordingOf } from "./recordingOf.js";
import { tableReader } from "./tableReader.js";

/**
 * Reads a recording from the bytes of a delimited text as they come, such as those of a file's stream; gives what
 * {@link readCsv} gives for the whole, however the bytes are cut.
 *
 * Units: as `readCsv`.
 * Limits: of the text, a piece and the row it ends in are held at a time; the numbers grow with the file and must fit in memory.
 * What follows `readCsv` holds, but for the size.
 * @param parts - The file's bytes in turn; a stream of Node or of a browser's file is one.
 * @param options - As for `readCsv`.
 * @throws GaitKineticsError as {@link readCsv}, as a rejected promise. An error of the stream itself is passed on as
 * it is: of a file that is not there, Node's with the code `ENOENT`.
 * @example
 * typeof readCsvStream // "function"
 */
export async function readCsvStream(
  parts: AsyncIterable<Uint8Array>,
  options: ReadCsvOptions = {},
): Promise<Recording> {
  const settings = checkOptions(options);
  if (typeof parts !== "object" || parts === null || !(Symbol.asyncIterator in parts)) {
    fail("wrong-type", "parts are no AsyncIterable of Uint8Array, such as a file's stream", {
      argument: "parts",
    });
  }
  const reader = tableReader(settings);
  const decoder = textDecoder();
  for await (const part of parts) {
    if (!(part instanceof Uint8Array)) {
      fail(
        "wrong-type",
        `a part is ${typeName(part)}; a Uint8Array is needed (set no encoding on the stream)`,
        {
          argument: "parts",
        },
      );
    }
    reader.push(decoder.push(part));
  }
  reader.push(decoder.finish());
  return recordingOf(reader.finish(), settings, decoder.cautions);
}
