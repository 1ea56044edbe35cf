/** Counts the columns a text takes in a terminal: one a code point. */
export function lengthOf(text: string): number {
  return [...text].length;
}
