import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cohensD,
  effectSizesFromT,
  glassDelta,
  hedgesCorrection,
  hedgesG,
  pairedEffectSizes,
  pairedTTest,
  twoSampleTTest,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

it("Becker, Colorado Springs: d 2.05, delta 2.34; from t 9.16: d 2.13, g 2.05, r 0.73; from d: r 0.72", () => {
  const { inputs, expected, tolerance } = worked["effect.becker"];
  const [first, second] = [0, 1].map((i) => ({
    n: 40,
    mean: inputs.mean[i] as number,
    sd: inputs.sd[i] as number,
  })) as [{ n: number; mean: number; sd: number }, { n: number; mean: number; sd: number }];
  const near = (value: number | null, printed: number) =>
    expect(Math.abs((value ?? Number.NaN) - printed)).toBeLessThan(tolerance.abs);
  const d = cohensD(first, second);
  near(d, expected.d);
  near(glassDelta(first, second, "first"), expected.delta);
  const from = effectSizesFromT(inputs.t, inputs.df, 40, 40);
  near(from.d, expected.dFromT);
  near(from.dOfSizes, expected.gFromT);
  near(from.r, expected.rFromT);
  // The page's r of a d is that of a t with two equal, large groups: t = d √ν/2.
  near(effectSizesFromT(((d as number) * Math.sqrt(1e9)) / 2, 1e9, 40, 40).r, expected.rFromD);
});

it("SciPy 1.17.1 on samples of 28 and 24: d, exact J, g, delta, d_z", () => {
  const { a, b, effect } = scipy.twoSample;
  expect(cohensD(a, b)).toBeCloseTo(effect.cohenD, 12);
  expect(hedgesCorrection(50)).toBeCloseTo(effect.J, 13);
  expect(hedgesG(a, b)).toBeCloseTo(effect.g, 12);
  expect(glassDelta(a, b, "first")).toBeCloseTo(effect.glassDelta, 12);
  expect(pairedEffectSizes(scipy.paired.a, scipy.paired.b).dz).toBeCloseTo(scipy.paired.dz, 12);
});

const list = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 3, maxLength: 20 });
describe("laws", () => {
  it("g = J d, and the printed approximation of J is near", () =>
    fc.assert(
      fc.property(list, list, (a, b) => {
        const d = cohensD(a, b);
        const g = hedgesG(a, b);
        if (d === null || g === null) return;
        const df = a.length + b.length - 2;
        expect(g).toBeCloseTo(hedgesCorrection(df) * d, 9);
        expect(Math.abs(hedgesCorrection(df) - (1 - 3 / (4 * df - 1)))).toBeLessThan(0.004);
      }),
    ));
  it("from a pooled t and the sizes it is d itself", () =>
    fc.assert(
      fc.property(list, list, (a, b) => {
        const d = cohensD(a, b);
        const { t, degreesOfFreedom } = twoSampleTTest(a, b, { variances: "equal" });
        if (d === null || t === null) return;
        expect(effectSizesFromT(t, degreesOfFreedom, a.length, b.length).dOfSizes).toBeCloseTo(d, 9);
      }),
    ));
  it("d_z is the paired t over √n; with equal spreads it is d_av/√(2 (1 − r))", () => {
    const { a, b } = scipy.paired;
    expect(pairedEffectSizes(a, b).dz).toBeCloseTo((pairedTTest(a, b).t as number) / Math.sqrt(a.length), 12);
    const first = [1, 2, 3, 4];
    const second = [4, 1, 3, 2].map((x) => x - 5);
    const { dz, dav } = pairedEffectSizes(first, second);
    const r = -0.4; // Σ (x − m)(y − m)/Σ (x − m)² = −2/5
    expect(dz).toBeCloseTo((dav as number) / Math.sqrt(2 * (1 - r)), 12);
  });
  it("another unit changes no effect size", () => {
    const { a, b } = scipy.twoSample;
    const scaled = (values: number[]) => values.map((x) => 1000 * x + 5);
    expect(hedgesG(scaled(a), scaled(b))).toBeCloseTo(hedgesG(a, b) as number, 10);
    expect(glassDelta(scaled(a), scaled(b))).toBeCloseTo(glassDelta(a, b) as number, 10);
  });
});

it("null without spread", () => {
  expect(cohensD([1, 1], [2, 2])).toBeNull();
  expect(glassDelta([1, 3], [2, 2])).toBeNull();
  expect(glassDelta([1, 3], [2, 2], "first")).toBe(0);
  expect(pairedEffectSizes([1, 1], [2, 2])).toEqual({ dz: null, dav: null });
});

it.each([
  ["too-short", () => cohensD([1], [1, 2])],
  ["out-of-range", () => glassDelta([1, 2], [1, 2], "both" as "first")],
  ["out-of-range", () => hedgesCorrection(1)],
  ["out-of-range", () => effectSizesFromT(1, 0, 5, 5)],
  ["unequal-lengths", () => pairedEffectSizes([1, 2], [1, 2, 3])],
] as const)("refuses with %s", (code, call) => expect(call).toThrow(expect.objectContaining({ code })));
