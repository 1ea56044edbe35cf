import { describe, expect, it } from "vitest";
import type { Step } from "../../src/events/index.js";
import { massForStep } from "../../src/metrics/common/massForStep.js";
import * as metrics from "../../src/metrics/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import { mirroredRun, running, sampledRun } from "./runs.js";

/** Metrics of a sampled contact by NumPy, and how far ours may lie from them: rounding of sums, relative. */
const EXACT = 1e-9;

/**
 * Metrics of the formulas on a 1 MHz grid, and how far 1 kHz may lie from them, relative, for a reason: a peak sample misses
 * the peak by half a sampling interval; where the impact peak or a slope is placed by a sample, 1 ms of 29 counts.
 */
const SAMPLING: Record<string, number> = {
  contactTime: 3e-4,
  peakVerticalForce: 1e-5,
  impactPeak: 5e-4,
  timeToImpactPeak: 0.02,
  averageLoadingRate: 0.006,
  earlyLoadingRate: 0.001,
  instantaneousLoadingRate: 0.001,
  verticalImpulse: 5e-5,
  meanVerticalForce: 3e-4,
  brakingImpulse: 1e-4,
  propulsiveImpulse: 1e-4,
  peakBrakingForce: 1e-4,
  peakPropulsiveForce: 1e-4,
  brakingLoadingRate: 0.016, // steepest at the start of its window, where the slope falls by 1.06 % a millisecond
  brakingTime: 5e-4,
  propulsiveTime: 5e-4,
  mediolateralImpulse: 2e-4,
  medialImpulse: 2e-4,
  lateralImpulse: 0.003,
  peakMedialForce: 1e-4,
  peakLateralForce: 0.001,
  halfSineFit: 1e-3,
};

const OF_MOTION = ["verticalOscillation", "mediolateralExcursion", "positiveExternalWork"];
/** Of spring, work by axis, feet and torsion: in the tests of their own families. */
const OF_OTHERS = [
  ...["peakResultantForce", "peakFreeMoment", "freeMomentImpulse", "stepWidth", "strikeIndex"],
  ...["touchdownDistance", "takeOffDistance"],
  ...["positiveWorkVertical", "positiveWorkForward", "positiveWorkLateral"],
  ...["verticalStiffness", "legStiffness", "elasticEnergy", "pushToBrakeTimeRatio", "forceGenerationCost"],
  ...metrics.CATALOGUE.filter(({ family }) => family === "walking").map(({ id }) => id),
];
const NOT_METRICS = ["side", "threshold", "initialContact", "toeOff"];

describe.each([20, 50])(
  "independent library: NumPy 2.4.6 on the sampled run, threshold %i N",
  (threshold) => {
    const { ground, steps } = sampledRun(threshold);
    const rows = running.sampled.filter((row) => row.threshold === threshold);

    it("eight contacts; with the metrics of motion below and those of other tests, every metric of the catalogue", () => {
      const there = Object.keys(rows[0] ?? {}).filter((key) => !NOT_METRICS.includes(key));
      expect(rows.length).toBe(8);
      expect([...there, ...OF_MOTION, ...OF_OTHERS].sort()).toEqual(
        metrics.CATALOGUE.map(({ id }) => id).sort(),
      );
    });

    it.each(rows.map((row, k) => [k, row] as const))("contact %i: every metric", (k, row) => {
      for (const [id, value] of Object.entries(row)) {
        if (NOT_METRICS.includes(id)) continue;
        const ours = metrics.metricById(id).compute(ground, steps[k] as Step) as number;
        expect(Math.abs(ours - (value as number)), id).toBeLessThanOrEqual(
          EXACT * Math.abs(value as number) + 1e-12,
        );
      }
    });
  },
);

describe.each([20, 50])("source: the run's formulas on a 1 MHz grid, threshold %i N", (threshold) => {
  const { ground, steps } = sampledRun(threshold);
  it.each([
    ["right", 0],
    ["left", 1],
  ] as const)("%s foot: 1 kHz meets them within what sampling explains", (side, k) => {
    const row = running.analytic.find((entry) => entry.side === side && entry.threshold === threshold);
    for (const [id, tolerance] of Object.entries(SAMPLING)) {
      const truth = (row as unknown as Record<string, number>)[id] as number;
      const ours = metrics.metricById(id).compute(ground, steps[k] as Step) as number;
      expect(Math.abs(ours / truth - 1), id).toBeLessThanOrEqual(tolerance);
    }
  });
});

describe("independent library: SciPy 1.17.1, degree-1 spline integrated twice over each stride", () => {
  const { ground, steps } = sampledRun();
  it.each(running.motion.filter((row) => row.grade === 0))("contact $index", ({ index, mass, atSamples }) => {
    const step = steps[index] as Step;
    expect(massForStep(ground, step)).toBeCloseTo(mass, 9);
    expect(metrics.verticalOscillation(ground, step)).toBeCloseTo(atSamples.verticalOscillation, 10);
    expect(metrics.mediolateralExcursion(ground, step)).toBeCloseTo(atSamples.mediolateralExcursion, 10);
    expect(metrics.positiveExternalWork(ground, step)).toBeCloseTo(atSamples.step.external[0] as number, 8);
  });
});

describe("source: SciPy 1.17.1 on 400 001 points of a step of the mirrored run", () => {
  const { ground, steps } = mirroredRun(1000, 2);
  const step = steps[0] as Step;
  it("113.4 J and 1.50 J/kg/m of positive external work, within 0.01 %", () => {
    const work = metrics.positiveExternalWork(ground, step) as number;
    const distance = metrics.stepLength(ground, step) as number;
    expect(Math.abs(work / energy.external - 1)).toBeLessThan(1e-4);
    expect(Math.abs(work / 70 / distance / energy.externalPerMassAndDistance - 1)).toBeLessThan(1e-4);
  });
  it("87.7 mm of vertical oscillation, within 0.01 %", () => {
    expect(
      Math.abs((metrics.verticalOscillation(ground, step) as number) / energy.verticalOscillation - 1),
    ).toBeLessThan(1e-4);
  });
});
