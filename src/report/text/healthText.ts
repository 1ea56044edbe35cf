import { healthLines } from "./healthLines.js";

/**
 * Writes the health cautions of every report as text of at most 80 columns.
 *
 * Limits: no legal text; local rules come first.
 * Source: sentences of this library, with the one study they cite.
 * @example
 * healthText().split("\n")[0] // "Health"
 */
export function healthText(): string {
  return `${healthLines().join("\n")}\n`;
}
