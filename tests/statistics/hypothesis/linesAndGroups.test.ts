import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analysisOfVariance, linearRegression, twoSampleTTest } from "../../../src/statistics/index.js";
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

const ints = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 3, maxLength: 20 });

describe("regression", () => {
  it("real-statistics.com, slope test: t −3.67092, 13 degrees of freedom, p 0.002822, r −0.71343", () => {
    const { inputs, expected, tolerance } = worked["regression.realstat"];
    const { slope, correlation } = linearRegression(inputs.x, inputs.y);
    expect(Math.abs((slope.t as number) - expected.t)).toBeLessThan(tolerance.t);
    expect(Math.abs((slope.p as number) - expected.p)).toBeLessThan(tolerance.p);
    expect(Math.abs((correlation as number) - expected.r)).toBeLessThan(tolerance.r);
    expect(slope.degreesOfFreedom).toBe(expected.df);
  });
  it("closing law: t = r √ν/√(1 − r²), and the line goes through the means", () =>
    fc.assert(
      fc.property(ints, (y) => {
        const x = y.map((_, i) => i);
        const { slope, intercept, correlation } = linearRegression(x, y);
        const m = y.reduce((sum, value) => sum + value, 0) / y.length;
        expect(intercept.estimate + (slope.estimate * (y.length - 1)) / 2).toBeCloseTo(m, 8);
        if (slope.t === null || correlation === null || Math.abs(correlation) > 0.999) return;
        expect(slope.t).toBeCloseTo(
          (correlation * Math.sqrt(y.length - 2)) / Math.sqrt(1 - correlation ** 2),
          6,
        );
      }),
    ));
  it("a line without noise: no t, no width", () => {
    const { slope, intercept, correlation, residualSd } = linearRegression([1, 2, 3, 4], [3, 5, 7, 9]);
    expect(slope.estimate).toBe(2);
    expect(slope.t).toBeNull();
    expect(intercept.interval).toMatchObject({ low: 1, high: 1 });
    expect(correlation).toBe(1);
    expect(residualSd).toBe(0);
    expect(linearRegression([1, 2, 3], [4, 4, 4]).correlation).toBeNull();
  });
  it("refuses one x throughout, two points, lists that do not belong together", () => {
    expect(() => linearRegression([2, 2, 2], [1, 2, 3])).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => linearRegression([1, 2], [1, 2])).toThrow(expect.objectContaining({ code: "too-short" }));
    expect(() => linearRegression([1, 2, 3], [1, 2])).toThrow();
  });
});

describe("one-way analysis of variance", () => {
  it("NIST/SEMATECH e-Handbook 7.4.3, resistors: F 9.59, p 0.00325, mean squares 13.949 and 1.454", () => {
    const { inputs, expected, tolerance } = worked["anova.nist.resistors"];
    const { F, p, between, within } = analysisOfVariance(inputs.groups);
    expect(Math.abs((F as number) - expected.F)).toBeLessThan(tolerance.F);
    expect(Math.abs((p as number) - expected.p)).toBeLessThan(tolerance.p);
    expect(Math.abs(between.meanSquare - expected.msBetween)).toBeLessThan(tolerance.msBetween);
    expect(Math.abs(within.meanSquare - expected.msWithin)).toBeLessThan(tolerance.msWithin);
    expect([between.degreesOfFreedom, within.degreesOfFreedom]).toEqual([2, 12]);
  });
  it("closing law: of two groups F is the square of the pooled t, with its p", () =>
    fc.assert(
      fc.property(ints, ints, (a, b) => {
        const { F, p } = analysisOfVariance([a, b]);
        const { t, p: own } = twoSampleTTest(a, b, { variances: "equal" });
        if (F === null || t === null) return;
        expect(Math.abs(F - t * t)).toBeLessThan(1e-9 * Math.max(1, F));
        expect(p).toBeCloseTo(own as number, 9);
      }),
    ));
  it("no spread within groups: no F", () =>
    expect(
      analysisOfVariance([
        [1, 1],
        [2, 2],
      ]),
    ).toMatchObject({ F: null, p: null }));
  it.each([
    ["too-short", [[1, 2]]],
    ["too-short", [[1], [2]]],
    ["too-short", [[1, 2], []]],
    ["wrong-type", null],
    ["not-finite", [[1, 2], [Number.NaN]]],
  ] as const)("refuses with %s: %o", (code, groups) =>
    expect(() => analysisOfVariance(groups as unknown as number[][])).toThrow(
      expect.objectContaining({ code }),
    ),
  );
});
