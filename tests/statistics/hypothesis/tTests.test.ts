import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  differenceInterval,
  oneSampleTTest,
  pairedTTest,
  pooledStandardDeviation,
  type SampleSummary,
  studentTQuantile,
  twoSampleTTest,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

const near = (value: number | null, printed: number, tolerance: number) =>
  expect(Math.abs((value ?? Number.NaN) - printed)).toBeLessThanOrEqual(tolerance);
const summaries = (inputs: { n: number[]; mean: number[]; sd: number[] }) =>
  [0, 1].map(
    (i): SampleSummary => ({
      n: inputs.n[i] as number,
      mean: inputs.mean[i] as number,
      sd: inputs.sd[i] as number,
    }),
  ) as [SampleSummary, SampleSummary];

describe("two samples, from summaries", () => {
  it("NIST/SEMATECH e-Handbook 1.3.5.3: pooled t −12.62059, 326 degrees of freedom, SD 6.34260, critical 1.9673; Welch −12.94627, 136.875", () => {
    const { inputs, expected, tolerance, recomputed } = worked["ttest.nist"];
    const [first, second] = summaries(inputs);
    const pooled = twoSampleTTest(first, second, { variances: "equal" });
    near(pooled.t, expected.pooled.t, tolerance.t);
    expect(pooled.degreesOfFreedom).toBe(expected.pooled.df);
    near(pooledStandardDeviation(first, second), expected.pooled.pooledSd, tolerance.pooledSd);
    near(studentTQuantile(0.975, 326), expected.pooled.critical, tolerance.critical);
    const welch = twoSampleTTest(first, second);
    expect(welch.t).toBeCloseTo(recomputed.welch.t, 10);
    expect(welch.degreesOfFreedom).toBeCloseTo(recomputed.welch.df, 9);
    expect((welch.p as number) / recomputed.welch.p).toBeCloseTo(1, 10);
    expect((pooled.p as number) / recomputed.pooled.p).toBeCloseTo(1, 10);
    expect(welch.interval.low).toBeCloseTo(recomputed.welch.interval[0] as number, 10);
  });
  it("NAG g07ca: pooled 1.8403, Welch 2.5922, 7.9925 degrees of freedom, p 0.0320, 0.4410 to 7.5590", () => {
    const { inputs, expected, tolerance } = worked["ttest.nag"];
    const [first, second] = summaries(inputs);
    for (const [variances, printed] of [
      ["equal", expected.pooled],
      ["unequal", expected.welch],
    ] as const) {
      const found = twoSampleTTest(first, second, { variances });
      near(found.t, printed.t, tolerance.t);
      near(found.degreesOfFreedom, printed.df, tolerance.df);
      near(found.p, printed.p, tolerance.p);
      near(found.interval.low, printed.interval[0] as number, tolerance.interval);
      near(found.interval.high, printed.interval[1] as number, tolerance.interval);
    }
  });
  it("Becker, Colorado Springs: Welch t 9.16, 73.89 degrees of freedom", () => {
    const { inputs, expected, tolerance } = worked["effect.becker"];
    const found = twoSampleTTest(...summaries(inputs));
    near(found.t, expected.welchT, tolerance.abs);
    near(found.degreesOfFreedom, expected.welchDf, tolerance.abs);
  });
});

