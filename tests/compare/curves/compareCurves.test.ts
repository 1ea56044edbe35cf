import { describe, expect, it } from "vitest";
import { type CurveComparison, compareCurves } from "../../../src/compare/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import type { StanceCurves } from "../../../src/trial/index.js";
import { fractional, randomCurves } from "./randomCurves.js";

const bump = (percent: number) => 2.5 * Math.exp(-0.5 * ((percent - 60) / 6) ** 2);
const pair = (seed: number, mean: (percent: number) => number = bump) => {
  const random = seededRandom(seed);
  const of = { curves: 30, fullWidthAtHalfMaximum: 15, correlation: () => 0.2 };
  return [randomCurves(random, of), randomCurves(random, { ...of, mean })] as const;
};
const shape = ({ clusters }: CurveComparison) => clusters.map(({ from, to, p }) => [from, to, p]);
const mapped = (set: StanceCurves, change: (value: number) => number): StanceCurves => ({
  ...set,
  curves: set.curves.map((curve) => curve.map(change)),
});

it("finds an added bump where it is, in per cent and in s, and nothing elsewhere", () => {
  for (const seed of [1, 2, 3, 4, 5]) {
    const [baseline, changed] = pair(seed);
    const { clusters, threshold, permutationThreshold, statistic } = compareCurves(baseline, changed);
    expect(clusters).toHaveLength(1);
    const [cluster] = clusters;
    if (cluster === undefined) throw new Error("one cluster was expected");
    const { from, to, fromTime, toTime, peak, peakAt, difference, p } = cluster;
    expect(from).toBeGreaterThan(45);
    expect(from).toBeLessThan(60);
    expect(to).toBeGreaterThan(60);
    expect(to).toBeLessThan(75);
    expect(Math.abs(peakAt - 60)).toBeLessThan(8);
    expect(peak).toBe(Math.max(...statistic));
    expect(peak).toBeGreaterThan(Math.max(threshold, permutationThreshold as number));
    // Contacts of 0.25 s.
    expect(fromTime).toBeCloseTo((from / 100) * 0.25, 12);
    expect(toTime).toBeCloseTo((to / 100) * 0.25, 12);
    expect(difference).toBeGreaterThan(1);
    expect(difference).toBeLessThan(3.5);
    expect(p).toBeLessThan(0.025);
  }
});

it("says what it rests on", () => {
  const [baseline, changed] = pair(1);
  const result = compareCurves(baseline, changed);
  expect(result).toMatchObject({
    schema: "gait-kinetics/curves/1",
    component: "vertical",
    side: "left",
    unit: "N",
    test: "two-sample",
    of: "contacts",
    curves: { baseline: 30, changed: 30 },
    level: 0.05,
    thresholdRule: "random field",
  });
  expect(result.degreesOfFreedom).toBeLessThan(58);
  expect(Math.abs(result.fullWidthAtHalfMaximum - 15)).toBeLessThan(2);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  result.difference.forEach((value, q) => {
    expect(value).toBeCloseTo((result.changed[q] as number) - (result.baseline[q] as number), 10);
  });
});

describe("laws", () => {
  const [baseline, changed] = pair(6);
  const result = compareCurves(baseline, changed);
  it("swapping the sets mirrors everything", () => {
    const swapped = compareCurves(changed, baseline);
    expect(swapped.threshold).toBeCloseTo(result.threshold, 9);
    expect(swapped.permutationThreshold).toBeCloseTo(result.permutationThreshold as number, 9);
    expect(swapped.clusters).toHaveLength(result.clusters.length);
    swapped.clusters.forEach((cluster, k) => {
      const other = result.clusters[k];
      expect(cluster.from).toBeCloseTo(other?.from as number, 9);
      expect(cluster.to).toBeCloseTo(other?.to as number, 9);
      expect(cluster.peak).toBeCloseTo(-(other?.peak as number), 9);
      expect(cluster.difference).toBeCloseTo(-(other?.difference as number), 9);
    });
  });
  it.each([0.001, -3, 1e6])("scaling by %d changes no cluster", (k) => {
    const scaled = compareCurves(
      mapped(baseline, (value) => k * value),
      mapped(changed, (value) => k * value),
    );
    expect(shape(scaled).length).toBeGreaterThan(0);
    shape(scaled).forEach((values, place) => {
      values.forEach((value, of) => {
        expect(value).toBeCloseTo(shape(result)[place]?.[of] as number, 9);
      });
    });
  });
  it("what is added to both sets changes nothing", () => {
    const moved = compareCurves(
      mapped(baseline, (value) => value + 800),
      mapped(changed, (value) => value + 800),
    );
    expect(moved.clusters[0]?.from).toBeCloseTo(result.clusters[0]?.from as number, 7);
  });
  it("the same seed, the same numbers", () => expect(compareCurves(baseline, changed)).toEqual(result));
});

