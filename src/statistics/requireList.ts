import { fail } from "../units/index.js";
import { shown } from "./shown.js";

/** Checks that an argument is a list, of whatever: an array, a typed array, or an object with a length. */
export function requireList<T>(argument: string, list: ArrayLike<T>, of: string): void {
  const given: unknown = list;
  if (
    typeof given === "object" &&
    given !== null &&
    Number.isSafeInteger((given as { length?: unknown }).length)
  )
    return;
  fail("wrong-type", `${argument} is ${shown(given)}; a list of ${of} is needed`, { argument });
}
