import { readFileSync } from "node:fs";
import { fail } from "../../units/index.js";
import { openFailure } from "./openFailure.js";

/**
 * Reads a file as text: UTF-8, or UTF-16 where its first bytes say so.
 *
 * @throws GaitKineticsError `unreadable-file`: it cannot be opened, or holds no text.
 */
export function readText(path: string): string {
  const bytes = bytesOf(path);
  const encoding = encodingOf(bytes);
  if (encoding === "utf-8" && bytes.includes(0)) {
    fail("unreadable-file", "it holds bytes that are no text; a text file (CSV, TSV) is needed", {
      where: path,
    });
  }
  return new TextDecoder(encoding).decode(bytes);
}

function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (caught) {
    return fail("unreadable-file", openFailure(caught), { where: path });
  }
}

function encodingOf([first, second]: Uint8Array): "utf-8" | "utf-16le" | "utf-16be" {
  if (first === 0xff && second === 0xfe) return "utf-16le";
  return first === 0xfe && second === 0xff ? "utf-16be" : "utf-8";
}
