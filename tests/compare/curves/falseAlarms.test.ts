import { describe, expect, it } from "vitest";
import { compareCurves } from "../../../src/compare/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import { fractional, type RandomCurves, randomCurves, secondOrder } from "./randomCurves.js";

const PAIRS = 150;
const OF: RandomCurves = { curves: 30, fullWidthAtHalfMaximum: 15, correlation: () => 0 };
/** High in the first third of stance, none after the middle. */
const third = (percent: number) => 0.6 / (1 + Math.exp((percent - 40) / 5));

/** Share of pairs of sets in which any cluster is found, %. */
function found(
  seed: number,
  first: Partial<RandomCurves>,
  second: Partial<RandomCurves> = first,
  of = PAIRS,
): number {
  const random = seededRandom(seed);
  let pairs = 0;
  for (let pair = 0; pair < of; pair++) {
    const baseline = randomCurves(random, { ...OF, ...first });
    const changed = randomCurves(random, { ...OF, ...second });
    if (compareCurves(baseline, changed, { permutations: 300 }).clusters.length > 0) pairs++;
  }
  return (100 * pairs) / of;
}

// A seeded part of a study of 1000 pairs a cell (400 in the last), whose figures stand beside each. The level is 5 %; three
// standard errors of 150 pairs at 2.5 % are 3.8, so that a rate of twice the level would be seen.
describe("without a true difference at most one pair in twenty", () => {
  it.each([
    { curves: 30, r: "0", study: 0.4, correlation: () => 0 },
    { curves: 30, r: "0.3", study: 0.2, correlation: () => 0.3 },
    { curves: 30, r: "0.6", study: 0, correlation: () => 0.6 },
    { curves: 30, r: "0.6 in the first third", study: 0.7, correlation: third },
    { curves: 60, r: "0", study: 1.4, correlation: () => 0 },
    { curves: 60, r: "0.6 in the first third", study: 1.3, correlation: third },
  ])("$curves curves, correlation $r: $study % in the study", ({ curves, correlation }) =>
    expect(found(curves, { curves, correlation })).toBeLessThanOrEqual(6),
  );
  it("30 curves that spread half as much again as 60 others", () =>
    expect(found(5, { spread: 1.5 }, { curves: 60 })).toBeLessThanOrEqual(6));
});

// A rule of the correlation with the next curve alone let 30 to 89 in a hundred of these through (300
// or 150 pairs). Three standard errors of 100 pairs at 3.5 % are 5.5.
describe("2026-11-25: false alarms where curves resemble more than the next one", () => {
  it.each([
    { curves: 30, of: "second order 0.3, 0.4", autocorrelation: secondOrder(0.3, 0.4) },
    {
      curves: 30,
      of: "second order 0, 0.6: nothing between neighbours",
      autocorrelation: secondOrder(0, 0.6),
    },
    { curves: 20, of: "fractional noise, d 0.3", autocorrelation: fractional(0.3) },
    { curves: 30, of: "fractional noise, d 0.2", autocorrelation: fractional(0.2) },
    { curves: 30, of: "fractional noise, d 0.3", autocorrelation: fractional(0.3) },
  ])("$curves curves, $of", ({ curves, autocorrelation }) =>
    expect(found(curves, { curves, autocorrelation }, undefined, 100)).toBeLessThanOrEqual(9),
  );
});

it("is no rule that never speaks: a bump of 1.5 standard deviations", () => {
  const mean = (percent: number) => 1.5 * Math.exp(-0.5 * ((percent - 50) / 6) ** 2);
  const correlated = { curves: 60, correlation: () => 0.3 };
  expect(found(7, {}, { mean })).toBeGreaterThan(70);
  expect(found(8, correlated, { ...correlated, mean }, 75)).toBeGreaterThan(75);
});
