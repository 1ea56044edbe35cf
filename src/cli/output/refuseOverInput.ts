import { realpathSync } from "node:fs";
import { resolve } from "node:path";
import { fail } from "../../units/index.js";

/**
 * Refuses a file that would take the place of a recording that is read.
 *
 * @param path - Of the file to be written; `undefined` where none is.
 * @param inputs - Paths of the recordings.
 * @param what - What the file holds, for the message.
 * @throws GaitKineticsError `out-of-range`: they are one file.
 */
export function refuseOverInput(
  path: string | undefined,
  inputs: readonly string[],
  what: string = "page",
): void {
  if (path !== undefined && inputs.some((input) => placeOf(input) === placeOf(path))) {
    fail(
      "out-of-range",
      `${path}: cannot be written: it is a recording that is read; give the ${what} a name of its own`,
      {
        where: path,
      },
    );
  }
}

function placeOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}
