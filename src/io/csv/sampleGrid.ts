import { fail } from "../../units/index.js";
import type { Column } from "./columns.js";
import { scaled } from "./scaled.js";
import type { Table } from "./tableReader.js";
import { type TimeGrid, timeGrid } from "./timeGrid.js";
import { counted, quoted } from "./words.js";

/** Rows behind which a time that rises by 1 s a row is taken for a counter of samples, whatever its heading says. */
const COUNTED_ROWS = 50;

/** Finds rate and start of a table: by its time column, the stated rate, or both. */
export function sampleGrid(table: Table, stated: number | null): TimeGrid {
  const { columns, values, lineOf, rows } = table;
  const find = (kind: "time" | "sample") => columns.columns.findIndex(({ role }) => role.kind === kind);
  const whereOf = (column: Column) => (row: number) => `line ${lineOf(row)}, ${column.label}`;
  const counter = columns.columns[find("sample")];
  if (counter !== undefined) checkCounter(values[find("sample")] as Float64Array, whereOf(counter));
  const time = columns.columns[find("time")];
  if (time === undefined) {
    if (stated !== null) return { sampleRate: stated, startTime: 0, cautions: [] };
    fail(
      "missing-value",
      `the file has ${counted(rows, "row")} and neither a column "time [s]" nor a rate; state sampleRate, in Hz, or write "# sample rate: 1000 Hz" into the file`,
      { argument: "sampleRate" },
    );
  }
  const times = values[find("time")] as Float64Array;
  const rising = time.factor >= 1 && rows > 1 && isCounter(times);
  if (rising && stated !== null && stated * time.factor !== 1) refuseCounter(time, times, lineOf, stated);
  if (rising && stated === null && rows >= COUNTED_ROWS) refuseCounter(time, times, lineOf, stated);
  return timeGrid(scaled(times, time, lineOf), stated, whereOf(time));
}

function isCounter(times: Float64Array): boolean {
  return times.every(
    (time, i) => time === Math.round(time) && (i === 0 || time - (times[i - 1] as number) === 1),
  );
}

/** A counter must rise by one: where it does not, samples are missing. */
function checkCounter(counts: Float64Array, whereOf: (row: number) => string): void {
  for (let i = 0; i < counts.length; i++) {
    if (Number.isInteger(counts[i]) && (i === 0 || (counts[i] as number) - (counts[i - 1] as number) === 1))
      continue;
    const where = whereOf(i);
    const what = i === 0 ? "holds" : `goes from ${counts[i - 1]} to`;
    fail("uneven-time", `${where} ${what} ${counts[i]}; a counter of samples rises by 1 from row to row`, {
      argument: "time",
      where,
    });
  }
}

function refuseCounter(
  { label, name, ownUnit, factor }: Column,
  times: Float64Array,
  lineOf: (row: number) => number,
  stated: number | null,
): never {
  const where = `line ${lineOf(0)}, ${label}`;
  const as = `columns: { ${quoted(name)}: "sample" }`;
  const advice =
    stated === null
      ? `state sampleRate, in Hz, and ${as}${ownUnit ? `; where it is a time, as its heading says, state the rate of ${Number((1 / factor).toPrecision(6))} Hz alone` : ""}`
      : `it does not fit the stated rate of ${stated} Hz as a time; state ${as}`;
  fail(
    stated === null ? "missing-value" : "uneven-time",
    `${where} rises by 1 from row to row, from ${times[0]} to ${times.at(-1)}, and seems to count samples; ${advice}`,
    { argument: stated === null ? "sampleRate" : "time", where },
  );
}
