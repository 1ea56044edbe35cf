import type { DescribedColumn } from "../description/description.js";
import { formatNumber } from "../wording/formatNumber.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

const COLUMNS: readonly Column[] = [
  { heading: "column", width: 20, left: true },
  { heading: "unit", width: 6, left: true },
  { heading: "first", width: 9 },
  { heading: "least", width: 9 },
  { heading: "most", width: 9 },
  { heading: "read as", width: 22, left: true },
];

/** Lists the columns of a table as they are written. */
export function columnLines(columns: readonly DescribedColumn[], rows: number): string[] {
  return [
    ...tableHead(COLUMNS),
    ...columns.flatMap(({ number, name, unit, first, least, most, blank, takenAs, leftOut }) => [
      ...tableRow(COLUMNS, [
        `${number} ${name}`,
        unit,
        ...[first, least, most].map(cell),
        leftOut ? "left out" : (takenAs ?? ""),
      ]),
      ...(blank === 0 ? [] : wrap(`blank in ${blank} of ${rows} rows`, "    ")),
    ]),
    "",
  ];
}

/** Names the columns that are not read. */
export function leftOutLines(columns: readonly DescribedColumn[]): string[] {
  const names = columns
    .filter(({ leftOut }) => leftOut)
    .map(({ number, name }) => name || `column ${number}`);
  return names.length === 0 ? [] : [...wrap(names.join(", "), "Left out       "), ""];
}

function cell(value: number | null): string {
  return value === null ? "" : formatNumber(value);
}
