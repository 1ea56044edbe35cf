import { type Column, tableRow } from "./tableRow.js";

/** Sets the row of headings and a rule under it. */
export function tableHead(columns: readonly Column[]): string[] {
  return [
    ...tableRow(
      columns,
      columns.map(({ heading }) => heading),
    ),
    "-".repeat(columns.reduce((sum, { width }) => sum + width + 1, -1)),
  ];
}
