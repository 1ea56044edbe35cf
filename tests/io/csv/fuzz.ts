import { readFileSync } from "node:fs";
import { seededRandom } from "../../../src/statistics/index.js";

/** What a reader of tables is given: the bytes of a file, and what is stated of them. */
export interface CsvFuzzInput {
  readonly bytes: Uint8Array;
  readonly options: object;
}

type Below = (limit: number) => number;

const FRAME = { x: "forward", y: "up", z: "right" };

/** Tables that laboratories have, with what must be stated of them. */
const FILES: readonly (readonly [path: string, options: object])[] = [
  ["io/python-quoted-crlf.csv", {}],
  ["io/python-semicolon-decimal-comma.csv", {}],
  ["io/python-tab.txt", {}],
  ["text/jump-600hz.txt", { header: 0, columns: { 1: "up" }, units: { 1: "N" }, sampleRate: 600 }],
  ["text/jump-450hz.txt", { columns: { GRF: "up" } }],
  [
    "text/markers-two-header-rows.txt",
    {
      skip: 1,
      axes: FRAME,
      columns: { "Mark* X": "marker:*:x", "Mark* Y": "marker:*:y" },
      units: { "Mark*": "m" },
    },
  ],
  [
    "text/bom-blank-cells.csv",
    {
      header: 2,
      axes: { x: "forward", y: "up" },
      columns: { t: "time", "massa A x": "marker:A:x", "massa A y": "marker:A:y" },
      units: { t: "s", "massa A *": "m" },
    },
  ],
  ["text/long-table-nan.txt", { columns: { "*": "other:*" }, verticalForce: "optional", sampleRate: 1 }],
  [
    "text/tab-table-named-csv.csv",
    { axes: FRAME, columns: { x: "marker:P:x", y: "marker:P:y", z: "marker:P:z" } },
  ],
  [
    "treadmill-run/forces-2.5ms.txt",
    {
      axes: FRAME,
      columns: { Time: "sample" },
      units: { "F*": "N", "COP*": "mm", Ty: "N mm" },
      sampleRate: 300,
    },
  ],
];

/** The first rows of each file, read once. */
const texts: readonly string[] = FILES.map(([path]) => {
  const text = readFileSync(new URL(`../../fixtures/${path}`, import.meta.url), "utf8");
  return text.length < 6000 ? text : text.slice(0, text.lastIndexOf("\n", 6000) + 1);
});

const PIECES: readonly string[] = [
  ...[
    ",",
    ";",
    "\t",
    " ",
    "  ",
    "|",
    "\n",
    "\r\n",
    "\r",
    '"',
    '""',
    '","',
    "#",
    "# mass: 70 kg\n",
    "\0",
    "\uFEFF",
  ],
  ...[
    "NaN",
    "n/a",
    "NA",
    "",
    "-",
    ".",
    "1e9",
    "1e999",
    "-1e308",
    "0x1F",
    "1,5",
    "1.613,5",
    "٣",
    "−1",
    "Infinity",
  ],
  ...[
    "up [N]",
    "up@left [N]",
    "up@right [kN]",
    "time [s]",
    "sample",
    "forward [N]",
    "Fz",
    "COPx",
    "Ty",
    "[N]",
    "(mm)",
  ],
  ...[
    "marker:a:x [mm]",
    "marker:a:up [m]",
    "other:é [mV]",
    "other@p:q",
    "cop_right@1 [cm]",
    "s",
    "mm",
    "*",
    "@",
    ":",
  ],
  ...[
    "\ud800",
    "é",
    "日本",
    "\u2028",
    "__proto__",
    "constructor",
    "# speed: 3 m/s",
    "# surface: belt",
    "# weight: 5",
  ],
];

/** Options that a table may be read with, right or wrong. */
const OPTIONS: readonly object[] = [
  {},
  { sampleRate: 1000 },
  { sampleRate: 1000, ignore: ["*"] },
  { axes: FRAME, sampleRate: 500, units: { "*": "N" } },
  { axes: { z: "up" }, units: { "*": "mm" }, columns: { "*": "other:*" } },
  { header: 0, columns: { 1: "time", 2: "up" }, units: { 1: "s", 2: "N" } },
  { header: 2, unitRow: "read", sampleRate: 100 },
  { header: 3, verticalForce: "optional", columns: { "*": "marker:*:x" }, axes: FRAME },
  { skip: 2, unitRow: "skip", columns: { "*": "other:*" }, verticalForce: "optional", sampleRate: 1 },
  { delimiter: " ", decimal: ",", sampleRate: 100 },
  { delimiter: "|", missing: ["-9999"], forceOn: "ground", sampleRate: 100 },
  { delimiter: ";", missing: [], header: 10 },
];

