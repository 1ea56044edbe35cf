import { closeSync, createReadStream, openSync, readFileSync, readSync } from "node:fs";
import { LARGEST_TEXT } from "../../io/index.js";
import { fail } from "../../units/index.js";
import { type FileFormat, fileFormat, HEAD_LENGTH } from "./fileFormat.js";
import { openFailure } from "./openFailure.js";
import { requireRegularFile } from "./requireRegularFile.js";

/** A file that was found, and how its bytes are come by. */
export interface OpenedFile {
  readonly path: string;
  readonly format: FileFormat;
  /** Whether a table should be read piece by piece. */
  readonly large: boolean;
  readonly bytes: () => Uint8Array;
  readonly pieces: () => AsyncIterable<Uint8Array>;
}

/**
 * Finds a file and tells its format.
 *
 * @throws GaitKineticsError `unreadable-file`: there is none, it cannot be opened, or it is no regular file.
 */
export function openFile(path: string): OpenedFile {
  return opening(path, () => {
    const size = requireRegularFile(path);
    return {
      path,
      format: fileFormat(path, headOf(path)),
      large: size > LARGEST_TEXT,
      bytes: () => opening(path, () => readFileSync(path)),
      pieces: () => createReadStream(path, { highWaterMark: 2 ** 20 }),
    };
  });
}

function headOf(path: string): Uint8Array {
  const head = new Uint8Array(HEAD_LENGTH);
  const file = openSync(path, "r");
  try {
    return head.subarray(0, readSync(file, head, 0, HEAD_LENGTH, 0));
  } finally {
    closeSync(file);
  }
}

function opening<T>(path: string, step: () => T): T {
  try {
    return step();
  } catch (caught) {
    return fail("unreadable-file", openFailure(caught), { where: path });
  }
}
