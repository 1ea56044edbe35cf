import { fail } from "../../units/index.js";
import { isNamed, PATTERN_SIGN } from "./columnNames.js";
import type { CsvSettings } from "./options.js";
import { listed, quoted } from "./words.js";

/**
 * Refuses names in the options that no column of the file has: most often a slip, which would pass unseen.
 *
 * @param header - The cells that name columns.
 * @throws GaitKineticsError `out-of-range`: a name in `ignore`, `units` or `columns` without a column.
 */
export function refuseUnmatchedNames(
  header: readonly string[],
  line: number,
  { ignore, units, columns }: CsvSettings,
): void {
  const names = { ignore, units: Object.keys(units), columns: Object.keys(columns) };
  for (const option of ["ignore", "units", "columns"] as const) {
    const name = names[option].find(
      (candidate) =>
        !(option === "ignore" && candidate === PATTERN_SIGN) &&
        !header.some((cell, index) => isNamed(candidate, cell, index + 1)),
    );
    if (name === undefined) continue;
    fail(
      "out-of-range",
      `${option} names ${quoted(name)}, and the file has no such column; line ${line} names ${listed(header)}`,
      { argument: option, where: `line ${line}`, values: { given: name, allowed: header } },
    );
  }
}
