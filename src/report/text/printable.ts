/**
 * Makes text from a file safe to print: control characters (which a terminal would obey) become spaces.
 *
 * @example
 * printable("a\tb") // "a b"
 */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, " ");
}
