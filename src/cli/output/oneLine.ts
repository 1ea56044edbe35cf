/** Makes a message one line that a terminal can only print: control characters and line breaks become spaces. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ")
    .replace(/ {2,}/g, " ")
    .trim();
}
