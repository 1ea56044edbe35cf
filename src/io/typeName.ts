/** What a value of a wrong type is, for a message: "null", "a string", "an ArrayBuffer", "an object". */
export function typeName(value: unknown): string {
  if (value === null || value === undefined) return String(value);
  const name = typeof value === "object" ? (value.constructor?.name ?? "object") : typeof value;
  const word = name === "Object" ? "object" : name;
  return `${/^[aeiou]/i.test(word) ? "an" : "a"} ${word}`;
}

/** How to make bytes of what was given instead, for a message; blank where nothing is known. */
export function bytesHint(value: unknown): string {
  return value instanceof ArrayBuffer ? "; new Uint8Array(buffer) makes one of an ArrayBuffer" : "";
}