/**
 * Makes the input of a seed: a real table with pieces cut, put in or doubled; a table made of known words and numbers in
 * which something is odd; or bytes in an odd encoding.
 */
export function csvFuzzInput(seed: number): CsvFuzzInput {
  const { uniform } = seededRandom(seed);
  const below: Below = (limit) => Math.floor(uniform() * limit);
  const kind = below(8);
  if (kind < 4) {
    const file = below(FILES.length);
    const options = below(6) === 0 ? oneOf(OPTIONS, below) : (FILES[file] as readonly [string, object])[1];
    return { bytes: encoded(edited(texts[file] as string, below), below), options };
  }
  if (kind < 7)
    return { bytes: encoded(table(below), below), options: below(2) === 0 ? {} : oneOf(OPTIONS, below) };
  const noise = Uint8Array.from({ length: below(400) }, () => below(256));
  return { bytes: noise, options: oneOf(OPTIONS, below) };
}

function oneOf<T>(list: readonly T[], below: Below): T {
  return list[below(list.length)] as T;
}

/** Cuts, puts in or doubles pieces anywhere. */
function edited(text: string, below: Below): string {
  let whole = text;
  for (let edits = below(5); edits > 0; edits--) {
    const at = below(whole.length + 1);
    // A digit for a digit leaves a table that can be read, with other numbers in it.
    if (below(2) === 0) {
      if (/\d/.test(whole[at] ?? "")) whole = whole.slice(0, at) + String(below(10)) + whole.slice(at + 1);
      continue;
    }
    const behind = at + below(3) * below(40);
    const piece = below(5) === 0 ? whole.slice(at, at + below(200)) : oneOf(PIECES, below);
    whole = whole.slice(0, at) + piece + whole.slice(below(12) === 0 ? whole.length : behind);
  }
  return whole;
}

/** A table of a few columns, most of it right. */
function table(below: Below): string {
  const delimiter = oneOf([",", ";", "\t", " ", "|"], below);
  const end = oneOf(["\n", "\r\n", "\r"], below);
  const width = 2 + below(5);
  const names = [
    "time [s]",
    "up [N]",
    "forward [N]",
    "right [N]",
    "other:a [V]",
    "marker:m:up [m]",
    "cop_right [m]",
  ];
  const cell = (): string => {
    const odd = below(600);
    if (odd === 0) return oneOf(PIECES, below);
    if (odd === 1) return `"${oneOf(PIECES, below)}"`;
    return String((below(200_000) - 100_000) / 10 ** below(5));
  };
  const head = Array.from({ length: width }, (_, k) =>
    below(12) === 0 ? oneOf(PIECES, below) : (names[k] as string),
  );
  const rows = Array.from({ length: below(30) }, (_, row) =>
    Array.from({ length: below(400) === 0 ? below(9) : width }, (_unused, k) =>
      k === 0 ? String(row / 100) : cell(),
    ),
  );
  const lines = [
    head,
    ...(below(4) === 0 ? [head.map((name) => (below(9) === 0 ? "s" : unitOf(name)))] : []),
    ...rows,
  ];
  return lines.map((cells) => cells.join(delimiter)).join(end) + (below(2) === 0 ? end : "");
}

function unitOf(name: string): string {
  return /\[(.*)\]/.exec(name)?.[1] ?? "";
}

/** Mostly UTF-8; also UTF-16 with a mark, Latin-1, and bytes changed or cut at random. */
function encoded(text: string, below: Below): Uint8Array {
  switch (below(12)) {
    case 0: {
      const units = `\uFEFF${text}`;
      const big = below(2);
      return Uint8Array.from({ length: 2 * units.length }, (_, i) => {
        const unit = units.charCodeAt(i >> 1);
        return i % 2 === big ? unit & 255 : unit >> 8;
      });
    }
    case 1:
      return Uint8Array.from({ length: text.length }, (_, i) => text.charCodeAt(i) & 255);
    case 2: {
      const bytes = new TextEncoder().encode(text);
      for (let changes = below(6); changes > 0 && bytes.length > 0; changes--)
        bytes[below(bytes.length)] = below(256);
      return bytes;
    }
    case 3: {
      const bytes = new TextEncoder().encode(text);
      return bytes.slice(0, below(bytes.length + 1));
    }
    default:
      return new TextEncoder().encode(text);
  }
}
