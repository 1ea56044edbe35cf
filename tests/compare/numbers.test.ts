import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { metricById } from "../../src/metrics/index.js";
import { differenceInterval } from "../../src/statistics/index.js";
import { strideValues } from "../../src/trial/index.js";
import scipy from "../fixtures/compare/comparison.json" with { type: "json" }; // comparison.py, NumPy 2.4.6, SciPy 1.17.1
import { trialOf } from "./trialOf.js";

const baseline = trialOf(scipy.trials.baseline, scipy.settings.baseline);
const changed = trialOf(scipy.trials.changed, scipy.settings.changed);
const comparison = compareTrials(baseline, changed);

type Name = keyof typeof scipy.expected;
const names = Object.keys(scipy.expected) as Name[];
const metric = (id: string) => {
  const found = comparison.metrics.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`${id} was not compared`);
  return found;
};
const close = (value: number, expected: number, scale: number) =>
  expect(Math.abs(value - expected) / scale, `${value} for ${expected}`).toBeLessThan(1e-9);

describe.each(names)("SciPy and NumPy: %s", (id) => {
  const { perStep, perKilometre, normalised } = scipy.expected[id];
  it.each(["per step", "per kilometre"])("mean, SD, difference, both intervals, %s", (which) => {
    const expected = which === "per step" ? perStep : perKilometre;
    const found = which === "per step" ? metric(id) : metric(id).perKilometre;
    if (found === undefined) throw new Error("no values per kilometre");
    const scale = expected.baseline[1] as number;
    expect([found.baseline.n, found.changed.n]).toEqual([expected.baseline[0], expected.changed[0]]);
    close(found.baseline.mean, expected.baseline[1] as number, scale);
    close(found.changed.mean, expected.changed[1] as number, scale);
    close(found.baseline.sd ?? Number.NaN, expected.baseline[2] as number, scale);
    close(found.changed.sd ?? Number.NaN, expected.changed[2] as number, scale);
    close(found.difference, expected.difference, scale);
    close(found.percent ?? Number.NaN, expected.percent, 100);
    close(found.interval.low, expected["interval0.95"][0] as number, scale);
    close(found.interval.high, expected["interval0.95"][1] as number, scale);
    close(found.readingInterval.low, expected["interval0.99"][0] as number, scale);
    close(found.readingInterval.high, expected["interval0.99"][1] as number, scale);
    close(found.baseline.interval?.low ?? Number.NaN, expected["mean0.95"][0] as number, scale);
    close(found.changed.interval?.high ?? Number.NaN, expected["mean0.95"][3] as number, scale);
    close(found.smallestDetectableChange.value, expected.smallestDetectableChange, scale);
    close(found.margin.value, expected.margin, scale);
    expect(found.noRiseBeyondMargin).toBe((expected["interval0.99"][1] as number) < expected.margin);
  });
  it("drift by the straight line, and its interval", () => {
    const drift = metric(id).drift;
    const scale = perStep.baseline[1] as number;
    [drift?.baseline, drift?.changed].forEach((found, k) => {
      const expected = perStep.drift[k] as number[];
      close(found?.change ?? Number.NaN, expected[0] as number, scale);
      close(found?.interval?.low ?? Number.NaN, expected[1] as number, scale);
      close(found?.interval?.high ?? Number.NaN, expected[2] as number, scale);
    });
  });
  it("Hedges' g", () => expect(metric(id).effectSize).toBeCloseTo(perStep.effectSize, 9));
  it("normalised difference and interval", () => {
    const found = metric(id).normalised;
    const scale = normalised.baseline[1] as number;
    close(found?.difference ?? Number.NaN, normalised.difference, scale);
    close(found?.interval.low ?? Number.NaN, normalised["interval0.95"][0] as number, scale);
    close(found?.interval.high ?? Number.NaN, normalised["interval0.95"][1] as number, scale);
  });
});

