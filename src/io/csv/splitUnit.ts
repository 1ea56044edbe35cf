/** Splits `up [N]` and `up (N)` into name and unit; the unit is empty where none is stated. */
export function splitUnit(text: string): readonly [name: string, unit: string] {
  const opening = text.endsWith("]")
    ? text.lastIndexOf("[")
    : text.endsWith(")")
      ? text.lastIndexOf("(")
      : -1;
  return opening < 0 ? [text, ""] : [text.slice(0, opening).trim(), text.slice(opening + 1, -1)];
}
