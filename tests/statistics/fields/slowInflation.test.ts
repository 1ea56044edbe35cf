import { describe, expect, it } from "vitest";
import { ratioOfMean, slowInflation } from "../../../src/statistics/fields/slowInflation.js";
import { fieldTTest } from "../../../src/statistics/index.js";
import fixture from "../../fixtures/statistics/slowInflation.json" with { type: "json" };

describe("SciPy 1.17.1, its discrete cosine transform and its gamma function", () => {
  it.each(fixture.examples)("curves that wander by $persistence", ({ sets, inflation }) => {
    const formed = inflation.map(() => true);
    const found = slowInflation(sets, formed, fixture.width);
    inflation.forEach((value, q) => {
      expect((found[q] as number) / value).toBeCloseTo(1, 9);
    });
  });
  it("independent curves hardly, wandering ones many times", () => {
    const most = fixture.examples.map(({ inflation }) => Math.max(...inflation));
    expect(most[0]).toBeLessThan(4);
    expect(most[2]).toBeGreaterThan(10);
  });
});

it.each(fixture.memory)(
  "variance of the mean of 200 000 of fractional noise, d $d, from its autocovariances: within 1 in 1000",
  ({ d, exact }) => expect(Math.abs(ratioOfMean(d) / exact - 1)).toBeLessThan(0.001),
);

it("scaling, mirroring and turning the order round change nothing", () => {
  const { sets } = fixture.examples[1] as (typeof fixture.examples)[number];
  const formed = new Array<boolean>(21).fill(true);
  const of = (change: (value: number) => number, order: (set: number[][]) => number[][] = (set) => set) =>
    slowInflation(
      sets.map((set) => order(set.map((curve) => curve.map(change)))),
      formed,
      6,
    );
  const plain = of((value) => value);
  for (const other of [
    of((value) => -1e6 * value),
    of((value) => 1e-6 * value),
    of(
      (value) => value,
      (set) => [...set].reverse(),
    ),
  ]) {
    other.forEach((value, q) => {
      expect(value / (plain[q] as number)).toBeCloseTo(1, 9);
    });
  }
});

it("a point that has no statistic, or curves that do not differ there, count as independent", () => {
  const { sets } = fixture.examples[2] as (typeof fixture.examples)[number];
  const still = sets.map((set) => set.map((curve) => curve.map((value, q) => (q === 20 ? 0 : value))));
  const { effectiveShare, neighbourShare, formed } = fieldTTest(
    still[0] as number[][],
    still[1] as number[][],
    { correlated: true },
  );
  expect([formed[20], effectiveShare[20], neighbourShare[20]]).toEqual([false, 1, 1]);
  expect(effectiveShare[0]).toBeLessThan(neighbourShare[0] as number);
});
