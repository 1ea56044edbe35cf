import { type Complete, fail } from "../../units/index.js";
import type { ReadCsvOptions } from "./options.js";
import { splitUnit } from "./splitUnit.js";
import { quoted } from "./words.js";

/** Among the names to ignore it stands for every name the reader does not know. */
export const UNKNOWN_NAMES: string = "*";

/**
 * Refuses names in the options that no column of the file has: most often a slip, which would pass unseen.
 *
 * @param header - The cells that name columns.
 * @throws GaitKineticsError `out-of-range`: a name in `ignore`, `units` or `columns` without a column.
 */
export function refuseUnmatchedNames(
  header: readonly string[],
  line: number,
  { ignore, units, columns }: Complete<ReadCsvOptions>,
): void {
  const cells = header.map((cell) => cell.trim());
  const known = new Set(cells.flatMap((cell) => [cell, splitUnit(cell)[0]]));
  const names = { ignore, units: Object.keys(units), columns: Object.keys(columns) };
  for (const option of ["ignore", "units", "columns"] as const) {
    const name = names[option].find((candidate) => candidate !== UNKNOWN_NAMES && !known.has(candidate));
    if (name === undefined) continue;
    fail(
      "out-of-range",
      `${option} names ${quoted(name)}, and the file has no such column; line ${line} names ${cells.map(quoted).join(", ")}`,
      { argument: option, where: `line ${line}`, values: { given: name, allowed: cells } },
    );
  }
}
