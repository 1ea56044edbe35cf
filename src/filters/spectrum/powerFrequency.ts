import { type Fraction, fail, type Hertz, requireNumber } from "../../units/index.js";
import type { PowerSpectrum } from "./powerSpectralDensity.js";

/**
 * Gives the frequency below which a share of the power lies.
 *
 * Formula: where the cumulative sum of the spectrum, each frequency counted in full, reaches the share; linear between
 * frequencies.
 * Units: Hz.
 * Limits: known to about the step between frequencies. A small fast part may matter more than its power: 99 % of the
 * power of a trajectory is not 99 % of that of its acceleration.
 * Source: common practice; worked as NumPy's `interp` on the cumulative sum.
 * @param spectrum - From {@link powerSpectralDensity}.
 * @param share - Of the whole power, above 0 and up to 1, such as 0.99.
 * @throws GaitKineticsError `out-of-range`: share, or a spectrum without power; `wrong-type`; `not-finite`.
 * @example
 * powerFrequency({ frequency: new Float64Array([0, 1, 2]), density: new Float64Array([2, 1, 1]), segments: 1, segmentLength: 4, cautions: [] }, 0.75) // 1
 */
export function powerFrequency(spectrum: PowerSpectrum, share: Fraction): Hertz {
  requireNumber("share", share, { above: 0, to: 1 });
  const { frequency, density } = spectrum;
  const total = density.reduce((sum, value) => sum + value, 0);
  if (!(total > 0))
    fail("out-of-range", `the spectrum has a power of ${total}; it must be above 0`, {
      argument: "spectrum",
    });
  const wanted = share * total;
  let before = 0;
  for (let k = 0; k < density.length; k++) {
    const sum = before + (density[k] as number);
    if (sum >= wanted) {
      const last = frequency[k] as number;
      return k === 0
        ? last
        : last - ((sum - wanted) / (sum - before)) * (last - (frequency[k - 1] as number));
    }
    before = sum;
  }
  return frequency[frequency.length - 1] as number;
}
