import { keepTogether } from "../wording/keepTogether.js";

/**
 * Sets a sentence or a number as print does: a minus sign for a hyphen before a digit, no line between number and unit.
 *
 * @example
 * typographic("(-6.2 %)") // "(−6.2\u00a0%)"
 */
export function typographic(text: string): string {
  return keepTogether(text.replace(/(^|[\s([])-(?=\d)/g, "$1−"));
}
