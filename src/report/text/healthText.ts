import { healthLines } from "./healthLines.js";

/**
 * Writes the health cautions of every report as text of at most 80 columns.
 *
 * @example
 * healthText().split("\n")[0] // "Health"
 */
export function healthText(): string {
  return `${healthLines().join("\n")}\n`;
}
