import { mean } from "../mean.js";
import { requireSameLength } from "../requireSameLength.js";
import type { Values } from "../requireValues.js";
import { standardDeviation } from "../standardDeviation.js";

/** Standardised differences of pairs, by the spread of the differences or of the values. */
export interface PairedEffectSizes {
  /** In standard deviations of the differences; `null` where these do not spread. */
  readonly dz: number | null;
  /** In the mean of both standard deviations; `null` where neither side spreads. */
  readonly dav: number | null;
}

/**
 * Gives the two standardised mean differences of pairs, which must not be mistaken for each other.
 *
 * Formula: d_z = m/s_d, m and s_d mean and standard deviation of first − second; d_av = m/[(s₁ + s₂)/2]. With equal spreads
 * and a correlation r of the pairs, d_z = d_av/√[2 (1 − r)].
 * Units: none.
 * Limits: at least two pairs. d_z tells how sure the difference is rather than how large: it grows as the pairs resemble
 * each other.
 * Source: Lakens 2013, Front. Psychol. 4:863, from memory; SciPy's paired t divided by √n gives the same d_z.
 * @param first - One value a pair.
 * @param second - The other, in the same order; subtracted.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no two lists of as many finite numbers.
 * @example
 * pairedEffectSizes([5, 7, 9, 8], [4, 6, 6, 7]).dz?.toFixed(1) // "1.5"
 */
export function pairedEffectSizes(first: Values, second: Values): PairedEffectSizes {
  requireSameLength(first, second, 2);
  const differences = Array.from(first, (value, i) => value - (second[i] as number));
  const difference = mean(differences);
  const apart = standardDeviation(differences);
  const spread = (standardDeviation(first) + standardDeviation(second)) / 2;
  return {
    dz: apart === 0 ? null : difference / apart,
    dav: spread === 0 ? null : difference / spread,
  };
}
