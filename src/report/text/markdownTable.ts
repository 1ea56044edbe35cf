import { escapeMarkdown } from "./escapeMarkdown.js";

/**
 * Sets a table in Markdown, texts to the left and numbers to the right; nothing where it has no row.
 *
 * @param headings - Plain text, left to right.
 * @param rows - Plain text; a row may be shorter than the headings.
 * @param texts - How many columns from the left hold texts.
 */
export function markdownTable(
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  texts: number = 1,
): string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]) =>
    `| ${headings.map((_, i) => escapeMarkdown(cells[i] ?? "")).join(" | ")} |`;
  return [
    line(headings),
    `|${headings.map((_, i) => (i < texts ? " --- " : " ---: ")).join("|")}|`,
    ...rows.map(line),
    "",
  ];
}
