import { mkdirSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fail } from "../../units/index.js";
import { writeFailure } from "./writeFailure.js";

/**
 * Makes a folder and those above it that are missing, one by one: where a place takes none, the system's own way to make
 * several at once may not end.
 *
 * @throws GaitKineticsError `out-of-range`: it cannot be made.
 */
export function makeFolder(path: string): void {
  try {
    for (const missing of missingFolders(path)) mkdirSync(missing);
  } catch (caught) {
    // The folder above is there, and still takes none.
    const nowhere = (caught as NodeJS.ErrnoException).code === "ENOENT";
    const why = nowhere ? "no folder can be made there" : writeFailure(caught);
    fail("out-of-range", `${path}: cannot be made a folder: ${why}`, { where: path });
  }
}

/** From the uppermost down. */
function missingFolders(path: string): string[] {
  const missing: string[] = [];
  for (let at = resolve(path); ; at = dirname(at)) {
    const there = statSync(at, { throwIfNoEntry: false });
    if (there?.isDirectory()) return missing;
    if (there !== undefined) {
      throw Object.assign(new Error(), { code: missing.length === 0 ? "EEXIST" : "ENOTDIR" });
    }
    missing.unshift(at);
  }
}
