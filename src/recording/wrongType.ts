import { fail } from "../units/index.js";

/**
 * Refuses an argument of the wrong type.
 *
 * @param argument - Its name.
 * @param given - What was given.
 * @param needed - What is needed, in words.
 * @throws GaitKineticsError `wrong-type` always.
 */
export function wrongType(argument: string, given: unknown, needed: string): never {
  const is = given === null ? "null" : Array.isArray(given) ? "an array" : typeof given;
  fail("wrong-type", `${argument} is ${is}; ${needed} is needed`, { argument, values: { given: is } });
}
