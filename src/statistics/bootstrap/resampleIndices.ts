import { requireNumber } from "../../units/index.js";
import { seededRandom } from "../seededRandom.js";

/** As many as any interval here is drawn from. */
export const MOST_RESAMPLES = 1_000_000;

/**
 * Draws places with replacement: each row a resample of a list of `n`.
 *
 * Formula: ⌊n u⌋ for uniform u of {@link seededRandom}.
 * Units: none.
 * Limits: the same seed gives the same places on every engine.
 * Source: definition.
 * @param n - Length of the list, from 1 to 4294967295.
 * @param resamples - How many rows, from 1 to 1 000 000.
 * @param seed - Whole number from 0 to 4294967295.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * resampleIndices(5, 2, 1).length // 2
 */
export function resampleIndices(n: number, resamples: number, seed: number): readonly Uint32Array[] {
  requireNumber("n", n, { from: 1, to: 4294967295, whole: true });
  requireNumber("resamples", resamples, { from: 1, to: MOST_RESAMPLES, whole: true });
  const random = seededRandom(seed);
  return Array.from({ length: resamples }, () => {
    const row = new Uint32Array(n);
    for (let i = 0; i < n; i++) row[i] = Math.floor(random.uniform() * n);
    return row;
  });
}
