import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centreOfMassExcursion, centreOfMassMotion } from "../../src/models/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import { mirroredRun, running, sampledRun } from "../metrics/runs.js";

const { ground, steps } = sampledRun();

it("source: law (Newton's second), by hand: F = A sin(2πt/T) moves m by 2 A T²/(4π² m) from end to end", () => {
  const samples = Float64Array.from({ length: 801 }, (_, i) => 30 * Math.sin((2 * Math.PI * i) / 800));
  // Straight lines between samples lie inside the curve by (ωh)²/12 = 5e-6 of it.
  expect(centreOfMassExcursion(samples, 1000, 0, 0.8, 70)).toBeCloseTo(
    (2 * 30 * 0.64) / (4 * Math.PI ** 2 * 70),
    6,
  );
});

describe("independent library: SciPy 1.17.1, degree-1 spline integrated twice, fractional ends", () => {
  it.each(running.motion.filter((row) => row.grade === 0))("stride from contact $index", (row) => {
    const { contact, next, nextSameSide } = steps[row.index] as Required<(typeof steps)[number]>;
    const span = [contact.initialContact, nextSameSide.initialContact] as const;
    const right = ground.force.right as Float64Array;
    const vertical = centreOfMassExcursion(ground.force.up, 1000, ...span, row.mass, {
      until: next.initialContact,
    });
    const sideways = centreOfMassExcursion(right, 1000, ...span, row.mass);
    expect(vertical).toBeCloseTo(row.atSamples.verticalOscillation, 10);
    expect(sideways).toBeCloseTo(row.atSamples.mediolateralExcursion, 10);
    // Between samples the curve turns a little further out.
    expect(Math.abs(vertical / row.between.verticalOscillation - 1)).toBeLessThan(2e-5);
    expect(Math.abs(sideways / row.between.mediolateralExcursion - 1)).toBeLessThan(2e-5);
  });
});

it("source: SciPy 1.17.1, cumulative trapezoid: 87.708 mm in a step of the mirrored run", () => {
  const run = mirroredRun(10_000, 1);
  expect(centreOfMassExcursion(run.ground.force.up, 10_000, 0, 0.72, 70, { until: 0.36 })).toBeCloseTo(
    energy.verticalOscillation,
    6,
  );
});

it("property: it is the range of the motion's place, for any span", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      fc.double({ min: 0.1, max: 1.2, noNaN: true }),
      (start, duration) => {
        const { position } = centreOfMassMotion(ground, start, start + duration, { mass: 70 }).up;
        const range = Math.max(...position) - Math.min(...position);
        expect(centreOfMassExcursion(ground.force.up, 1000, start, start + duration, 70)).toBe(range);
      },
    ),
    { numRuns: 50 },
  ));

it.each([
  ["a span behind the samples", [0, 99, 70, {}]],
  ["a mass below 0", [0, 1, -70, {}]],
  ["an end of looking outside the span", [0.2, 0.9, 70, { until: 1 }]],
  ["an end of looking at the start", [0.2, 0.9, 70, { until: 0.2 }]],
] as const)("refuses %s", (_what, [from, to, mass, options]) => {
  expect(() => centreOfMassExcursion(ground.force.up, 1000, from, to, mass, options)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
