import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  equivalenceTest,
  holmAdjusted,
  nonInferiorityTest,
  pooledStandardDeviation,
  twoSampleTTest,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

const list = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 20 });

describe("equivalence by two one-sided tests", () => {
  it("Lakens 2017, Soc Psychol Personal Sci 8:355: bound d 0.43, t(182) −2.69, p 0.004", () => {
    const { inputs, expected, tolerance, recomputed } = worked["tost.lakens"];
    const [first, second] = [0, 1].map((i) => ({
      n: inputs.n[i] as number,
      mean: inputs.mean[i] as number,
      sd: inputs.sd[i] as number,
    })) as [{ n: number; mean: number; sd: number }, { n: number; mean: number; sd: number }];
    const sd = pooledStandardDeviation(first, second);
    expect(Math.abs(sd - expected.pooledSd)).toBeLessThan(tolerance.pooledSd);
    const bound = inputs.boundD * sd;
    expect(Math.abs(bound - expected.bound)).toBeLessThan(tolerance.bound);
    const found = equivalenceTest(first, second, { low: -bound, high: bound }, { variances: "equal" });
    expect(Math.abs((found.belowHigh.t as number) - expected.t)).toBeLessThan(tolerance.t);
    expect(found.degreesOfFreedom).toBe(expected.df);
    expect(Math.abs((found.p as number) - expected.p)).toBeLessThan(tolerance.p);
    expect(found.p).toBeCloseTo(recomputed.p, 12);
    expect(found.aboveLow.t).toBeCloseTo(recomputed.otherT, 10);
    expect(found.equivalent).toBe(true);
    const plain = twoSampleTTest(first, second, { variances: "equal" });
    expect(plain.t).toBeCloseTo(recomputed.difference.t, 10);
    expect(plain.p).toBeCloseTo(recomputed.difference.p, 11);
  });
  it("SciPy 1.17.1: both tests, p and the 90 % interval", () => {
    const { a, b, tost } = scipy.twoSample;
    const found = equivalenceTest(a, b, { low: -0.1, high: 0.1 });
    expect(found.difference).toBeCloseTo(tost.difference, 13);
    expect(found.standardError).toBeCloseTo(tost.se, 13);
    expect(found.aboveLow.t).toBeCloseTo(tost.tLower, 11);
    expect(found.belowHigh.t).toBeCloseTo(tost.tUpper, 11);
    expect(found.aboveLow.p).toBeCloseTo(tost.pLower, 14);
    expect(found.p).toBeCloseTo(tost.p, 13);
    expect(found.interval.low).toBeCloseTo(tost.ci90[0] as number, 13);
    expect(found.interval.high).toBeCloseTo(tost.ci90[1] as number, 13);
    expect(found.interval.level).toBeCloseTo(0.9, 12);
  });
  it("law: equivalent is where the larger p is below α", () =>
    fc.assert(
      fc.property(list, list, fc.integer({ min: 1, max: 60 }), (a, b, width) => {
        const { p, equivalent } = equivalenceTest(a, b, { low: -width, high: width });
        if (p === null || Math.abs(p - 0.05) < 1e-9) return;
        expect(equivalent).toBe(p < 0.05);
      }),
    ));
  it("pairs: the same runners in both conditions", () => {
    const found = equivalenceTest(
      [10, 20, 30, 40],
      [10.2, 19.9, 30.1, 39.9],
      { low: -1, high: 1 },
      { pairing: "paired" },
    );
    expect(found.equivalent).toBe(true);
    expect(found.degreesOfFreedom).toBe(3);
    expect(equivalenceTest([10, 20, 30, 40], [10.2, 19.9, 30.1, 39.9], { low: -1, high: 1 }).equivalent).toBe(
      false,
    );
  });
  it("refuses bounds that do not rise, and summaries as pairs", () => {
    expect(() => equivalenceTest([1, 2], [1, 2], { low: 1, high: 1 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    const summary = { n: 5, mean: 1, sd: 1 };
    expect(() => equivalenceTest(summary, summary, { low: -1, high: 1 }, { pairing: "paired" })).toThrow(
      expect.objectContaining({ code: "wrong-type" }),
    );
  });
});

describe("non-inferiority", () => {
  it("SciPy 1.17.1: the upper of the two one-sided tests, and mirrored the lower", () => {
    const { a, b, tost } = scipy.twoSample;
    const higher = nonInferiorityTest(a, b, 0.1);
    expect(higher.t).toBeCloseTo(tost.tUpper, 11);
    expect(higher.p).toBeCloseTo(tost.pUpper, 13);
    expect(higher.bound).toBeCloseTo(tost.ci90[1] as number, 13);
    expect(higher.nonInferior).toBe(true);
    const lower = nonInferiorityTest(a, b, 0.1, { worse: "lower" });
    expect(lower.t).toBeCloseTo(tost.tLower, 11);
    expect(lower.p).toBeCloseTo(tost.pLower, 14);
    expect(lower.bound).toBeCloseTo(tost.ci90[0] as number, 13);
  });
  it("law: equivalence inside ± a margin is non-inferiority both ways", () =>
    fc.assert(
      fc.property(list, list, fc.integer({ min: 1, max: 60 }), (a, b, margin) => {
        const { equivalent } = equivalenceTest(a, b, { low: -margin, high: margin });
        const both = (["higher", "lower"] as const).map(
          (worse) => nonInferiorityTest(a, b, margin, { worse }).nonInferior,
        );
        expect(equivalent).toBe(both[0] && both[1]);
      }),
    ));
  it("what is far better is non-inferior", () => {
    expect(nonInferiorityTest([1, 2, 1, 2], [9, 8, 9, 8], 0.5).nonInferior).toBe(true);
    expect(nonInferiorityTest([9, 8, 9, 8], [1, 2, 1, 2], 0.5).nonInferior).toBe(false);
  });
  it.each([0, -1, Number.NaN])("refuses the margin %d", (margin) =>
    expect(() => nonInferiorityTest([1, 2], [1, 2], margin)).toThrow(),
  );
});

describe("Holm", () => {
  it("NumPy 2.4.6: 0.001, 0.04, 0.03, 0.2, 0.012 become 0.005, 0.09, 0.09, 0.2, 0.048", () => {
    const { p, adjusted } = scipy.holm;
    expect(holmAdjusted(p)).toEqual(adjusted.map((value) => expect.closeTo(value, 14)));
  });
  it("properties: none falls, none exceeds Bonferroni's or 1, their order stays", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 20 }),
        (p) => {
          const adjusted = holmAdjusted(p);
          p.forEach((value, i) => {
            expect(adjusted[i]).toBeGreaterThanOrEqual(value);
            expect(adjusted[i]).toBeLessThanOrEqual(Math.min(1, p.length * value) + 1e-15);
            p.forEach((other, j) => {
              if (value < other) expect(adjusted[i]).toBeLessThanOrEqual(adjusted[j] as number);
            });
          });
        },
      ),
    ));
  it("refuses what is no probability", () => {
    expect(() => holmAdjusted([0.1, 1.2])).toThrow(
      expect.objectContaining({ code: "out-of-range", where: "place 1" }),
    );
    expect(() => holmAdjusted([])).toThrow(expect.objectContaining({ code: "too-short" }));
  });
});