it("SciPy and NumPy: work per metre and kilogram is the normalised work", () => {
  const expected = scipy.expected.positiveExternalWork.normalised;
  const found = comparison.work.perMetre;
  expect(found?.unit).toBe("J/kg/m");
  close(found?.difference ?? Number.NaN, expected.difference, expected.baseline[1] as number);
  close(
    found?.readingInterval.low ?? Number.NaN,
    expected["interval0.99"][0] as number,
    expected.baseline[1] as number,
  );
  close(
    found?.smallestDetectableChange.value ?? Number.NaN,
    expected.smallestDetectableChange,
    expected.baseline[1] as number,
  );
});

it("by hand: a stride is the mean of two successive contacts, 1 + 2, 3 + 4, and a pair that lacks one is left out", () => {
  const short = (values: number[]) => trialOf({ peakVerticalForce: values });
  const one = short([1600, 1610, 1590, 1620]);
  const steps = one.steps.map((row, k) =>
    k === 3 ? { ...row, values: { ...row.values, peakVerticalForce: null } } : row,
  );
  const found = compareTrials({ ...one, steps }, short([1600, 1620]), {
    metrics: [metricById("peakVerticalForce")],
  }).metrics;
  // One of eight contacts lacks the value: 88 %, below the 90 % that a comparison needs.
  expect(found).toEqual([]);
  const twelve = short([1600, 1610, 1590, 1620, 1605, 1595, 1600, 1610, 1590, 1620, 1605, 1595]);
  const holed = twelve.steps.map((row, k) =>
    k === 3 ? { ...row, values: { ...row.values, peakVerticalForce: null } } : row,
  );
  const [kept] = compareTrials({ ...twelve, steps: holed }, twelve, {
    metrics: [metricById("peakVerticalForce")],
  }).metrics;
  expect(kept?.baseline.n).toBe(11);
  expect(kept?.baseline.mean).toBeCloseTo(
    (1600 + 1590 + 1620 + 1605 + 1595 + 1600 + 1610 + 1590 + 1620 + 1605 + 1595) / 11,
    9,
  );
  expect(kept?.changed.n).toBe(12);
});

it("by hand: per kilometre is the value times 1000 m over speed times step time", () => {
  const constant = (value: number, stepTime: number) =>
    trialOf(
      {
        peakVerticalForce: [value, value + 10, value, value + 10],
        stepTime: [stepTime, stepTime, stepTime, stepTime],
      },
      { speed: 2.5 },
    );
  const [found] = compareTrials(constant(1600, 0.4), constant(1600, 0.32), {
    metrics: [metricById("peakVerticalForce")],
  }).metrics;
  // 2.5 m/s and 0.4 s make steps of 1 m, 1000 a kilometre; 0.32 s makes 1250.
  expect(found?.perKilometre?.baseline.mean).toBeCloseTo(1_605_000, 3);
  expect(found?.perKilometre?.changed.mean).toBeCloseTo(2_006_250, 3);
});

it("what the trials are is carried: strides, what they are worth, speeds, masses, thresholds", () => {
  expect(comparison.baseline).toMatchObject({
    strides: 34,
    speed: 3.3,
    mass: 70,
    massByForce: 70,
    threshold: 20,
  });
  expect(comparison.changed).toMatchObject({ strides: 41, speed: 3.32, mass: 70.3 });
  expect(comparison.baseline.effectiveStrides).toBeLessThan(34);
  expect(comparison.baseline.effectiveStrides).toBeGreaterThan(2);
});

it("the settings hold, as data, what the readings rest on", () =>
  expect(comparison.settings).toMatchObject({
    readingCorrelation: { correctBias: true, shared: true },
    leastShareOfContacts: 0.9,
    correlatedAbove: 0.5,
    smallestDetectableShare: 0.8,
    massRatioTolerance: 0.01,
    leastMeanForPercent: 3,
  }));

it("with the recorded correlation rule alone the reading interval is had again from the strides", () => {
  const id = "brakingImpulse";
  const { readingCorrelation, readingLevel } = comparison.settings;
  const [one, other] = [baseline, changed].map((trial) => strideValues(trial.steps, id));
  const { interval } = differenceInterval(other ?? [], one ?? [], readingLevel, readingCorrelation);
  expect(metric(id).readingInterval).toEqual(interval);
});

it("is plain JSON", () => expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison));
