import { fail } from "../../units/index.js";
import { requireList } from "../requireList.js";
import { requireValues, type Values } from "../requireValues.js";

/** One row a subject (a runner), one column a trial (or judge, method, day), every cell filled. */
export type AgreementTable = ArrayLike<Values>;

/**
 * Checks a table: at least two trials a row, all rows alike, every cell a finite number.
 *
 * @param table - What was given.
 * @param leastRows - Fewest rows allowed.
 * @throws GaitKineticsError `wrong-type`: no list of lists of numbers; `too-short`: too few rows or columns;
 *   `unequal-lengths`: rows of different lengths; `not-finite`: a cell that is no finite number.
 */
export function requireTable(table: AgreementTable, leastRows: number): void {
  requireList("table", table, "rows");
  if (table.length < leastRows) {
    fail("too-short", `table holds ${table.length} rows; at least ${leastRows} are needed`, {
      argument: "table",
      values: { given: table.length, least: leastRows },
    });
  }
  const columns = table[0]?.length;
  for (let i = 0; i < table.length; i++) {
    const row = table[i] as Values;
    requireValues(`table[${i}]`, row, 2);
    if (row.length === columns) continue;
    fail(
      "unequal-lengths",
      `row ${i} of the table holds ${row.length} values and row 0 holds ${columns}; every row needs the same trials`,
      { argument: "table", where: `row ${i}`, values: { given: row.length, needed: columns } },
    );
  }
}
