import Papa from "papaparse";
import { fail } from "../../units/index.js";
import type { BidsChannel } from "./readChannels.js";
import { quoted } from "./words.js";

const NUMBER = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?\s*$/;
const BLANK = /^\s*(?:n\/a|nan|na|)\s*$/i;

/** Reads `motion.tsv`: one row a sample, no heading; a value that is not there is NaN. */
export function readMotion(
  text: string,
  argument: string,
  channels: readonly BidsChannel[],
): readonly Float64Array[] {
  const width = channels.length;
  // A row takes a character a cell at least, so that the text bounds what is allocated.
  const most = Math.min(countOf(text, "\n") + 1, Math.floor((text.length + 1) / width) + 1);
  const columns = channels.map(() => new Float64Array(most));
  let rows = 0;
  let empty: number | null = null;
  let line = 0;
  Papa.parse<string[]>(text, {
    delimiter: "\t",
    newline: "\n",
    fastMode: true,
    step: ({ data }) => {
      line++;
      if (data.length === 1 && data[0] === "") {
        empty ??= line;
        return;
      }
      if (empty !== null) refuse(argument, empty, "the row is empty, and others follow");
      if (data.length !== width) refuseWidth(argument, line, data.length, width);
      for (let k = 0; k < width; k++) {
        (columns[k] as Float64Array)[rows] = numberOf(
          data[k] as string,
          argument,
          line,
          channels[k] as BidsChannel,
        );
      }
      rows++;
    },
  });
  if (rows === 0) {
    fail("too-short", `${argument} holds no sample; at least one row of numbers is needed`, {
      argument,
      where: argument,
    });
  }
  return columns.map((column) => column.slice(0, rows));
}

function numberOf(cell: string, argument: string, row: number, { name, column }: BidsChannel): number {
  if (NUMBER.test(cell)) {
    const value = Number(cell);
    if (Number.isFinite(value)) return value;
    refuse(argument, row, `${quoted(cell)} is larger than a number can be`, name, column);
  }
  if (BLANK.test(cell)) return Number.NaN;
  const heading =
    row === 1 ? "; a motion file has no heading, its columns are named in channels.tsv alone" : "";
  return refuse(argument, row, `${quoted(cell)} is no number${heading}`, name, column);
}

function refuseWidth(argument: string, row: number, given: number, width: number): never {
  refuse(
    argument,
    row,
    `it has ${given} column${given === 1 ? "" : "s"}, and channels.tsv lists ${width} channel${width === 1 ? "" : "s"}: one for each column, in their order`,
  );
}

function refuse(argument: string, row: number, message: string, name?: string, column?: number): never {
  const where =
    name === undefined || column === undefined
      ? `row ${row}`
      : `row ${row}, column ${column + 1} (${quoted(name)})`;
  fail("unreadable-file", `${argument}, ${where}: ${message}`, { argument, where });
}

function countOf(text: string, mark: string): number {
  let count = 0;
  for (let at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1)) count++;
  return count;
}
