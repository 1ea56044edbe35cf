import { unitOrNull } from "./unitOrNull.js";

/** The rows above the numbers. */
export interface Heading {
  /** One for each column, trimmed. */
  readonly names: readonly string[];
  /** Cells of the row of units, without brackets; `null` where there is none or it is left out. */
  readonly units: readonly string[] | null;
  /** Line of the lowest row of names, or of the first row of numbers where there is none. */
  readonly line: number;
  readonly unitLine: number;
}

/**
 * Joins rows of names from top to bottom. A table program writes a name over several columns into the first of them:
 * so a blank cell of an upper row takes the cell to its left.
 */
export function joinedNames(rows: readonly (readonly string[])[]): string[] {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const names: string[] = new Array<string>(width).fill("");
  for (const [place, row] of rows.entries()) {
    let left = "";
    for (let k = 0; k < width; k++) {
      const cell = (row[k] ?? "").trim();
      if (cell !== "") left = cell;
      const part = place < rows.length - 1 ? left : cell;
      if (part !== "") names[k] = names[k] === "" ? part : `${names[k]} ${part}`;
    }
  }
  // A name spread from the left over cells that no lower row names is no column's.
  const lowest = rows.at(-1) ?? [];
  let last = width;
  while (last > 0 && (lowest[last - 1] ?? "").trim() === "" && (rows.at(-2)?.[last - 1] ?? "").trim() === "")
    last--;
  return names.map((name, k) => (k < last ? name : ""));
}

/** The unit in a cell of a row of units: bare, or in brackets or parentheses. */
export function unitIn(cell: string): string {
  const text = cell.trim();
  return /^(?:\[.*\]|\(.*\))$/s.test(text) ? text.slice(1, -1).trim() : text;
}

/** Tells a row of units: words and blanks alone, at least one of them a known unit. */
export function isUnitRow(cells: readonly string[], missing: readonly string[]): boolean {
  let known = false;
  for (const cell of cells) {
    const unit = unitIn(cell);
    if (unit === "") continue;
    if (Number.isFinite(Number(unit.replace(",", ".")))) return false;
    if (missing.some((word) => word.toLowerCase() === unit.toLowerCase())) return false;
    known ||= unitOrNull(unit) !== null;
  }
  return known;
}

/** Where blanks divide the cells they tear a unit from its name, and a unit in two: puts both together again. */
export function rejoinedUnits(cells: readonly string[]): string[] {
  const joined: string[] = [];
  let open = "";
  for (const cell of cells) {
    const last = joined.length - 1;
    if (open !== "" || (last >= 0 && /^[[(]/.test(cell))) {
      joined[last] = `${joined[last]} ${cell}`;
      if (open === "") open = cell.startsWith("[") ? "]" : ")";
      if (cell.endsWith(open)) open = "";
    } else joined.push(cell);
  }
  return open === "" ? joined : [...cells];
}
