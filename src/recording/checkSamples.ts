import { fail } from "../units/index.js";
import { wrongType } from "./wrongType.js";

/**
 * Checks that samples are a `Float64Array` of finite numbers and gaps.
 *
 * @param argument - Its name.
 * @param samples - What was given.
 * @param what - What holds them, such as `channel "Fz"`.
 * @throws GaitKineticsError `wrong-type`: no `Float64Array`; `not-finite`: an infinite sample.
 */
export function checkSamples(argument: string, samples: unknown, what: string): void {
  if (!(samples instanceof Float64Array)) wrongType(argument, samples, "a Float64Array");
  for (let i = 0; i < samples.length; i++) {
    const sample = samples[i];
    if (sample === Number.POSITIVE_INFINITY || sample === Number.NEGATIVE_INFINITY) {
      fail(
        "not-finite",
        `${what} holds ${sample} at sample ${i}; a sample is a finite number, or NaN where none was recorded`,
        { argument, where: `sample ${i}`, values: { index: i, given: String(sample) } },
      );
    }
  }
}
