import { type Complete, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { LARGEST } from "../requireValues.js";
import { type DifferenceTestOptions, differenceSettings, testAgainst } from "./equivalenceTest.js";
import type { Sample } from "./sample.js";

/** As {@link DifferenceTestOptions}, and which direction is the worse one. */
export interface NonInferiorityTestOptions extends DifferenceTestOptions {
  /** `higher`: a larger value is worse, as of most loads. */
  readonly worse?: "higher" | "lower" | undefined;
}

/** Independent samples, Welch's test, 5 %: common practice; more load is worse. */
export const NON_INFERIORITY_TEST_DEFAULTS: Complete<NonInferiorityTestOptions> = {
  pairing: "independent",
  variances: "unequal",
  alpha: 0.05,
  worse: "higher",
};

/** Whether one condition is worse than another by less than a margin. */
export interface NonInferiorityTest {
  /** Mean of the first less mean of the second. */
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  /** `null` where nothing spreads. */
  readonly t: number | null;
  /** `null` where t is. */
  readonly p: number | null;
  /** One-sided bound of the difference towards worse, at 1 − α. */
  readonly bound: number;
  readonly nonInferior: boolean;
}

/**
 * Tests whether a first condition is worse than a second by less than a margin.
 *
 * Formula: one-sided t test of the difference against the margin, t = (d − margin)/SE where higher is worse, against minus the
 * margin where lower is; non-inferior where the 1 − α bound of the difference lies on the near side of the margin.
 * Units: those of the values.
 * Limits: the margin is to be stated before looking, in the unit of the values. Non-inferior is not equivalent: it may be
 * better.
 * Source: one half of the two one-sided tests of Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657, from memory.
 * @param first - The condition in question: values, or their number, mean and standard deviation.
 * @param second - The one it is held against; subtracted.
 * @param margin - How much worse is allowed, above 0.
 * @param options - {@link NON_INFERIORITY_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no such samples; `out-of-range`: margin or
 *   an option outside its range; `unknown-option`.
 * @example
 * nonInferiorityTest([5.1, 4.9, 5.0, 5.2], [5.0, 5.1, 4.9, 5.1], 0.5).nonInferior // true
 */
export function nonInferiorityTest(
  first: Sample,
  second: Sample,
  margin: number,
  options: NonInferiorityTestOptions = {},
): NonInferiorityTest {
  const { worse, ...rest } = withDefaults<NonInferiorityTestOptions>(NON_INFERIORITY_TEST_DEFAULTS, options);
  requireOneOf("worse", worse, ["higher", "lower"]);
  requireNumber("margin", margin, { above: 0, to: LARGEST });
  const settings = differenceSettings(rest);
  const higher = worse === "higher";
  const { estimate, standardError, degreesOfFreedom, t, p, interval } = testAgainst(
    [first, second],
    higher ? margin : -margin,
    higher ? "less" : "greater",
    settings,
  );
  const bound = higher ? interval.high : interval.low;
  return {
    difference: estimate,
    standardError,
    degreesOfFreedom,
    t,
    p,
    bound,
    nonInferior: higher ? bound < margin : bound > -margin,
  };
}
