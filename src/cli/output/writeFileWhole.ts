import { renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { fail } from "../../units/index.js";
import { openFailure } from "../input/openFailure.js";

/**
 * Writes a file whole or not at all: to a temporary name beside it, which then takes its place.
 *
 * @throws GaitKineticsError `out-of-range`: the path is no place for a file.
 */
export function writeFileWhole(path: string, text: string): void {
  const temporary = `${path}.${process.pid}.part`;
  try {
    refuseOtherThanFiles(path);
    writeFileSync(temporary, text, { flag: "wx" });
    renameSync(temporary, path);
  } catch (caught) {
    remove(temporary);
    fail("out-of-range", `${path}: cannot be written: ${openFailure(caught)}`, { where: path });
  }
}

/** What stopped the writing may stop this too, and is the one to report. */
function remove(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // Nothing was written there, or nothing can be done about it.
  }
}

/** A folder cannot, and a device or pipe must not, be replaced by a file. */
function refuseOtherThanFiles(path: string): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined || there.isFile()) return;
  throw Object.assign(new Error("it is no regular file; a file name is needed"), {
    code: there.isDirectory() ? "EISDIR" : "",
  });
}
