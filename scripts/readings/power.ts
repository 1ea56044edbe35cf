import { type CompareTrialsOptions, compareTrials } from "../../src/compare/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { PRIMARY_IDS } from "../../tests/compare/trialOf.js";
import { PRIMARIES } from "./falseAlarms.js";
import { type Condition, trialPair } from "./strides.js";

/** Per cent of pairs in which each component reads `higher` after a true rise, in the order of the primaries. */
export function power(
  condition: Condition,
  change: number,
  pairs: number,
  options: CompareTrialsOptions = {},
): readonly number[] {
  const random = seededRandom(
    1000 * condition.strides + 10 * condition.correlation + Math.round(1e6 * change),
  );
  const factors = Object.fromEntries(PRIMARY_IDS.map((id) => [id, 1 + change]));
  const found = [0, 0, 0];
  for (let pair = 0; pair < pairs; pair++) {
    const { components } = compareTrials(...trialPair(random, condition, factors), {
      metrics: PRIMARIES,
      resamples: 100,
      ...options,
    });
    components.forEach(({ reading }, k) => {
      if (reading === "higher") found[k] = (found[k] ?? 0) + 1;
    });
  }
  return found.map((count) => (100 * count) / pairs);
}

/** Per cent of pairs read `reduced` where the vertical force fell by 10 % and the braking impulse rose by `rise`. */
export function reducedShare(
  condition: Condition,
  rise: number,
  pairs: number,
  options: CompareTrialsOptions = {},
): number {
  const random = seededRandom(7_000_000 + 1000 * condition.strides + 10 * condition.correlation);
  const factors = { peakVerticalForce: 0.9, brakingImpulse: 1 + rise };
  let reduced = 0;
  for (let pair = 0; pair < pairs; pair++) {
    const comparison = compareTrials(...trialPair(random, condition, factors, 3), {
      metrics: PRIMARIES,
      resamples: 100,
      ...options,
    });
    if (comparison.overall.reading === "reduced") reduced++;
  }
  return (100 * reduced) / pairs;
}
