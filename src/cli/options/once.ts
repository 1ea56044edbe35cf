import { InvalidArgumentError } from "commander";
import type { Reader } from "./readers.js";

/** Reads an option that may be given once: of two values one would be lost unsaid. */
export function once<T>(read: Reader<T>): Reader<T> {
  let given: string | null = null;
  return (text) => {
    if (given !== null) {
      throw new InvalidArgumentError(`It is given twice, as '${given}' before; it may be given once.`);
    }
    given = text;
    return read(text);
  };
}
