import { readFileSync } from "node:fs";
import { seededRandom } from "../../src/statistics/index.js";

const trial = readFileSync(new URL("../../tests/fixtures/numbers/trial.json", import.meta.url), "utf8");
const comparison = readFileSync(
  new URL("../../tests/fixtures/numbers/comparison.json", import.meta.url),
  "utf8",
);

/** What may stand in the place of a piece of the text. */
const PIECES = [
  "",
  "null",
  "true",
  "-1",
  "1e999",
  "1e-400",
  "NaN",
  '""',
  "{}",
  "[]",
  "{",
  "]",
  ",",
  '"__proto__": ',
  '"schema": "gait-kinetics/trial/2"',
  '"\\ud800"',
  "\u0000",
  "[".repeat(3000),
  '{"a":'.repeat(3000),
  "9".repeat(400),
];

/** The bytes of a file. */
export interface JsonFuzzInput {
  readonly bytes: Uint8Array;
  readonly options: object;
}

/** Makes a written trial or comparison with pieces of its text changed. */
export function jsonFuzzInput(seed: number): JsonFuzzInput {
  const { uniform } = seededRandom(seed);
  const below = (n: number): number => Math.floor(uniform() * n);
  let text = below(3) === 0 ? comparison : trial;
  for (let edits = 1 + below(4); edits > 0; edits--) {
    const at = below(text.length);
    // Most edits keep the text valid, so that what stands in it is checked and not the syntax alone.
    text =
      below(4) === 0
        ? cut(text, at, below(40), PIECES[below(PIECES.length)] ?? "")
        : changed(text, at, below);
  }
  return { bytes: new TextEncoder().encode(text), options: {} };
}

function cut(text: string, at: number, length: number, piece: string): string {
  return text.slice(0, at) + piece + text.slice(at + length);
}

/** Puts another value in the place of the next number, word or name. */
function changed(text: string, at: number, below: (n: number) => number): string {
  const token = /"(?:[^"\\]|\\.)*"|-?\d[\d.eE+-]*|true|false|null/g;
  token.lastIndex = at;
  const found = token.exec(text);
  if (found === null) return text;
  return cut(text, found.index, found[0].length, PIECES[below(10)] ?? "");
}