describe("two samples, from values", () => {
  it("Student 1908, sleep data as R prints it: Welch −1.8608, 17.776, p 0.07939, −3.3654832 to 0.2054832", () => {
    const { inputs, expected, tolerance } = worked["ttest.sleep"];
    const found = twoSampleTTest(inputs.a, inputs.b);
    near(found.t, expected.t, tolerance.t);
    near(found.degreesOfFreedom, expected.df, tolerance.df);
    near(found.p, expected.p, tolerance.p);
    near(found.interval.low, expected.interval[0] as number, tolerance.interval);
    near(found.interval.high, expected.interval[1] as number, tolerance.interval);
  });
  it.each([
    ["ttest.flavor.pooled", "real-statistics.com: t 2.176768, one-sided p 0.021526"],
    ["ttest.flavor.welch", "real-statistics.com: t 3.454842, df 9.83928, one-sided p 0.003162"],
    ["ttest.placebo.pooled", "Columbia W2024 notes: t 3.4456, one-sided p 0.003136"],
    ["ttest.placebo.welch", "Columbia W2024 notes: t 3.4456, df 9.48, one-sided p 0.003391"],
  ] as const)("%s, %s", (id, _printed) => {
    const { inputs, expected, tolerance } = worked[id];
    const found = twoSampleTTest(inputs.a, inputs.b, {
      variances: inputs.equalVariances ? "equal" : "unequal",
      side: "greater",
    });
    near(found.t, expected.t, tolerance.t);
    near(found.p, expected.p, tolerance.p);
    near(found.degreesOfFreedom, expected.df, "df" in tolerance ? tolerance.df : 0);
  });
  it("Online Statistics Education, animal research: pooled interval 0.29 to 2.65", () => {
    const { inputs, expected, tolerance } = worked["interval.twosample"];
    const { interval } = twoSampleTTest(inputs.a, inputs.b, { variances: "equal" });
    near(interval.low, expected.interval[0] as number, tolerance.abs);
    near(interval.high, expected.interval[1] as number, tolerance.abs);
  });
  it("SciPy 1.17.1 on samples of 28 and 24: Welch and Student", () => {
    const { a, b, welch, student } = scipy.twoSample;
    const found = twoSampleTTest(a, b);
    expect(found.t).toBeCloseTo(welch.t, 11);
    expect(found.degreesOfFreedom).toBeCloseTo(welch.df, 10);
    expect(found.p).toBeCloseTo(welch.p, 12);
    expect(found.interval.low).toBeCloseTo(welch.ci95[0] as number, 13);
    expect(found.interval.high).toBeCloseTo(welch.ci95[1] as number, 13);
    const pooled = twoSampleTTest(a, b, { variances: "equal" });
    expect(pooled.t).toBeCloseTo(student.t, 11);
    expect(pooled.p).toBeCloseTo(student.p, 12);
  });
});

describe("pairs and one sample", () => {
  it("real-statistics.com, weight: t 6.6896995, 14 degrees of freedom, p 1.028e-5", () => {
    const { inputs, expected, tolerance } = worked["ttest.paired.weight"];
    const found = pairedTTest(inputs.a, inputs.b);
    near(found.t, expected.t, tolerance.t);
    near(found.p, expected.p, tolerance.p);
    expect(found.degreesOfFreedom).toBe(expected.df);
  });
  it("Columbia W2024 notes, mileage: t 4.4721, one-sided p 0.000775", () => {
    const { inputs, expected, tolerance } = worked["ttest.paired.mileage"];
    const found = pairedTTest(inputs.a, inputs.b, { side: "greater" });
    near(found.t, expected.t, tolerance.t);
    near(found.p, expected.p, tolerance.p);
  });
  it("Student 1908, sleep data, paired: t −4.0621, p 0.002833, same formula", () => {
    const { inputs, recomputed } = worked["ttest.sleep"];
    const found = pairedTTest(inputs.a, inputs.b);
    expect(found.t).toBeCloseTo(recomputed.pairedT, 11);
    expect(found.p).toBeCloseTo(recomputed.pairedP, 13);
  });
  it("Boston University BS704, Framingham pressures: interval −12.4 to 1.8", () => {
    const { inputs, expected, tolerance } = worked["interval.paired.pressure"];
    const { interval } = pairedTTest(inputs.a, inputs.b);
    near(interval.low, expected.interval[0] as number, tolerance.abs);
    near(interval.high, expected.interval[1] as number, tolerance.abs);
  });
  it("University of Minnesota 3011, Example 16.1: interval of a mean 21.52709 to 29.80625", () => {
    const { inputs, expected, tolerance } = worked["interval.mean"];
    const { interval } = oneSampleTTest(inputs.y);
    near(interval.low, expected.interval[0] as number, tolerance.abs);
    near(interval.high, expected.interval[1] as number, tolerance.abs);
  });
  it("SciPy 1.17.1, twelve pairs", () => {
    const { a, b, t, df, p } = scipy.paired;
    const found = pairedTTest(a, b);
    expect(found.t).toBeCloseTo(t, 11);
    expect(found.degreesOfFreedom).toBe(df);
    expect(found.p).toBeCloseTo(p, 13);
  });
});