it("where all curves begin and end at the contact threshold nothing is tested, and that is said", () => {
  const held = (set: StanceCurves, rounding: number): StanceCurves => ({
    ...set,
    curves: set.curves.map((curve, k) =>
      curve.map((value, q) => (q === 0 || q === 100 ? 20 + rounding * (k % 3) : 20 + value)),
    ),
  });
  const [baseline, changed] = pair(7, () => 0);
  // The changed set lies 1e-9 N higher at its ends: t of two roundings would be in the millions.
  const { statistic, clusters, cautions } = compareCurves(
    held(baseline, 1e-13),
    held(
      mapped(changed, (v) => v),
      1e-9,
    ),
  );
  expect([statistic[0], statistic[100]]).toEqual([0, 0]);
  expect(clusters).toEqual([]);
  expect(cautions.map(({ code }) => code)).toContain("points-without-statistic");
});

it("says how many independent curves successive ones are worth", () => {
  const random = seededRandom(9);
  const of = { curves: 40, fullWidthAtHalfMaximum: 15, correlation: () => 0.7 };
  const { cautions, degreesOfFreedom } = compareCurves(randomCurves(random, of), randomCurves(random, of));
  expect(degreesOfFreedom).toBeLessThan(25);
  expect(cautions.find(({ code }) => code === "curves-correlated")?.message).toMatch(
    /count as \d+ independent/,
  );
});

it("says where curves resemble more than the next one", () => {
  const codesOf = (autocorrelation?: (lags: number) => readonly number[]) => {
    const random = seededRandom(4);
    const of = { curves: 60, fullWidthAtHalfMaximum: 15, correlation: () => 0, autocorrelation };
    return compareCurves(randomCurves(random, of), randomCurves(random, of)).cautions.map(({ code }) => code);
  };
  expect(codesOf(fractional(0.4))).toContain("curves-long-memory");
  expect(codesOf()).not.toContain("curves-long-memory");
});

describe("both feet", () => {
  const alternating = (set: StanceCurves): StanceCurves => ({
    ...set,
    side: "both",
    contacts: set.contacts.map((contact, k) => ({ ...contact, side: k % 2 === 0 ? "left" : "right" })),
  });
  const [baseline, changed] = pair(10);
  it("are compared by strides", () => {
    const { curves, baseline: mean } = compareCurves(alternating(baseline), alternating(changed));
    expect(curves).toEqual({ baseline: 15, changed: 15 });
    expect(mean[50]).toBeCloseTo(compareCurves(baseline, changed).baseline[50] as number, 9);
  });
});

const [good, other] = pair(11);
it.each<[string, Partial<StanceCurves> | null]>([
  ["not-comparable", { component: "anteroposterior" }],
  ["not-comparable", { side: "right" }],
  ["not-comparable", { unit: "BW" }],
  ["not-comparable", { filter: { cutoff: 20, order: 4 } }],
  ["not-comparable", { filter: null }],
  ["not-comparable", { curves: other.curves.map((curve) => curve.slice(0, 51)) }],
  ["too-short", { curves: other.curves.slice(0, 4), contacts: other.contacts.slice(0, 4) }],
  ["unequal-lengths", { curves: other.curves.map((curve, k) => (k === 3 ? curve.slice(1) : curve)) }],
  ["not-finite", { curves: other.curves.map((curve) => curve.map(() => Number.NaN)) }],
  ["wrong-type", null],
])("refuses with %s: %o", (code, parts) =>
  expect(() => compareCurves(good, (parts === null ? null : { ...other, ...parts }) as StanceCurves)).toThrow(
    expect.objectContaining({ code }),
  ),
);
describe("2026-11-25: plain TypeErrors for sets that only look like curves", () => {
  it.each<[string, string, object]>([
    ["no filter named", "wrong-type", { filter: undefined }],
    ["a filter that is none", "wrong-type", { filter: 50 }],
    [
      "a contact that is none",
      "wrong-type",
      { contacts: other.contacts.map((c, k) => (k === 2 ? null : c)) },
    ],
    ["a curve that is none", "wrong-type", { curves: other.curves.map((c, k) => (k === 2 ? null : c)) }],
    ["fewer contacts than curves", "unequal-lengths", { contacts: other.contacts.slice(1) }],
  ])("%s", (_, code, parts) => {
    const set = { ...other, ...parts } as StanceCurves;
    expect(() => compareCurves(good, set)).toThrow(expect.objectContaining({ code }));
    expect(() => compareCurves(set, good)).toThrow(expect.objectContaining({ code }));
  });
});
it("refuses curves without any spread", () =>
  expect(() =>
    compareCurves(
      mapped(good, () => 7),
      mapped(other, () => 8),
    ),
  ).toThrow(expect.objectContaining({ code: "not-comparable" })));
it.each([{ level: 0.5 }, { permutations: 3 }, { seed: 0.5 }])("refuses the option %o", (options) =>
  expect(() => compareCurves(good, other, options)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  ),
);
it("other thresholds are a caution", () => {
  const contacts = other.contacts.map((contact) => ({ ...contact, threshold: 50 }));
  const { cautions } = compareCurves(good, { ...other, contacts });
  expect(cautions[0]).toMatchObject({ code: "thresholds-differ", values: { baseline: 20, changed: 50 } });
});
