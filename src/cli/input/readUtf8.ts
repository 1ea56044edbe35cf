import { fail } from "../../units/index.js";
import { openFailure } from "./openFailure.js";
import { readRegularFile } from "./readRegularFile.js";

/**
 * Reads the text of a file in UTF-8.
 *
 * @throws GaitKineticsError `unreadable-file`: there is none, it cannot be opened, or it is not in UTF-8.
 */
export function readUtf8(path: string): string {
  const bytes = opened(path);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return fail("unreadable-file", `${path}: it is no text in UTF-8`, { where: path });
  }
}

function opened(path: string): Uint8Array {
  try {
    return readRegularFile(path);
  } catch (caught) {
    return fail("unreadable-file", `${path}: cannot be opened: ${openFailure(caught)}`, { where: path });
  }
}