const list = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 30 });
describe("laws", () => {
  it("exchanging the samples mirrors everything but p", () =>
    fc.assert(
      fc.property(list, list, (a, b) => {
        const one = twoSampleTTest(a, b);
        const other = twoSampleTTest(b, a);
        expect(other.estimate).toBeCloseTo(-one.estimate, 10);
        expect(other.interval.low).toBeCloseTo(-one.interval.high, 8);
        if (one.t !== null) expect(other.p).toBeCloseTo(one.p as number, 10);
      }),
    ));
  it("values and their summary give the same", () =>
    fc.assert(
      fc.property(list, (a) => {
        const n = a.length;
        const m = a.reduce((sum, x) => sum + x, 0) / n;
        const sd = Math.sqrt(a.reduce((sum, x) => sum + (x - m) ** 2, 0) / (n - 1));
        const one = oneSampleTTest(a, { against: 3 });
        const other = oneSampleTTest({ n, mean: m, sd }, { against: 3 });
        expect(other.standardError).toBeCloseTo(one.standardError, 9);
        expect(other.estimate).toBeCloseTo(one.estimate, 9);
      }),
    ));
  it("the interval leaves out exactly what is rejected: p below 0.05 where 0 is outside", () =>
    fc.assert(
      fc.property(list, list, (a, b) => {
        const { p, interval } = twoSampleTTest(a, b);
        if (p === null || Math.abs(p - 0.05) < 1e-9) return;
        expect(p < 0.05).toBe(interval.low > 0 || interval.high < 0);
      }),
    ));
  it("one side's p and the other's add up to one, twice the smaller is the two-sided", () => {
    const { a, b } = scipy.twoSample;
    const [less, greater, both] = (["less", "greater", "two-sided"] as const).map(
      (side) => twoSampleTTest(a, b, { side }).p as number,
    ) as [number, number, number];
    expect(less + greater).toBeCloseTo(1, 14);
    expect(2 * Math.min(less, greater)).toBeCloseTo(both, 14);
  });
  it("of values whose neighbours do not resemble each other it is the interval of differences of the comparison", () => {
    const [a, b] = [
      [4, 6, 4.5, 6.2, 3.9, 5.5],
      [1, 3, 1.2, 3.3, 0.7],
    ];
    const { interval } = differenceInterval(a, b, 0.95);
    const welch = twoSampleTTest(a, b);
    expect(interval?.low).toBeCloseTo(welch.interval.low, 12);
    expect(interval?.high).toBeCloseTo(welch.interval.high, 12);
  });
});

it("without any spread there is no t and no p, and the interval has no width", () => {
  for (const found of [
    oneSampleTTest([2, 2, 2]),
    pairedTTest([3, 4], [1, 2]),
    twoSampleTTest([3, 3], [1, 1]),
  ])
    expect(found).toMatchObject({ estimate: 2, t: null, p: null, interval: { low: 2, high: 2 } });
});

it.each([
  ["too-short", () => oneSampleTTest([1])],
  ["out-of-range", () => oneSampleTTest({ n: 1, mean: 0, sd: 1 })],
  ["out-of-range", () => oneSampleTTest({ n: 5, mean: 0, sd: -1 })],
  ["not-finite", () => oneSampleTTest({ n: 5, mean: Number.NaN, sd: 1 })],
  ["wrong-type", () => oneSampleTTest({} as SampleSummary)],
  ["wrong-type", () => oneSampleTTest(null as unknown as number[])],
  ["unequal-lengths", () => pairedTTest([1, 2], [1, 2, 3])],
  ["out-of-range", () => twoSampleTTest([1, 2], [1, 3], { level: 0 })],
  ["out-of-range", () => twoSampleTTest([1, 2], [1, 3], { side: "both" as "less" })],
  ["out-of-range", () => twoSampleTTest([1, 2], [1, 3], { variances: "pooled" as "equal" })],
  ["unknown-option", () => twoSampleTTest([1, 2], [1, 3], { alternative: "less" } as object)],
] as const)("refuses with %s, case %#", (code, call) =>
  expect(call).toThrow(expect.objectContaining({ code })),
);
