import { fail, isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions } from "../options/inputOptions.js";

/**
 * Runs an analysis; where it finds no contact and it was stated on whom the force acts, says that this may be why.
 *
 * @throws GaitKineticsError what the analysis throws.
 */
export function explainingNoContact<T>(forceOn: ReadingOptions["forceOn"], step: () => T): T {
  try {
    return step();
  } catch (caught) {
    if (!isGaitKineticsError(caught) || caught.code !== "no-contact") throw caught;
    if (forceOn !== "ground" && forceOn !== "runner") throw caught;
    const { code, message, argument, where, values } = caught;
    const advice = `--force-on ${forceOn} was given: with the other, or without it, the force is turned over`;
    return fail(code, `${message}; ${advice}`, { argument, where, values });
  }
}
