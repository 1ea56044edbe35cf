import { requireSameLength } from "../requireSameLength.js";
import type { Values } from "../requireValues.js";
import { oneSampleTTest } from "./oneSampleTTest.js";
import type { TTest, TTestOptions } from "./tTest.js";

/**
 * Tests the mean difference of pairs by Student's t.
 *
 * Formula: {@link oneSampleTTest} of first − second.
 * Units: those of the values.
 * Limits: at least two pairs; pairs independent of each other, such as one pair a runner, their differences roughly normal.
 * Source: definition; two published examples give the same.
 * @param first - One value a pair.
 * @param second - The other, in the same order; subtracted.
 * @param options - {@link T_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no two lists of as many finite numbers;
 *   `out-of-range`: an option outside its range; `unknown-option`.
 * @example
 * pairedTTest([5, 7, 9, 8], [4, 6, 6, 7]).estimate // 1.5
 */
export function pairedTTest(first: Values, second: Values, options: TTestOptions = {}): TTest {
  requireSameLength(first, second, 2);
  return oneSampleTTest(
    Array.from(first, (value, i) => value - (second[i] as number)),
    options,
  );
}
