import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  mean,
  meanInterval,
  randomEffectsMean,
  seededRandom,
  standardDeviation,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/randomEffects.json" with { type: "json" };

describe("SciPy 1.17.1's maximum of the restricted likelihood, interval of Knapp and Hartung", () => {
  it.each(scipy.cases)("$name", (known) => {
    const found = randomEffectsMean(known.values, known.variances, { narrower: "by chance" });
    expect(found.betweenVariance).toBeCloseTo(known.betweenVariance, 6);
    expect(found.mean).toBeCloseTo(known.mean, 7);
    expect(found.standardError).toBeCloseTo(known.error, 7);
    expect(found.interval.low).toBeCloseTo(known.low, 6);
    expect(found.interval.high).toBeCloseTo(known.high, 6);
    expect(found.degreesOfFreedom).toBe(known.values.length - 1);
    expect(found.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
  it.each(scipy.cases)("$name: never narrower than the known variances make it", (known) => {
    const { standardError } = randomEffectsMean(known.values, known.variances);
    expect(standardError).toBeCloseTo(Math.max(known.plainError, known.error), 7);
  });
});

it("thirteen trials of a vaccine (Viechtbauer 2010, J. Stat. Softw. 36(3), from memory): −0.7145, τ² 0.3132, interval −1.1084 to −0.3206", () => {
  const [vaccine] = scipy.cases;
  const found = randomEffectsMean(vaccine?.values ?? [], vaccine?.variances ?? []);
  expect(found.mean.toFixed(4)).toBe("-0.7145");
  expect(found.betweenVariance.toFixed(4)).toBe("0.3132");
  expect(found.standardError.toFixed(4)).toBe("0.1808");
  expect(found.interval.low.toFixed(4)).toBe("-1.1084");
  expect(found.interval.high.toFixed(4)).toBe("-0.3206");
});

const numbers = fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 3, maxLength: 15 });

it("law: with equal variances it is Student's interval of the values, or that of the variances where it is wider", () =>
  fc.assert(
    fc.property(numbers, fc.double({ min: 0.01, max: 10, noNaN: true }), (values, variance) => {
      const found = randomEffectsMean(
        values,
        values.map(() => variance),
      );
      const n = values.length;
      const error = Math.sqrt(Math.max(standardDeviation(values) ** 2, variance) / n);
      expect(found.mean).toBeCloseTo(mean(values), 9);
      expect(found.standardError / error).toBeCloseTo(1, 5);
    }),
  ));

it("without variances of their own it is the plain interval of values that do not follow each other", () => {
  const values = [3, -1, 4, -2, 5, -3, 2];
  const plain = meanInterval(values, 0.9).interval;
  const found = randomEffectsMean(
    values,
    values.map(() => 0),
    { level: 0.9 },
  );
  expect(found.interval.low).toBeCloseTo(plain?.low ?? Number.NaN, 10);
  expect(found.interval.high).toBeCloseTo(plain?.high ?? Number.NaN, 10);
  expect(found.betweenVariance).toBeCloseTo(standardDeviation(values) ** 2, 9);
});

it("values that are all alike and sure give an interval of no width", () =>
  expect(randomEffectsMean([2, 2, 2], [0, 0, 0])).toMatchObject({
    mean: 2,
    standardError: 0,
    betweenVariance: 0,
    interval: { low: 2, high: 2 },
  }));

it("one sure value among unsure ones: finite, and the sure one weighs most", () => {
  const found = randomEffectsMean([1, 2, 3], [0, 100, 100]);
  expect(Number.isFinite(found.standardError)).toBe(true);
  expect(Math.abs(found.mean - 1)).toBeLessThan(1);
});

it("property: moving all values moves the mean, scaling scales it, the order does not matter", () =>
  fc.assert(
    fc.property(numbers, fc.double({ min: 0.1, max: 9, noNaN: true }), (values, scale) => {
      const variances = values.map((_, i) => 0.5 + i);
      const one = randomEffectsMean(values, variances);
      const moved = randomEffectsMean(
        values.map((value) => scale * value + 7).reverse(),
        variances.map((variance) => scale ** 2 * variance).reverse(),
      );
      expect(moved.mean).toBeCloseTo(scale * one.mean + 7, 4);
      expect(moved.standardError).toBeCloseTo(scale * one.standardError, 4);
    }),
  ));

it("covers: 99 % intervals of 8 members with spread and unequal variances miss in about one of a hundred", () => {
  const random = seededRandom(5);
  let missed = 0;
  const times = 4000;
  for (let i = 0; i < times; i++) {
    const variances = Array.from({ length: 8 }, () => (0.3 + 1.5 * random.uniform()) ** 2);
    const values = variances.map((variance) => 0.8 * random.normal() + Math.sqrt(variance) * random.normal());
    const { low, high } = randomEffectsMean(values, variances, { level: 0.99 }).interval;
    if (low > 0 || high < 0) missed++;
  }
  // Measured: 0.8 %.
  expect(missed / times).toBeLessThan(0.015);
  expect(missed / times).toBeGreaterThan(0.002);
});

it.each([
  [[1], [1], "too-short"],
  [[1, 2], [1], "too-short"],
  [[1, 2, 3], [1, 2], "unequal-lengths"],
  [[1, 2], [1, -1], "out-of-range"],
  [[1, Number.NaN], [1, 1], "not-finite"],
])("refuses %o with %o: %s", (values, variances, code) =>
  expect(() => randomEffectsMean(values, variances)).toThrow(expect.objectContaining({ code })),
);
it("refuses options it does not know", () => {
  expect(() => randomEffectsMean([1, 2], [1, 1], { level: 1 })).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
  expect(() => randomEffectsMean([1, 2], [1, 1], { narrower: "sometimes" as "never" })).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
