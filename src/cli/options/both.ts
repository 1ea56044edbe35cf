import { InvalidArgumentError } from "commander";
import type { Reader } from "./readers.js";

/** A value for each of two recordings. */
export interface Both<T> {
  readonly baseline: T;
  readonly changed: T;
}

/**
 * Reads one value for both recordings, or two with a comma between. Beside another comma, one between two digits is a
 * decimal sign; alone, it may be either and is refused.
 */
export function both<T>(read: Reader<T>): Reader<Both<T>> {
  return (text) => {
    const parts = text.split(/(?<!\d),|,(?!\d)/);
    if (parts.length > 2)
      throw new InvalidArgumentError("It takes one value for both recordings, or two with a comma between.");
    const [baseline = "", changed = baseline] = parts;
    if (parts.length === 1) refuseAmbiguous(text);
    return { baseline: read(baseline), changed: read(changed) };
  };
}

/** Reads one text for both recordings, or two with a semicolon between: a comma may stand in each. */
export function bothTexts<T>(read: Reader<T>): Reader<Both<T>> {
  return (text) => {
    const [baseline = "", changed = baseline, ...more] = text.split(";");
    if (more.length > 0) {
      throw new InvalidArgumentError(
        "It takes one text for both recordings, or two with a semicolon between.",
      );
    }
    return { baseline: read(baseline), changed: read(changed) };
  };
}

function refuseAmbiguous(text: string): void {
  if (!/\d,\d/.test(text)) return;
  const [, first, second, unit] = /^\s*([+-]?\d+),(\d+)(\D*)$/.exec(text) ?? [];
  const plain = unit?.trimEnd() ?? "";
  const [one, two] =
    first === undefined
      ? ["70.8 kg", "70 kg, 80 kg"]
      : [`${first}.${second}${plain}`, `${first}${plain}, ${second}${plain}`];
  throw new InvalidArgumentError(
    `Its comma may be a decimal sign or stand between two values; write either${first === undefined ? ", such as" : ""} "${one}" or "${two}".`,
  );
}
