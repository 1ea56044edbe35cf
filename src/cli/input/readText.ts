import { readFileSync } from "node:fs";
import { fail } from "../../units/index.js";
import { openFailure } from "./openFailure.js";

/**
 * Reads a file as text: UTF-8, or UTF-16 where its first bytes say so.
 *
 * @throws GaitKineticsError `unreadable-file`.
 */
export function readText(path: string): string {
  try {
    const bytes = readFileSync(path);
    const mark =
      bytes[0] === 0xff && bytes[1] === 0xfe
        ? "utf-16le"
        : bytes[0] === 0xfe && bytes[1] === 0xff
          ? "utf-16be"
          : "utf-8";
    return new TextDecoder(mark).decode(bytes);
  } catch (caught) {
    return fail("unreadable-file", openFailure(caught), { where: path });
  }
}
