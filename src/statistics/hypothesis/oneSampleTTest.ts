import { type Sample, summaryOf } from "./sample.js";
import { type TTest, type TTestOptions, tTestOf, tTestSettings } from "./tTest.js";

/**
 * Tests the mean of one sample of independent values by Student's t.
 *
 * Formula: t = (m − m₀)/(s/√n), n − 1 degrees of freedom; interval m ± t s/√n.
 * Units: those of the values.
 * Limits: at least two independent, roughly normal values: strides of one trial are not independent, for them take
 * {@link meanInterval}.
 * Source: definition; a published interval and SciPy give the same.
 * @param sample - Values, or their number, mean and standard deviation.
 * @param options - {@link T_TEST_DEFAULTS} where left out; `against` is m₀.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`: no such sample; `out-of-range`: an option outside its range;
 *   `unknown-option`.
 * @example
 * oneSampleTTest([4, 6, 5, 7], { against: 4 }).t?.toFixed(3) // "2.324"
 */
export function oneSampleTTest(sample: Sample, options: TTestOptions = {}): TTest {
  const settings = tTestSettings(options);
  const { n, mean, sd } = summaryOf("sample", sample);
  return tTestOf(mean, sd / Math.sqrt(n), n - 1, settings);
}
