import type { WrittenColumn } from "./tableColumns.js";

/** Names that the reader of tables knows by themselves: no pattern touches them. */
const KNOWN =
  /^(?:time|t|sample|(?:(?:cop[\s_.-]+)?(?:forward|right)|up|free[\s_.-]+moment|(?:f|force|cop|t)_?[xyz])(?:\s*@.*)?)$/i;

/**
 * The word that an option states for a column: by its name, its number, or a pattern, in which `*` in the word is what it
 * stands for in the name; `null` where it states none.
 */
export function takenAs(
  column: Pick<WrittenColumn, "name" | "number">,
  columns: Readonly<Record<string, string>> | undefined,
): string | null {
  if (columns === undefined) return null;
  const exact = columns[column.name] ?? columns[String(column.number)];
  if (exact !== undefined) return exact;
  if (KNOWN.test(column.name)) return null;
  for (const [pattern, word] of Object.entries(columns)) {
    const part = partOf(pattern, column.name);
    if (part !== null) return word.replace("*", () => part);
  }
  return null;
}

/** What the `*` of a pattern stands for in a name; `null` where it does not fit. */
export function partOf(pattern: string, name: string): string | null {
  const [before, behind] = pattern.split("*");
  if (before === undefined || behind === undefined || name.length < before.length + behind.length)
    return null;
  if (!name.startsWith(before) || !name.endsWith(behind)) return null;
  return name.slice(before.length, name.length - behind.length);
}
