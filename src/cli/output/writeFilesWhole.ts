import { closeSync, existsSync, openSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { fail } from "../../units/index.js";
import { writeFailure } from "./writeFailure.js";

/** A file to be written. */
export interface FileToWrite {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes files whole or not at all: each to a temporary name beside its own, which it takes once all are written.
 *
 * @returns Paths of files that were there before and are replaced.
 * @throws GaitKineticsError `out-of-range`: a path is no place for a file, or a file is there that may not be changed.
 */
export function writeFilesWhole(files: readonly FileToWrite[]): readonly string[] {
  const temporary = (path: string): string => `${path}.${process.pid}.part`;
  const replaced = files.map(({ path }) => path).filter((path) => existsSync(path));
  let at = "";
  try {
    for (const { path, content } of files) {
      at = path;
      refuseIrreplaceable(path);
      writeFileSync(temporary(path), content, { flag: "wx" });
    }
    for (const { path } of files) {
      at = path;
      renameSync(temporary(path), path);
    }
  } catch (caught) {
    for (const { path } of files) remove(temporary(path));
    fail("out-of-range", `${at}: cannot be written: ${writeFailure(caught)}`, { where: at });
  }
  return replaced;
}

/** What stopped the writing may stop this too, and is the one to report. */
function remove(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // Nothing was written there, or nothing can be done about it.
  }
}

/** Nobody may write, not even who may do all. */
const NO_WRITER = 0o222;

/** A folder cannot, and a device or pipe must not, be replaced by a file; a file that is kept from writing stays. */
function refuseIrreplaceable(path: string): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (!there.isFile()) {
    throw Object.assign(new Error("it is no regular file; a file name is needed"), {
      code: there.isDirectory() ? "EISDIR" : "",
    });
  }
  if ((there.mode & NO_WRITER) === 0) {
    throw new Error("a read-only file of that name is there; make it writable, or give another name");
  }
  closeSync(openSync(path, "r+"));
}
