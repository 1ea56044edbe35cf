import { describe, expect, it } from "vitest";
import { compareCurves } from "../../../src/compare/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import { type RandomCurves, randomCurves } from "./randomCurves.js";

const PAIRS = 150;
const OF: RandomCurves = { curves: 30, fullWidthAtHalfMaximum: 15, correlation: () => 0 };
/** High in the first third of stance, none after the middle. */
const third = (percent: number) => 0.6 / (1 + Math.exp((percent - 40) / 5));

/** Share of pairs of sets in which any cluster is found, %. */
function found(seed: number, first: Partial<RandomCurves>, second: Partial<RandomCurves> = first): number {
  const random = seededRandom(seed);
  let pairs = 0;
  for (let pair = 0; pair < PAIRS; pair++) {
    const baseline = randomCurves(random, { ...OF, ...first });
    const changed = randomCurves(random, { ...OF, ...second });
    if (compareCurves(baseline, changed, { permutations: 300 }).clusters.length > 0) pairs++;
  }
  return (100 * pairs) / PAIRS;
}

// A seeded part of a study of 1000 pairs a cell, whose figures stand beside each. The level is 5 %; three standard errors of 150
// pairs at 2.5 % are 3.8, so that a rate of twice the level would be seen.
describe("without a true difference at most one pair in twenty", () => {
  it.each([
    { curves: 30, r: "0", study: 1.7, correlation: () => 0 },
    { curves: 30, r: "0.3", study: 0.8, correlation: () => 0.3 },
    { curves: 30, r: "0.6", study: 0.2, correlation: () => 0.6 },
    { curves: 30, r: "0.6 in the first third", study: 2.4, correlation: third },
    { curves: 60, r: "0", study: 2.7, correlation: () => 0 },
    { curves: 60, r: "0.3", study: 2.8, correlation: () => 0.3 },
    { curves: 60, r: "0.6", study: 1.6, correlation: () => 0.6 },
    { curves: 60, r: "0.6 in the first third", study: 2.6, correlation: third },
  ])("$curves curves, correlation $r: $study % in the study", ({ curves, correlation }) =>
    expect(found(curves, { curves, correlation })).toBeLessThanOrEqual(6),
  );
  it("30 curves that spread half as much again as 60 others", () =>
    expect(found(5, { spread: 1.5 }, { curves: 60 })).toBeLessThanOrEqual(6));
});

it("is no rule that never speaks: a bump of 1.5 standard deviations in 30 curves", () => {
  const mean = (percent: number) => 1.5 * Math.exp(-0.5 * ((percent - 50) / 6) ** 2);
  expect(found(7, {}, { mean })).toBeGreaterThan(90);
  expect(found(8, { correlation: () => 0.3 }, { correlation: () => 0.3, mean })).toBeGreaterThan(55);
});
