import { lengthOf } from "./lengthOf.js";
import { printable } from "./printable.js";
import { TEXT_WIDTH, wrap } from "./wrap.js";

/** A column of a text table: its width, and whether text starts at its left. */
export interface Column {
  readonly heading: string;
  readonly width: number;
  readonly left?: true;
}

/**
 * Sets one row of a table. A first cell that is too long takes a line of its own, and another one blanks of the cell on its
 * left; a row that is still longer than 80 columns stands without its first cell
 * at the right, or, where that is not enough, becomes a paragraph with the headings before the values.
 *
 * @param columns - Left to right; one space stands between two of them.
 * @param cells - As many as columns.
 */
export function tableRow(columns: readonly Column[], cells: readonly string[]): string[] {
  const clean = cells.map(printable);
  const label = clean[0] ?? "";
  const own = lengthOf(label) > (columns[0]?.width ?? 0);
  const row = joined(columns.map((column, i) => pad(own && i === 0 ? "" : (clean[i] ?? ""), column)));
  const indent = /^ */.exec(label)?.[0] ?? "";
  const heading = wrap(label.trim(), indent);
  if (lengthOf(row) <= TEXT_WIDTH) return own ? [...heading, row] : [row];
  const short = columns
    .slice(1)
    .map((column, i) => pad(clean[i + 1] ?? "", column).text)
    .join(" ")
    .trimEnd();
  const room = columns.reduce((sum, { width }) => sum + width + 1, -1);
  if (lengthOf(short) <= room - lengthOf(indent)) {
    return [...heading, " ".repeat(room - lengthOf(short)) + short];
  }
  const values = columns.slice(1).flatMap(({ heading }, i) => {
    const cell = clean[i + 1] ?? "";
    return cell === "" ? [] : [`${heading} ${cell}`.trim()];
  });
  return [...heading, ...wrap(values.join("; "), `${indent}  `)];
}

/** The cells with a space between; one that is too long takes the blanks that end the cell before it. */
function joined(cells: readonly Cell[]): string {
  return cells
    .map(({ text }, i) => {
      const borrowed = cells[i + 1]?.over ?? 0;
      const blanks = text.length - text.trimEnd().length;
      return text.slice(0, text.length - Math.min(blanks, borrowed));
    })
    .join(" ")
    .trimEnd();
}

/** A cell's text at its width, and by how much it exceeds it. */
interface Cell {
  readonly text: string;
  readonly over: number;
}

function pad(text: string, { width, left }: Column): Cell {
  const room = width - lengthOf(text);
  const space = " ".repeat(Math.max(0, room));
  return { text: left ? text + space : space + text, over: Math.max(0, -room) };
}
