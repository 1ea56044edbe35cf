import { fail, isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions } from "../options/inputOptions.js";

/**
 * Runs the step from recording to ground reaction; where the vertical force points down, says which option turns it
 * over, by what was stated.
 *
 * @param ofPlatforms - Whether force platforms are decoded, whose sign is found where none is stated.
 * @throws GaitKineticsError what the step throws.
 */
export function explainingUpsideDown<T>(
  forceOn: ReadingOptions["forceOn"],
  ofPlatforms: boolean,
  step: () => T,
): T {
  try {
    return step();
  } catch (caught) {
    if (!isGaitKineticsError(caught) || caught.code !== "unknown-axes" || caught.argument !== "up")
      throw caught;
    const { code, argument, where, values, message } = caught;
    if (ofPlatforms) {
      if (forceOn !== "ground" && forceOn !== "runner") throw caught;
      const what = message.slice(0, message.indexOf(";"));
      const given = `${what}, as --force-on ${forceOn} was given: leave that out, or state the other`;
      return fail(code, given, { argument, where, values });
    }
    const advice =
      forceOn === "ground"
        ? "--force-on ground was given and turns it over: leave that out"
        : "state --force-on ground if the file holds the force on the ground";
    return fail(
      code,
      `the vertical force points down (mean ${Number(values?.mean).toFixed(0)} N); forces are those of the ground on the runner, up positive: ${advice}, or, for columns named by axis, state the other direction of the vertical one in --axes`,
      { argument, where, values },
    );
  }
}
