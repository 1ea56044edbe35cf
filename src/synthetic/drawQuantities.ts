import type { Side } from "../recording/index.js";
import type { SeededRandom } from "../statistics/index.js";
import type { Complete } from "../units/index.js";
import { SYNTHETIC_STANCE_DEFAULTS, type SyntheticStance, type SyntheticVariability } from "./options.js";

/**
 * Starts a series of contacts whose quantities vary about their means.
 *
 * Formula: q = mean (1 + SD e), e of each foot and quantity a first-order autoregressive series of mean 0 and standard
 * deviation 1: eₖ = r eₖ₋₁ + √(1 − r²) n, k counting the contacts of that foot, n normal.
 * Every call draws one number a quantity, also where its SD is 0, so that one quantity's SD does not move another's numbers.
 */
export function drawQuantities(
  means: Readonly<Record<Side, Complete<SyntheticStance>>>,
  variability: Complete<SyntheticVariability>,
  correlation: number,
  random: SeededRandom,
): (side: Side) => Complete<SyntheticStance> {
  const names = Object.keys(SYNTHETIC_STANCE_DEFAULTS) as (keyof SyntheticStance)[];
  const state: Partial<Record<Side, number[]>> = {};
  const fresh = Math.sqrt(1 - correlation * correlation);
  return (side) => {
    const before = state[side];
    const deviations = names.map((_, i) => {
      const n = random.normal();
      return before === undefined ? n : correlation * (before[i] as number) + fresh * n;
    });
    state[side] = deviations;
    const drawn: Partial<Record<keyof SyntheticStance, number>> = {};
    names.forEach((name, i) => {
      drawn[name] = means[side][name] * (1 + variability[name] * (deviations[i] as number));
    });
    return drawn as Complete<SyntheticStance>;
  };
}
