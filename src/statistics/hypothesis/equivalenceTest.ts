import {
  type Complete,
  type Fraction,
  fail,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import type { Interval } from "../meanInterval.js";
import { LARGEST } from "../requireValues.js";
import { shown } from "../shown.js";
import { pairedTTest } from "./pairedTTest.js";
import type { Sample } from "./sample.js";
import type { TTest } from "./tTest.js";
import { twoSampleTTest, type Variances } from "./twoSampleTTest.js";

/** How two conditions were sampled: the same runners in both, or others. */
export type Pairing = "independent" | "paired";

/** How a difference is tested against bounds. */
export interface DifferenceTestOptions {
  readonly pairing?: Pairing | undefined;
  /** Of independent samples. */
  readonly variances?: Variances | undefined;
  /** Largest probability of a false claim. */
  readonly alpha?: Fraction | undefined;
}

/** Independent samples, Welch's test, 5 %: common practice. */
export const DIFFERENCE_TEST_DEFAULTS: Complete<DifferenceTestOptions> = {
  pairing: "independent",
  variances: "unequal",
  alpha: 0.05,
};

/** One of two one-sided tests. */
export interface OneSidedTest {
  /** `null` where nothing spreads. */
  readonly t: number | null;
  /** `null` where t is. */
  readonly p: number | null;
}

/** Whether a difference lies inside bounds. */
export interface EquivalenceTest {
  /** Mean of the first less mean of the second. */
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  /** Whether the difference lies above the lower bound. */
  readonly aboveLow: OneSidedTest;
  /** Whether it lies below the upper bound. */
  readonly belowHigh: OneSidedTest;
  /** The larger of both; `null` where nothing spreads. */
  readonly p: number | null;
  readonly equivalent: boolean;
  /** The 1 − 2α interval: equivalence is its lying inside the bounds. */
  readonly interval: Interval;
}

/** What a difference is tested against. */
interface Bounds {
  readonly low: number;
  readonly high: number;
}

function requireBounds(bounds: Bounds): Bounds {
  const given: unknown = bounds;
  if (typeof given !== "object" || given === null) {
    fail("wrong-type", `bounds are ${shown(given)}; { low, high } is needed, in the unit of the values`, {
      argument: "bounds",
    });
  }
  const low = requireNumber("bounds.low", bounds.low, { from: -LARGEST });
  return { low, high: requireNumber("bounds.high", bounds.high, { above: low, to: LARGEST }) };
}

/** Two samples; pairs must be lists of values. */
type Samples = readonly [first: Sample, second: Sample];

/** Checks the options of a test against bounds. */
export function differenceSettings(options: DifferenceTestOptions): Complete<DifferenceTestOptions> {
  const settings = withDefaults<DifferenceTestOptions>(DIFFERENCE_TEST_DEFAULTS, options);
  requireOneOf("pairing", settings.pairing, ["independent", "paired"]);
  requireOneOf("variances", settings.variances, ["unequal", "equal"]);
  requireNumber("alpha", settings.alpha, { above: 0, below: 0.5 });
  return settings;
}

/** One-sided test of the difference of two samples against a bound, with the 1 − 2α interval. */
export function testAgainst(
  [first, second]: Samples,
  against: number,
  side: "less" | "greater",
  { pairing, variances, alpha }: Complete<DifferenceTestOptions>,
): TTest {
  const options = { against, side, level: 1 - 2 * alpha };
  if (pairing === "independent") return twoSampleTTest(first, second, { ...options, variances });
  if (!("length" in Object(first)) || !("length" in Object(second))) {
    fail(
      "wrong-type",
      "paired samples are given as lists of values: summaries do not tell which belong together",
      {
        argument: "first",
      },
    );
  }
  return pairedTTest(first as ArrayLike<number>, second as ArrayLike<number>, options);
}

/**
 * Tests by two one-sided t tests whether a difference of means lies inside bounds.
 *
 * Formula: t = (d − low)/SE above the lower bound and t = (d − high)/SE below the upper one; equivalent where both
 * probabilities are below α, which is where the 1 − 2α interval lies inside the bounds.
 * Units: those of the values.
 * Limits: bounds are to be stated before looking, in the unit of the values. Not to be shown different is no equivalence:
 * this is.
 * Source: Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657, from memory; the example of Lakens 2017, Soc. Psychol.
 * Personal Sci. 8:355.
 * @param first - Values, or their number, mean and standard deviation.
 * @param second - The same; subtracted.
 * @param bounds - `low` below `high`.
 * @param options - {@link DIFFERENCE_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no such samples; `out-of-range`: bounds
 *   that do not rise, an option outside its range; `unknown-option`.
 * @example
 * equivalenceTest([5.1, 4.9, 5.0, 5.2], [5.0, 5.1, 4.9, 5.1], { low: -0.5, high: 0.5 }).equivalent // true
 */
export function equivalenceTest(
  first: Sample,
  second: Sample,
  bounds: { readonly low: number; readonly high: number },
  options: DifferenceTestOptions = {},
): EquivalenceTest {
  const settings = differenceSettings(options);
  const { low, high } = requireBounds(bounds);
  const above = testAgainst([first, second], low, "greater", settings);
  const below = testAgainst([first, second], high, "less", settings);
  const { interval } = above;
  return {
    difference: above.estimate,
    standardError: above.standardError,
    degreesOfFreedom: above.degreesOfFreedom,
    aboveLow: { t: above.t, p: above.p },
    belowHigh: { t: below.t, p: below.p },
    p: above.p === null || below.p === null ? null : Math.max(above.p, below.p),
    equivalent: interval.low > low && interval.high < high,
    interval,
  };
}
