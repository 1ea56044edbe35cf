import Papa from "papaparse";
import { Bench } from "tinybench";
import { readCsv, readCsvStream, writeCsv } from "../src/io/index.js";
import { tenMinutes } from "./tenMinutes.js";

/** Bytes of a part, as a file's stream gives them. */
const PART = 65_536;

/**
 * Reading and writing ten minutes as the library's own CSV, beside the parser that the reader is built on: alone, its rows
 * counted, and with each of its cells turned into a number.
 */
export function benchmark(): Bench {
  const recording = tenMinutes();
  const text = writeCsv(recording);
  const bytes = new TextEncoder().encode(text);
  const rows = recording.channels[0]?.samples.length ?? 0;
  return new Bench({
    name: `10 min × 6 channels × 1 kHz, ${rows} rows, ${Math.round(text.length / 1e6)} MB`,
    iterations: 10,
    time: 0,
    warmupIterations: 2,
    warmupTime: 0,
  })
    .add("papaparse alone, row by row", () => void parsed(text, ({ length }) => length))
    .add("papaparse and Number of cells", () => void parsed(text, sumOf))
    .add("readCsv of a text", () => void readCsv(text))
    .add("readCsv of bytes", () => void readCsv(bytes))
    .add("readCsvStream, parts of 64 kB", async () => void (await readCsvStream(partsOf(bytes))))
    .add("writeCsv", () => void writeCsv(recording));
}

/** Sum of what is made of each row, so that nothing is left out as unused. */
function parsed(text: string, ofRow: (cells: readonly string[]) => number): number {
  let sum = 0;
  Papa.parse<string[]>(text, {
    comments: "#",
    newline: "\n",
    delimiter: ",",
    chunkSize: 1_048_576,
    step: ({ data }) => {
      sum += ofRow(data);
    },
  });
  return sum;
}

function sumOf(cells: readonly string[]): number {
  let sum = 0;
  for (const cell of cells) sum += Number(cell);
  return sum;
}

async function* partsOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let from = 0; from < bytes.length; from += PART) yield bytes.subarray(from, from + PART);
}
