/** Whether something given is an object with fields. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What was given, in a message. */
export function shown(value: unknown): string {
  if (typeof value === "string") return `"${value}"`;
  if (typeof value === "function") return "a function";
  if (Array.isArray(value)) return "a list";
  return isRecord(value) ? "an object" : String(value);
}
