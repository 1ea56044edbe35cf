import { splitUnit } from "./splitUnit.js";

/** Among the names to ignore it stands for every name the reader does not know; inside a name, for anything. */
export const PATTERN_SIGN: string = "*";

/** How an option speaks of a column: the value it states, and what the pattern's sign stands for there. */
export interface Statement {
  /** The name or pattern in the option. */
  readonly name: string;
  readonly value: string;
  readonly exact: boolean;
  /** Empty where the name is stated exactly. */
  readonly part: string;
}

/**
 * What an option states of a column: by its heading, its heading without the unit, its number, or else by the first
 * pattern that fits.
 */
export function statementOf(
  map: Readonly<Record<string, string>>,
  text: string,
  number: number,
): Statement | null {
  const name = splitUnit(text)[0];
  const key = [text, name, String(number)].find((candidate) => Object.hasOwn(map, candidate));
  if (key !== undefined) return { name: key, value: map[key] as string, exact: true, part: "" };
  for (const [pattern, value] of Object.entries(map)) {
    const part = partOf(pattern, name) ?? partOf(pattern, text);
    if (part !== null) return { name: pattern, value, exact: false, part };
  }
  return null;
}

/** Tells whether a name of an option means a column. */
export function isNamed(name: string, text: string, number: number): boolean {
  const plain = splitUnit(text)[0];
  return (
    name === text ||
    name === plain ||
    name === String(number) ||
    partOf(name, text) !== null ||
    partOf(name, plain) !== null
  );
}

/** What the pattern's sign stands for in a text; `null` where the pattern is none or does not fit. */
export function partOf(pattern: string, text: string): string | null {
  const sign = pattern.indexOf(PATTERN_SIGN);
  if (sign < 0) return null;
  const before = pattern.slice(0, sign);
  const behind = pattern.slice(sign + 1);
  if (text.length < before.length + behind.length) return null;
  if (!text.startsWith(before) || !text.endsWith(behind)) return null;
  return text.slice(before.length, text.length - behind.length);
}
