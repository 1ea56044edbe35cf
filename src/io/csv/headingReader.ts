import type { Columns } from "./columns.js";
import { type Heading, isUnitRow, joinedNames, rejoinedUnits, unitIn } from "./heading.js";
import type { CsvSettings } from "./options.js";
import { readColumns } from "./readColumns.js";

/** Collects the rows above the numbers. */
export interface HeadingReader {
  /**
   * Takes a row where it belongs above the numbers; `false` where it is the first row of numbers.
   * @param byBlanks - Whether blanks divide the cells.
   */
  readonly take: (cells: readonly string[], line: number, byBlanks: boolean) => boolean;
  /** Whether there is a row to read columns from. */
  readonly begun: () => boolean;
  /**
   * Reads the columns.
   * @param width - Cells of the first row of numbers, at a line; columns without names are counted by it.
   */
  readonly open: (width: number, line: number) => Columns;
}

/** Makes a collector of as many rows of names as the settings state, and of the row of units below them. */
export function headingReader(settings: CsvSettings): HeadingReader {
  const { header, unitRow, missing } = settings;
  const names: (readonly string[])[] = [];
  let units: readonly string[] | null = null;
  let nameLine = 0;
  let unitLine = 0;
  let mayHaveUnits = unitRow !== "none" && (header > 0 || unitRow !== "auto");

  return {
    take: (cells, line, byBlanks) => {
      if (names.length < header) {
        names.push(byBlanks ? rejoinedUnits(cells) : cells);
        nameLine = line;
        return true;
      }
      if (!mayHaveUnits) return false;
      mayHaveUnits = false;
      if (unitRow === "auto" && !isUnitRow(cells, missing)) return false;
      unitLine = line;
      if (unitRow !== "skip") units = cells.map(unitIn);
      return true;
    },
    begun: () => names.length > 0,
    open: (width, line) => {
      const heading: Heading = {
        names: header > 0 ? joinedNames(names) : Array.from({ length: width }, (_, k) => String(k + 1)),
        units,
        line: header > 0 ? nameLine : line,
        unitLine,
      };
      return readColumns(heading, settings);
    },
  };
}
