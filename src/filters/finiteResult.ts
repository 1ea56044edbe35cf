import { allFinite, fail } from "../units/index.js";

/**
 * Gives back a result after checking that nothing in it overflowed. Finite samples overflow where sums, differences or
 * squares of them pass 1.8 · 10³⁰⁸.
 *
 * @throws GaitKineticsError `not-finite`: the first number of the result that is not finite.
 */
export function finiteResult<S extends Float64Array>(result: S): S {
  // A finite sum is proof, and takes a tenth of the time of the search.
  if (allFinite(result)) return result;
  const index = result.findIndex((value) => !Number.isFinite(value));
  if (index >= 0) {
    fail(
      "not-finite",
      `the result is ${result[index]} at ${index}; samples are so large that they overflow, smaller ones are needed`,
      { argument: "samples", values: { index, given: String(result[index]) } },
    );
  }
  return result;
}
