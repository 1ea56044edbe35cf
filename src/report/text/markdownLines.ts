import { typographic } from "../markup/typographic.js";
import { escapeMarkdown } from "./escapeMarkdown.js";

/** A heading of Markdown with what stands under it; nothing where that is empty. */
export function markdownSection(heading: string, lines: readonly string[], level: 1 | 2 | 3 = 2): string[] {
  return lines.length === 0 ? [] : [`${"#".repeat(level)} ${escapeMarkdown(heading)}`, "", ...lines];
}

/** A paragraph of plain text; nothing where it is empty. */
export function markdownParagraph(text: string): string[] {
  return text === "" ? [] : [escapeMarkdown(typographic(text)), ""];
}

/** Sentences as a list of points. */
export function markdownList(sentences: readonly string[]): string[] {
  return sentences.length === 0
    ? []
    : [...sentences.map((sentence) => `- ${escapeMarkdown(typographic(sentence))}`), ""];
}
