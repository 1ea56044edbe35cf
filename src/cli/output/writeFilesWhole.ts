import { renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { fail } from "../../units/index.js";
import { openFailure } from "../input/openFailure.js";

/** A file to be written. */
export interface FileToWrite {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes files whole or not at all: each to a temporary name beside its own, which it takes once all are written.
 *
 * @throws GaitKineticsError `out-of-range`: a path is no place for a file.
 */
export function writeFilesWhole(files: readonly FileToWrite[]): void {
  const temporary = (path: string): string => `${path}.${process.pid}.part`;
  let at = "";
  try {
    for (const { path, content } of files) {
      at = path;
      refuseOtherThanFiles(path);
      writeFileSync(temporary(path), content, { flag: "wx" });
    }
    for (const { path } of files) {
      at = path;
      renameSync(temporary(path), path);
    }
  } catch (caught) {
    for (const { path } of files) remove(temporary(path));
    fail("out-of-range", `${at}: cannot be written: ${openFailure(caught)}`, { where: at });
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
