import type { ReadingOptions } from "../options/inputOptions.js";

const DELIMITER_WORDS: Readonly<Record<string, string>> = {
  ",": "comma",
  ";": "semicolon",
  "\t": "tab",
  "|": "bar",
  " ": "blanks",
};

/**
 * Writes options as they are typed.
 *
 * @param rate - As typed; `null` where it needs no stating.
 */
export function statedOptions(reading: ReadingOptions, rate: string | null): string {
  const { skip, header, unitRow, delimiter, decimal, missing, forceOn } = reading;
  const { axes, columns, units, ignore } = reading;
  const options: readonly (readonly [flag: string, value: string | number | null | undefined])[] = [
    ["skip", skip],
    ["header", header],
    ["unit-row", unitRow],
    ["delimiter", delimiter && DELIMITER_WORDS[delimiter]],
    ["decimal", decimal],
    ["missing", missing?.join(",")],
    ["force-on", forceOn],
    ["axes", pairs(axes ?? {})],
    ["columns", pairs(columns ?? {})],
    ["units", pairs(units ?? {})],
    ["ignore", ignore?.join(",")],
    ["rate", rate],
  ];
  return options
    .filter(([, value]) => value !== undefined && value !== null && value !== "")
    .map(([flag, value]) => `--${flag} ${inQuotes(String(value))}`)
    .join(" ");
}

/** A word of a command line, in quotation marks where it needs them. */
export function inQuotes(text: string): string {
  return /^[\w./\\:=,-]+$/.test(text) ? text : `"${text}"`;
}

function pairs(map: object): string {
  return Object.entries(map)
    .map(([name, value]) => `${name}=${value}`)
    .join(",");
}
