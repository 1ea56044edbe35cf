/** Number, from 1, of the line that a place in a text belongs to. */
export function lineAt(text: string, place: number): number {
  let line = 1;
  for (let at = text.indexOf("\n"); at >= 0 && at < place; at = text.indexOf("\n", at + 1)) line++;
  return line;
}

/** Place behind the end of the line that begins at a place. */
export function nextLine(text: string, place: number): number {
  const newline = text.indexOf("\n", place);
  return newline < 0 ? text.length : newline + 1;
}
