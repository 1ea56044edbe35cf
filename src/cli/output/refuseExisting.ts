import { lstatSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { fail } from "../../units/index.js";
import { writeFailure } from "./writeFailure.js";

/**
 * Refuses, before work is done, a file that cannot be written: its folder is missing, or a file of that name is there
 * and may not be replaced.
 *
 * @param path - Of the file to be written.
 * @param overwrite - Whether a file that is there may be replaced.
 * @throws GaitKineticsError `out-of-range`.
 */
export function refuseExisting(path: string, overwrite: boolean): void {
  const refuse = (why: string): never =>
    fail("out-of-range", `${path}: cannot be written: ${why}`, { where: path });
  const folder = dirname(path);
  try {
    if (!statSync(folder).isDirectory()) refuse(`${folder} is a file, no folder`);
  } catch (caught) {
    if ((caught as NodeJS.ErrnoException).syscall === undefined) throw caught;
    refuse(`the folder ${folder}: ${writeFailure(caught)}`);
  }
  if (overwrite || lstatSync(path, { throwIfNoEntry: false }) === undefined) return;
  refuse("a file of that name is there; state --overwrite to replace it, or give another name");
}
