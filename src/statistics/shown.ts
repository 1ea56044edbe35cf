/** What was given, in a message: an object need not have a string of its own. */
export function shown(value: unknown): string {
  if (typeof value === "string") return `"${value}"`;
  if (typeof value === "function") return "a function";
  if (typeof value === "object" && value !== null) return Array.isArray(value) ? "a list" : "an object";
  return String(value);
}
