import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  meanVerticalForce,
  peakVerticalForce,
  verticalImpulse,
  verticalOscillation,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";
import { sampledRun } from "../runs.js";

describe("common practice and law (impulse = change of momentum), by hand", () => {
  const ground = groundOf({ up: [0, 600, 1800, 600, 0], sampleRate: 10 });
  it("peak: the largest sample in contact, and no larger one outside", () => {
    expect(peakVerticalForce(ground, { contact: contactOver(0, 0.4) })).toBe(1800);
    expect(peakVerticalForce(ground, { contact: contactOver(0.25, 0.4) })).toBe(600);
  });
  it("impulse: trapezoid, fractional ends", () => {
    expect(verticalImpulse(ground, { contact: contactOver(0, 0.4) })).toBeCloseTo(300, 12);
    expect(verticalImpulse(ground, { contact: contactOver(0.05, 0.35) })).toBeCloseTo(300 - 2 * 7.5, 12);
  });
  it("mean force: impulse over contact time", () => {
    expect(meanVerticalForce(ground, { contact: contactOver(0, 0.4) })).toBeCloseTo(750, 12);
  });
  it("published (OpenStax College Physics, m42132): 110 kg pushed off with 4310 N over 0.300 m leave at 4.20 m/s", () => {
    // Constant force for 2 × 0.300 m / 4.20 m/s; impulse above weight (g 9.80) = 110 kg × 4.20 m/s.
    const time = 0.6 / 4.2;
    const push = groundOf({ up: new Float64Array(200).fill(4312), sampleRate: 1000 });
    const impulse = verticalImpulse(push, { contact: contactOver(0.01, 0.01 + time) });
    expect((impulse - 110 * 9.8 * time) / 110).toBeCloseTo(4.2, 2);
  });
});

it("law: in steady running the vertical impulse is weight × step time, within what the 20 N threshold cuts off", () => {
  const { ground, steps } = sampledRun();
  const both = (steps.slice(0, 2) as typeof steps).reduce(
    (sum, step) => sum + verticalImpulse(ground, step),
    0,
  );
  expect(both / (70 * 9.80665 * 0.72)).toBeGreaterThan(0.9995);
  expect(both / (70 * 9.80665 * 0.72)).toBeLessThan(1);
});

describe("verticalOscillation", () => {
  it("law by hand: a weight bounced by F = W (1 − cos 2πt/T) moves by g T²/2π² in a step", () => {
    const T = 0.36;
    const up = Float64Array.from(
      { length: 2001 },
      (_, i) => 686.4655 * (1 - Math.cos((2 * Math.PI * i) / 1000 / T)),
    );
    const contact = contactOver(0.1, 0.3, "left");
    const step = {
      contact,
      next: contactOver(0.46, 0.6, "right"),
      nextSameSide: contactOver(0.82, 1, "left"),
    };
    // Straight lines between samples lie inside the curve by (ωh)²/12 = 3e-5 of it.
    expect(verticalOscillation(groundOf({ up, sampleRate: 1000 }), step)).toBeCloseTo(
      (9.80665 * T * T) / (2 * Math.PI ** 2),
      5,
    );
  });
  it("law: a sideways push or a constant offset of the force does not move it; a scale error of both cancels", () => {
    const { ground, steps } = sampledRun();
    const step = steps[1] as (typeof steps)[number];
    const scaled = { ...ground, force: { up: ground.force.up.map((f) => 1.05 * f) } };
    expect(verticalOscillation(scaled, step)).toBeCloseTo(verticalOscillation(ground, step) as number, 12);
  });
  it("property: proportional to 1/mass where the trial's mass by force is given", () =>
    fc.assert(
      fc.property(fc.double({ min: 40, max: 120, noNaN: true }), (massByForce) => {
        const { ground, steps } = sampledRun();
        const step = steps[0] as (typeof steps)[number];
        const of = (mass: number): number =>
          verticalOscillation({ ...ground, massByForce: mass }, step) as number;
        expect((of(massByForce) * massByForce) / (of(70) * 70)).toBeCloseTo(1, 9);
      }),
      { numRuns: 10 },
    ));
  it("null without neighbours", () => {
    const { ground, steps } = sampledRun();
    expect(verticalOscillation(ground, steps[6] as (typeof steps)[number])).toBeNull();
    expect(verticalOscillation(ground, steps[7] as (typeof steps)[number])).toBeNull();
  });
  it("refuses a stride that ends behind the recording", () => {
    const { ground, steps } = sampledRun();
    const { contact, next } = steps[0] as Required<(typeof steps)[number]>;
    expect(() => verticalOscillation(ground, { contact, next, nextSameSide: contactOver(99, 99.2) })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
