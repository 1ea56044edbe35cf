import { expect, it } from "vitest";
import {
  COMPARE_MEAN_CURVES_DEFAULTS,
  CURVE_TEST_DEFAULTS,
  compareMeanCurves,
} from "../../../src/compare/index.js";
import { toGroundReaction } from "../../../src/force/index.js";
import { fieldTTest } from "../../../src/statistics/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../../src/trial/index.js";

/** Runners of different mass; under the changed condition each brakes harder. */
const runner = (k: number, brakingAmplitude: number): Trial =>
  analyseTrial(
    toGroundReaction(
      syntheticRun({
        mass: 55 + 5 * k,
        contacts: 8,
        sampleRate: 500,
        noise: { force: 2 },
        seed: 100 * k + Math.round(1000 * brakingAmplitude),
        stance: {
          brakingAmplitude: brakingAmplitude + 0.01 * Math.sin(7 * k),
          contactTime: 0.25 + 0.004 * Math.cos(3 * k),
        },
        left: { impactAmplitude: 0.85 },
      }).recording,
    ),
    { metrics: [] },
  );
const baseline = Array.from({ length: 7 }, (_, k) => runner(k, 0.25));
const changed = Array.from({ length: 7 }, (_, k) => runner(k, 0.3));
const braking = { component: "anteroposterior" } as const;

it("pairs: braking by 0.05 BW more is found in the first half of stance, and no less of it at the peak", () => {
  const result = compareMeanCurves(baseline, changed, braking);
  expect(result).toMatchObject({
    test: "paired",
    of: "runners",
    unit: "BW",
    curves: { baseline: 7, changed: 7 },
    degreesOfFreedom: 6,
  });
  const first = result.clusters.find(({ from, to }) => from < 24 && to > 24);
  // The braking half sine ends at 48 % of stance; its mean difference over it is 2/π of 0.05 BW.
  expect(first?.difference).toBeGreaterThan(-0.05);
  expect(first?.difference).toBeLessThan(-0.025);
  expect(first?.toTime).toBeCloseTo(((first?.to as number) / 100) * meanTime([...baseline, ...changed]), 3);
  expect(Math.min(...result.difference)).toBeCloseTo(-0.05, 2);
});

it("is Student's t of the trials' own mean curves", () => {
  const curveOf = ({ curves }: Trial) =>
    curves.up.left?.mean.map((value, q) => (value + (curves.up.right?.mean[q] as number)) / 2) ?? [];
  const { statistic } = compareMeanCurves(baseline, changed, { unit: "N" });
  const expected = fieldTTest(changed.map(curveOf), baseline.map(curveOf), { paired: true });
  expect(statistic).toEqual(Array.from(expected.statistic));
});

it("two groups: less is found than with pairs, and the same difference", () => {
  const pairs = compareMeanCurves(baseline, changed, braking);
  const groups = compareMeanCurves(baseline, changed.slice(1), { ...braking, paired: false });
  expect([groups.test, groups.degreesOfFreedom]).toEqual(["two-sample", 11]);
  expect(compareMeanCurves(baseline, changed, { ...braking, paired: false }).difference[24]).toBeCloseTo(
    pairs.difference[24] as number,
    12,
  );
  expect(groups.permutationThreshold).not.toBeNull();
});

it("both sides of the mediolateral force are positive outwards", () => {
  const { baseline: mean } = compareMeanCurves(baseline, changed, { component: "mediolateral", unit: "N" });
  const { left, right } = baseline[0]?.curves.right ?? {};
  const own = (q: number) => ((right?.mean[q] as number) - (left?.mean[q] as number)) / 2;
  expect(Math.sign(mean[60] as number)).toBe(Math.sign(own(60)));
  expect(Math.abs(mean[60] as number)).toBeGreaterThan(20);
});

it("four pairs have too few permutations: the threshold is of random fields alone, and that is said", () => {
  const { permutationThreshold, cautions } = compareMeanCurves(baseline.slice(3), changed.slice(3), braking);
  expect(permutationThreshold).toBeNull();
  expect(cautions.map(({ code }) => code)).toContain("too-few-permutations");
});

function meanTime(trials: readonly Trial[]): number {
  const times = trials.map(
    ({ contacts }) => contacts.reduce((sum, c) => sum + c.toeOff - c.initialContact, 0) / contacts.length,
  );
  return times.reduce((sum, time) => sum + time, 0) / times.length;
}

const first = baseline[0] as Trial;
const with20Hz: Trial = { ...first, settings: { ...first.settings, filter: { cutoff: 20, order: 4 } } };
const { right: _, ...withoutRight } = first.curves;
const without: Trial = { ...first, curves: withoutRight };
const unweighed: Trial = { ...first, settings: { ...first.settings, mass: null } };
const oneFoot: Trial = { ...first, curves: { ...first.curves, up: { left: first.curves.up.left as never } } };
it.each<[string, readonly Trial[], object]>([
  ["too-short", baseline.slice(0, 2), {}],
  ["unequal-lengths", baseline.slice(0, 5), {}],
  ["not-comparable", [with20Hz, ...baseline.slice(1)], {}],
  ["missing-channel", [without, ...baseline.slice(1)], { component: "mediolateral" }],
  ["missing-value", [unweighed, ...baseline.slice(1)], { unit: "BW" }],
  ["no-contact", [oneFoot, ...baseline.slice(1)], {}],
  ["no-contact", [oneFoot, ...baseline.slice(1)], { side: "right" }],
  ["wrong-type", first as never, {}],
  ["out-of-range", baseline, { side: "unknown" }],
  ["unknown-option", baseline, { pair: true }],
])("refuses with %s", (code, trials, options) =>
  expect(() => compareMeanCurves(trials, changed, options)).toThrow(expect.objectContaining({ code })),
);
it("takes newtons where a mass is missing", () =>
  expect(compareMeanCurves([unweighed, ...baseline.slice(1)], changed).unit).toBe("N"));

it("level, permutations and seed are those of every comparison of curves", () =>
  expect(COMPARE_MEAN_CURVES_DEFAULTS).toMatchObject(CURVE_TEST_DEFAULTS));
