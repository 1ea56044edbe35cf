import Papa from "papaparse";
import { isUnitRow, rejoinedUnits } from "./heading.js";
import type { CsvSettings, Delimiter } from "./options.js";

/** In the order in which they are taken where the rows do not tell. */
const CANDIDATES: readonly Delimiter[] = ["\t", ";", ",", "|", " "];
const ROWS = 40;
const WITH_POINT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const WITH_COMMA = /^[+-]?\d+,\d+(?:e[+-]?\d+)?$/i;

/**
 * Finds what divides the cells: the character that gives most rows one width and most cells a number.
 *
 * @param sample - The first lines, comments before them taken off.
 * @param whole - Whether the sample is the whole file.
 */
export function findDelimiter(sample: string, whole: boolean, settings: CsvSettings): Delimiter {
  let best: Delimiter = ",";
  let most = 0;
  for (const candidate of CANDIDATES) {
    const score = scoreOf(candidate, sample, whole, settings);
    if (score > most) [best, most] = [candidate, score];
  }
  return best;
}

function scoreOf(delimiter: Delimiter, sample: string, whole: boolean, settings: CsvSettings): number {
  const parser = new Papa.Parser({ delimiter, newline: "\n", comments: "#", preview: ROWS });
  const { data } = parser.parse(sample, 0, !whole) as { readonly data: readonly string[][] };
  const rows = data.map((cells) => cellsOf(cells, delimiter)).filter((cells) => cells.length > 0);
  const below = rows.slice(settings.header);
  if (below[0] !== undefined && isUnitRow(below[0], settings.missing)) below.shift();
  const body = below.length > 0 ? below : rows;
  const counts = new Map<number, number>();
  for (const { length } of body) counts.set(length, (counts.get(length) ?? 0) + 1);
  let width = 0;
  for (const [length, count] of counts) if (count > (counts.get(width) ?? 0)) width = length;
  if (width < 2) return 0;
  const cells = body.flat();
  const share = (counts.get(width) as number) / body.length;
  const numbers = cells.filter((cell) => isNumber(cell, delimiter, settings)).length / cells.length;
  const names = rows[settings.header - 1] ?? [];
  const header = delimiter === " " ? rejoinedUnits(names) : names;
  const fits = body === rows || settings.header === 0 || header.length === width ? 1 : 0.9;
  // A table of words has no number to tell by: one width must do.
  return share * fits * (0.01 + numbers);
}

/** The cells of a row, without blank ones at its end. */
function cellsOf(cells: readonly string[], delimiter: Delimiter): string[] {
  const kept = delimiter === " " ? cells.filter((cell) => cell !== "") : [...cells];
  while (kept.length > 0 && (kept.at(-1) as string).trim() === "") kept.pop();
  return kept;
}

function isNumber(cell: string, delimiter: Delimiter, { missing }: CsvSettings): boolean {
  const text = cell.trim();
  return (
    WITH_POINT.test(text) ||
    (delimiter !== "," && WITH_COMMA.test(text)) ||
    missing.some((word) => word.toLowerCase() === text.toLowerCase())
  );
}
