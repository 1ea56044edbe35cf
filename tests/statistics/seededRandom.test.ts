import { expect, it } from "vitest";
import { lagOneCorrelation, mean, seededRandom, standardDeviation } from "../../src/statistics/index.js";
import fixture from "../fixtures/statistics/samples.json" with { type: "json" };

const draw = (count: number, next: () => number) => Array.from({ length: count }, next);

/** Largest distance between the values' own distribution and the uniform one, times √n: 1.95 is passed by chance once in 1000. */
function uniformDistance(values: readonly number[]): number {
  const ordered = [...values].sort((a, b) => a - b);
  const n = ordered.length;
  return Math.max(...ordered.map((value, i) => Math.max((i + 1) / n - value, value - i / n))) * Math.sqrt(n);
}

it("the same seed gives the same numbers, another seed others", () => {
  const first = seededRandom(42);
  const again = seededRandom(42);
  expect(draw(100, first.uniform)).toEqual(draw(100, again.uniform));
  expect(draw(100, first.normal)).toEqual(draw(100, again.normal));
  expect(draw(100, seededRandom(43).uniform)).not.toEqual(draw(100, seededRandom(42).uniform));
});

it("uniform: from 0 to below 1, level (Kolmogorov's distance), and without correlation", () => {
  const values = draw(20_000, seededRandom(1).uniform);
  expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
  expect(uniformDistance(values)).toBeLessThan(1.95);
  expect(Math.abs(lagOneCorrelation(values)) * Math.sqrt(20_000)).toBeLessThan(3.3);
});

it("the first numbers of neighbouring seeds are as level and as free of each other as those of one stream", () => {
  for (const skip of [0, 1, 2]) {
    const firsts = Array.from(
      { length: 4000 },
      (_, seed) => draw(skip + 1, seededRandom(seed).uniform)[skip] as number,
    );
    expect(uniformDistance(firsts)).toBeLessThan(1.95);
    expect(Math.abs(lagOneCorrelation(firsts)) * Math.sqrt(4000)).toBeLessThan(3.3);
  }
});

it("normal: SciPy's quantiles at each twentieth hold a twentieth of the numbers (chi-square of 20 cells below 43.8, p 0.001)", () => {
  const n = 20_000;
  const counts = Array.from({ length: 20 }, () => 0);
  const values = draw(n, seededRandom(5).normal);
  for (const value of values) {
    const cell = fixture.normal.edges.findIndex((edge) => value < edge);
    counts[cell < 0 ? 19 : cell] = (counts[cell < 0 ? 19 : cell] as number) + 1;
  }
  const square = counts.reduce((sum, count) => sum + (count - n / 20) ** 2 / (n / 20), 0);
  expect(square).toBeLessThan(43.8);
  expect(Math.abs(mean(values)) * Math.sqrt(n)).toBeLessThan(3.3);
  expect(Math.abs(standardDeviation(values) - 1) * Math.sqrt(2 * n)).toBeLessThan(3.3);
  expect(Math.abs(lagOneCorrelation(values)) * Math.sqrt(n)).toBeLessThan(3.3);
});

it("pinned: the first numbers of seed 7, so that a change of generator shows", () => {
  const random = seededRandom(7);
  expect(draw(2, random.uniform)).toEqual([0.6505903714116118, 0.6658435082580504]);
  expect(random.normal()).toBeCloseTo(-0.19242654306890072, 12);
});

it.each([-1, 0.5, 2 ** 32])("refuses the seed %d", (seed) =>
  expect(() => seededRandom(seed)).toThrow(expect.objectContaining({ code: "out-of-range" })),
);
it("refuses a word as seed", () =>
  expect(() => seededRandom("7" as unknown as number)).toThrow(
    expect.objectContaining({ code: "wrong-type" }),
  ));
