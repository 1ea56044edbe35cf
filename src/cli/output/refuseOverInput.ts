import { realpathSync } from "node:fs";
import { resolve } from "node:path";
import { fail } from "../../units/index.js";

/**
 * Refuses a page that would take the place of a recording.
 *
 * @param report - Path of the page.
 * @param inputs - Paths of the recordings.
 * @throws GaitKineticsError `out-of-range`: they are one file.
 */
export function refuseOverInput(report: string | undefined, inputs: readonly string[]): void {
  if (report !== undefined && inputs.some((input) => placeOf(input) === placeOf(report))) {
    fail(
      "out-of-range",
      `${report}: cannot be written: it is a recording that is read; give the page a name of its own`,
      {
        where: report,
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
