import { InvalidArgumentError } from "commander";
import type { Reader } from "./readers.js";

/** A value for each of two recordings. */
export interface Both<T> {
  readonly baseline: T;
  readonly changed: T;
}

/** Reads one value for both recordings, or two with a comma between; a comma between two digits is a decimal sign. */
export function both<T>(read: Reader<T>): Reader<Both<T>> {
  return (text) => {
    const parts = text.split(/(?<!\d),|,(?!\d)/);
    if (parts.length > 2)
      throw new InvalidArgumentError("It takes one value for both recordings, or two with a comma between.");
    const [baseline = "", changed = baseline] = parts;
    return { baseline: read(baseline), changed: read(changed) };
  };
}
