/** A cell or name for a message: in quotes, on one line, cut where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}

/** Names for a message, the first twelve of them. */
export function listed(names: readonly string[]): string {
  return names.slice(0, 12).map(quoted).join(", ") + (names.length > 12 ? ", …" : "");
}

/** A number and what it counts, in the singular for one. */
export function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

/** Brings names that differ in case, spaces, hyphens, dots and underscores only to one form. */
export function plainName(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_.-]+/g, "_");
}
