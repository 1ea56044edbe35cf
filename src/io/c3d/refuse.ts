import { fail } from "../../units/index.js";

/** A text of the file for a message: in quotes, on one line, cut where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}

/** Refuses a file: what, and the place in it. */
export function refuseFile(where: string, what: string, values?: Readonly<Record<string, unknown>>): never {
  fail("unreadable-file", `${where}: ${what}`, { where, values });
}
