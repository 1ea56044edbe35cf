import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  effectiveNumber,
  effectiveNumberOf,
  lagOneCorrelation,
  mean,
  median,
  quantile,
  standardDeviation,
} from "../../src/statistics/index.js";
import fixture from "../fixtures/statistics/samples.json" with { type: "json" };

const lists = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 60 });

describe.each(fixture.series.map((series, i) => ({ ...series, i })))("NumPy 2.4.6, series $i", (series) => {
  it("mean, standard deviation, median", () => {
    expect(mean(series.values)).toBeCloseTo(series.mean, 10);
    expect(standardDeviation(series.values)).toBeCloseTo(series.sd, 10);
    expect(median(series.values)).toBeCloseTo(series.median, 10);
  });
  it("quantile, rule `linear`", () => {
    for (const [p = 0, value = 0] of series.quantiles)
      expect(quantile(series.values, p)).toBeCloseTo(value, 10);
  });
  it("lag-one correlation by numpy.correlate", () =>
    expect(lagOneCorrelation(series.values)).toBeCloseTo(series.lagOne, 12));
});

it("Student 1908, sleep data: means 0.75 and 2.33", () => {
  expect(mean([0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2])).toBeCloseTo(0.75, 12);
  expect(mean([1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4])).toBeCloseTo(2.33, 12);
});

it("equal values: their mean is theirs to the last bit, no spread, no correlation", () => {
  const values = Array.from({ length: 37 }, () => 0.1);
  expect(mean(values)).toBe(0.1);
  expect(standardDeviation(values)).toBe(0);
  expect(lagOneCorrelation(values)).toBe(0);
});

it("spread survives an offset of 1e9", () =>
  expect(standardDeviation([1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16])).toBeCloseTo(Math.sqrt(30), 9));

it("property: mean and quantiles lie within the values, and shifting shifts them", () =>
  fc.assert(
    fc.property(lists, fc.double({ min: 0, max: 1, noNaN: true }), (values, p) => {
      const low = Math.min(...values);
      const high = Math.max(...values);
      const slack = 1e-9;
      for (const value of [mean(values), quantile(values, p)]) {
        expect(value).toBeGreaterThanOrEqual(low - slack);
        expect(value).toBeLessThanOrEqual(high + slack);
      }
      const shifted = values.map((value) => value + 100);
      expect(mean(shifted) - mean(values)).toBeCloseTo(100, 6);
      expect(quantile(shifted, p) - quantile(values, p)).toBeCloseTo(100, 6);
      expect(standardDeviation(shifted)).toBeCloseTo(standardDeviation(values), 4);
    }),
  ));

it("property: order does not move a quantile, and the arguments are left as they were", () =>
  fc.assert(
    fc.property(lists, fc.double({ min: 0, max: 1, noNaN: true }), (values, p) => {
      const before = [...values];
      expect(quantile([...values].reverse(), p)).toBe(quantile(values, p));
      expect(values).toEqual(before);
    }),
  ));

it("law: the lag-one correlation keeps within cos(pi/(n + 1)), and reversal leaves it", () =>
  fc.assert(
    fc.property(lists, (values) => {
      const r1 = lagOneCorrelation(values);
      expect(Math.abs(r1)).toBeLessThanOrEqual(Math.cos(Math.PI / (values.length + 1)) + 1e-9);
      expect(lagOneCorrelation([...values].reverse())).toBeCloseTo(r1, 8);
    }),
  ));

describe("effective number", () => {
  it("law: the limit of n / [1 + 2 sum (1 - k/n) r^k], the variance of a mean of a first-order autoregression", () => {
    const n = 1e6;
    for (const r of [0.1, 0.3, 0.6, 0.9]) {
      let inflation = 1;
      for (let k = 1; r ** k > 1e-18; k++) inflation += 2 * (1 - k / n) * r ** k;
      expect(effectiveNumber(n, r) / (n / inflation)).toBeCloseTo(1, 4);
    }
  });
  it("takes a negative correlation as none", () => expect(effectiveNumber(30, -0.4)).toBe(30));
  it("NumPy, the formula on the three series", () => {
    for (const { values, effective } of fixture.series) {
      expect(effectiveNumberOf(values)).toBeCloseTo(effective, 10);
    }
  });
});

it.each([
  ["no value", () => mean([]), "too-short"],
  ["one value", () => standardDeviation([1]), "too-short"],
  ["one value", () => lagOneCorrelation([1]), "too-short"],
  ["NaN", () => mean([1, Number.NaN]), "not-finite"],
  ["infinity", () => median([1, Number.NEGATIVE_INFINITY]), "not-finite"],
  ["a word", () => mean(["1"] as unknown as number[]), "wrong-type"],
  ["no list", () => mean(3 as unknown as number[]), "wrong-type"],
  ["null", () => mean(null as unknown as number[]), "wrong-type"],
  ["p above 1", () => quantile([1, 2], 1.1), "out-of-range"],
  ["p NaN", () => quantile([1, 2], Number.NaN), "not-finite"],
  ["n of 0", () => effectiveNumber(0, 0), "out-of-range"],
  ["r1 of 1", () => effectiveNumber(10, 1), "out-of-range"],
])("refuses %s", (_, call, code) => expect(call).toThrow(expect.objectContaining({ code })));

it("says where the bad value stands", () =>
  expect(() => mean([1, 2, Number.NaN])).toThrow("values holds NaN at place 2"));
