import Papa from "papaparse";
import { fail } from "../../units/index.js";
import { MISSING, quoted } from "./words.js";

/** A row of a table by the names of its columns; a value that is not there is absent. */
export interface TableRow {
  /** Number of its line, from 1. */
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

/** Reads a table with a heading: `channels.tsv`, `events.tsv`. */
export function readRows(text: string, argument: string, needed: readonly string[]): readonly TableRow[] {
  const refuse = (line: number, message: string): never =>
    fail("unreadable-file", `${argument}, line ${line}: ${message}`, { argument, where: `line ${line}` });
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: "\t", newline: "\n" });
  const [error] = errors;
  if (error !== undefined) refuse((error.row ?? 0) + 1, error.message.toLowerCase());
  while (data.length > 0 && isEmpty(data.at(-1) as string[])) data.pop();
  const [heading, ...rows] = data;
  if (heading === undefined) {
    fail("unreadable-file", `${argument} is empty; a line with ${needed.join(", ")} is needed`, {
      argument,
      where: argument,
    });
  }
  const twice = heading.find((name, k) => heading.indexOf(name) !== k);
  if (twice !== undefined) refuse(1, `two columns are named ${quoted(twice)}`);
  const lacking = needed.filter((name) => !heading.includes(name));
  if (lacking.length > 0) {
    refuse(
      1,
      `column ${lacking.join(", ")} is missing; ${needed.join(", ")} are needed, and found are ${heading.map(quoted).join(", ").slice(0, 200)}`,
    );
  }
  return rows.map((row, k) => {
    const line = k + 2;
    if (isEmpty(row)) refuse(line, "the line is empty");
    if (row.length !== heading.length) {
      refuse(line, `it has ${row.length} cells, and the heading ${heading.length}`);
    }
    const filled = heading.map((name, column) => [name, row[column] as string] as const);
    return { line, cells: new Map(filled.filter(([, cell]) => cell !== MISSING && cell !== "")) };
  });
}

function isEmpty(row: readonly string[]): boolean {
  return row.length === 0 || (row.length === 1 && row[0] === "");
}
