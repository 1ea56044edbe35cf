/**
 * Writes the first letter large.
 *
 * @example
 * capitalised("peak vertical force") // "Peak vertical force"
 */
export function capitalised(text: string): string {
  const [first = "", ...rest] = text;
  return first.toUpperCase() + rest.join("");
}
