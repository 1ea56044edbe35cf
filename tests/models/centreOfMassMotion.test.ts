import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { integralBetween } from "../../src/filters/index.js";
import {
  type AxisMotion,
  type CentreOfMassMotionOptions,
  centreOfMassMotion,
} from "../../src/models/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import { groundOf } from "../helpers.js";
import { mirroredRun, running, sampledRun } from "../metrics/runs.js";

const { ground, steps } = sampledRun();
const from = steps[0]?.contact.initialContact as number;
const to = steps[0]?.nextSameSide?.initialContact as number;
const stride = centreOfMassMotion(ground, from, to, { speed: 3 });
const last = (samples: Float64Array): number => samples[samples.length - 1] as number;

describe("source: law (Newton's second), by hand", () => {
  it("a force of 2 sin(2πt) N on 0.5 kg: amplitude of the place is 4/(2π)² m, and it returns", () => {
    const up = Array.from({ length: 1001 }, (_, i) => 10 + 2 * Math.sin((2 * Math.PI * i) / 1000));
    const motion = centreOfMassMotion(groundOf({ up, sampleRate: 1000 }), 0, 1, { mass: 0.5 });
    const range = Math.max(...motion.up.position) - Math.min(...motion.up.position);
    // Straight lines between samples lie inside the curve by (ωh)²/12 = 3e-6 of it.
    expect(range).toBeCloseTo((2 * 4) / (2 * Math.PI) ** 2, 5);
    expect(last(motion.up.position)).toBeCloseTo(0, 12);
    expect(motion.up.velocity[0]).toBeCloseTo(-4 / (2 * Math.PI), 5);
  });
  it("straight lines are integrated exactly, fractional ends included: 0 2 0 N on 1 kg", () => {
    const motion = centreOfMassMotion(groundOf({ up: [0, 2, 0], sampleRate: 1 }), 0.5, 1.5, { mass: 1 });
    // From 1 N up to 2 N and back in 0.5 s each; mean 1.5 N, so the acceleration goes −1/2, 1/2, −1/2.
    expect([...motion.time]).toEqual([0.5, 1, 1.5]);
    expect([...motion.up.acceleration]).toEqual([-0.5, 0.5, -0.5]);
    expect([...motion.up.velocity].map((v) => v + 0)).toEqual([0, 0, 0]);
    expect(motion.up.position[1]).toBeCloseTo((0.5 * 0.5 * (2 * -0.5 + 0.5)) / 6, 15);
    expect(motion.up.position[2]).toBeCloseTo(0, 15);
  });
});

describe("independent library", () => {
  it("SciPy 1.17.1, degree-1 spline integrated twice: mass by force and velocity at contact of an uneven stride", () => {
    expect(stride.mass).toBeCloseTo(running.motion[0]?.mass as number, 9);
    expect(stride.up.velocity[0]).toBeCloseTo(running.motion[0]?.velocityUpAtContact as number, 10);
  });
  it("SciPy 1.17.1, cumulative trapezoid: velocities of the mirrored run at 10 kHz", () => {
    const run = mirroredRun(10_000, 1);
    const motion = centreOfMassMotion(run.ground, 0, 0.72, { speed: 3 });
    const forward = motion.forward?.velocity ?? [];
    expect(motion.up.velocity[0]).toBeCloseTo(energy.upVelocityAtContact, 5);
    expect(Math.min(...forward)).toBeCloseTo(energy.forwardVelocity[0] as number, 6);
    expect(Math.max(...forward)).toBeCloseTo(energy.forwardVelocity[1] as number, 6);
  });
});

describe("closing laws over a stride whose ends lie between samples", () => {
  it("has the start, each sample within and the end", () => {
    expect(stride.time[0]).toBe(from);
    expect(last(stride.time)).toBe(to);
    expect(stride.time.length).toBe(Math.floor(to * 1000) - Math.ceil(from * 1000) + 3);
  });
  it.each([
    ["forward", 3],
    ["up", 0],
    ["right", 0],
  ] as const)("%s: velocity returns and its mean is %f m/s", (axis, mean) => {
    const { velocity, position } = stride[axis] as AxisMotion;
    expect(last(velocity)).toBeCloseTo(velocity[0] as number, 12);
    expect(last(position) / (to - from)).toBeCloseTo(mean, 12);
  });
  it.each(["forward", "up", "right"] as const)("%s: impulse above the mean = change of momentum", (axis) => {
    const { velocity } = stride[axis] as AxisMotion;
    const force = ground.force[axis] as Float64Array;
    const knot = 200;
    const time = stride.time[knot] as number;
    const mean = integralBetween(force, 1000, from, to) / (to - from);
    const impulse = integralBetween(force, 1000, from, time) - mean * (time - from);
    expect(stride.mass * ((velocity[knot] as number) - (velocity[0] as number))).toBeCloseTo(impulse, 9);
  });
  it("in flight the body falls freely: acceleration is −g", () => {
    const flight = stride.time.findIndex((time) => time > (steps[0]?.contact.toeOff as number) + 0.05);
    expect(stride.up.acceleration[flight]).toBeCloseTo(-9.80665, 6);
  });
  it("property: a constant force added to any axis changes nothing but the mass by force", () =>
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (offset) => {
        const moved = { sampleRate: 1000, force: { up: ground.force.up.map((f) => f + offset) } };
        const motion = centreOfMassMotion(moved, from, to, { mass: stride.mass });
        const furthest = motion.up.position.reduce(
          (most, y, i) => Math.max(most, Math.abs(y - (stride.up.position[i] as number))),
          0,
        );
        expect(furthest).toBeLessThan(1e-12);
      }),
      { numRuns: 20 },
    ));
});

it("gives the axes that were recorded, and no others", () => {
  const motion = centreOfMassMotion(groundOf({ up: [1, 2, 1], sampleRate: 1 }), 0, 2);
  expect(Object.keys(motion).sort()).toEqual(["mass", "time", "up"]);
});

it.each([
  ["a span that falls", 0.4, 0.2, {}, "out-of-range"],
  ["a span before the samples", -0.1, 0.2, {}, "out-of-range"],
  ["a span behind the samples", 0.1, 99, {}, "out-of-range"],
  ["NaN for a time", 0.1, Number.NaN, {}, "out-of-range"],
  ["no mass", 0.1, 0.2, { mass: 0 }, "out-of-range"],
  ["an infinite speed", 0.1, 0.2, { speed: Number.POSITIVE_INFINITY }, "not-finite"],
  ["a grade in per cent", 0.2, 0.9, { grade: 5 }, "out-of-range"],
  ["gravity of 0", 0.2, 0.9, { gravity: 0 }, "out-of-range"],
  ["an option it does not know", 0.2, 0.9, { masss: 70 }, "unknown-option"],
])("refuses %s", (_what, start, end, options, code) => {
  expect(() => centreOfMassMotion(ground, start, end, options as CentreOfMassMotionOptions)).toThrow(
    expect.objectContaining({ code }),
  );
});
