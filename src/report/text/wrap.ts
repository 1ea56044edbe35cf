import { keepTogether } from "../wording/keepTogether.js";
import { lengthOf } from "./lengthOf.js";
import { printable } from "./printable.js";

/** Columns of every text report. */
export const TEXT_WIDTH: number = 80;

/**
 * Breaks text into lines of at most 80 columns; a word longer than a line is cut.
 *
 * @param text - One paragraph; control characters become spaces.
 * @param first - What the first line starts with.
 * @param rest - What further lines start with; as many spaces as `first` is long where left out.
 * @example
 * wrap("lower", "Vertical: ") // ["Vertical: lower"]
 */
export function wrap(text: string, first: string = "", rest: string = " ".repeat(lengthOf(first))): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of wordsOf(text, TEXT_WIDTH - Math.max(lengthOf(first), lengthOf(rest)))) {
    if (!empty && lengthOf(line) + 1 + lengthOf(word) > TEXT_WIDTH) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line.trimEnd()].map((whole) => whole.replaceAll("\u00a0", " "));
}

function wordsOf(text: string, longest: number): string[] {
  return keepTogether(printable(text))
    .split(/[^\S\u00a0]+/)
    .filter((word) => word !== "")
    .flatMap((word) => {
      const letters = [...word];
      return Array.from({ length: Math.ceil(letters.length / longest) }, (_, i) =>
        letters.slice(i * longest, (i + 1) * longest).join(""),
      );
    });
}
