import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  lateralImpulse,
  medialImpulse,
  mediolateralExcursion,
  mediolateralImpulse,
  peakLateralForce,
  peakMedialForce,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";
import { sampledRun } from "../runs.js";

const sideways = (right: ArrayLike<number>, sampleRate: number): ReturnType<typeof groundOf> =>
  groundOf({ up: new Float64Array(right.length).fill(900), right, sampleRate });

describe("common practice, by hand: under a right foot medial is −right, under a left foot +right", () => {
  const ground = sideways([0, 40, 0, -80, 0], 8);
  it.each([
    ["right", 10, 5, 80, 40],
    ["left", 5, 10, 40, 80],
  ] as const)("%s foot", (side, medial, lateral, peakMedial, peakLateral) => {
    const step = { contact: contactOver(0, 0.5, side) };
    expect(medialImpulse(ground, step)).toBeCloseTo(medial, 12);
    expect(lateralImpulse(ground, step)).toBeCloseTo(lateral, 12);
    expect(peakMedialForce(ground, step)).toBe(peakMedial);
    expect(peakLateralForce(ground, step)).toBe(peakLateral);
    expect(mediolateralImpulse(ground, step)).toBeCloseTo(15, 12);
  });
  it("side unknown: no medial, no lateral, but the impulse of both", () => {
    const step = { contact: contactOver(0, 0.5) };
    expect(
      [medialImpulse, lateralImpulse, peakMedialForce, peakLateralForce].map((metric) =>
        metric(ground, step),
      ),
    ).toEqual([null, null, null, null]);
    expect(mediolateralImpulse(ground, step)).toBeCloseTo(15, 12);
  });
  it("a force that never points that way gives 0", () => {
    const step = { contact: contactOver(0, 0.3, "left") };
    expect(Object.is(lateralImpulse(sideways([1, 5, 5, 1], 10), step), 0)).toBe(true);
    expect(peakLateralForce(sideways([1, 5, 5, 1], 10), step)).toBe(0);
  });
});

it("property: medial + lateral = mediolateral, whatever the side and the force", () =>
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -200, max: 200, noNaN: true }), { minLength: 3, maxLength: 40 }),
      fc.constantFrom("left" as const, "right" as const),
      (right, side) => {
        const step = { contact: contactOver(0.0004, (right.length - 1.3) / 1000, side) };
        const ground = sideways(right, 1000);
        const sum = (medialImpulse(ground, step) as number) + (lateralImpulse(ground, step) as number);
        expect(sum).toBeCloseTo(mediolateralImpulse(ground, step), 9);
        expect(
          Math.max(peakMedialForce(ground, step) as number, peakLateralForce(ground, step) as number),
        ).toBe(Math.max(...right.slice(1, right.length - 1).map(Math.abs)));
      },
    ),
  ));

describe("mediolateralExcursion", () => {
  it("law (Newton's second) by hand: F = 40 sin(2πt/0.72) on 70 kg goes 15.0 mm from side to side", () => {
    const T = 0.72;
    const right = Float64Array.from({ length: 1501 }, (_, i) => 40 * Math.sin((2 * Math.PI * i) / 1000 / T));
    const ground = groundOf({ up: new Float64Array(1501).fill(686.4655), right, sampleRate: 1000 });
    const step = { contact: contactOver(0.1, 0.3, "left"), nextSameSide: contactOver(0.82, 1.1, "left") };
    expect(mediolateralExcursion(ground, step)).toBeCloseTo((2 * 40 * T * T) / (4 * Math.PI ** 2 * 70), 6);
    expect(mediolateralExcursion(ground, step)).toBeCloseTo(0.015, 4);
  });
  it("property: a steady sideways push, of a tilted plate say, does not move it", () =>
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (push) => {
        const { ground, steps } = sampledRun();
        const step = steps[0] as (typeof steps)[number];
        const right = (ground.force.right as Float64Array).map((f) => f + push);
        expect(mediolateralExcursion({ ...ground, force: { ...ground.force, right } }, step)).toBeCloseTo(
          mediolateralExcursion(ground, step) as number,
          12,
        );
      }),
      { numRuns: 20 },
    ));
  it("null without a later contact of the same side", () => {
    const { ground, steps } = sampledRun();
    expect(mediolateralExcursion(ground, steps[6] as (typeof steps)[number])).toBeNull();
  });
});

describe.each([
  mediolateralImpulse,
  medialImpulse,
  lateralImpulse,
  peakMedialForce,
  peakLateralForce,
  mediolateralExcursion,
])("%o refuses", (metric) => {
  it("a recording without a rightward force, by name", () => {
    const ground = groundOf({ up: [0, 900, 0], sampleRate: 10 });
    expect(() => metric(ground, { contact: contactOver(0, 0.2, "left") })).toThrow(
      expect.objectContaining({ code: "missing-channel", message: expect.stringContaining(metric.name) }),
    );
  });
  it("a contact outside the recording", () => {
    expect(() => metric(sideways([0, -1, 1], 10), { contact: contactOver(0, 0.3, "left") })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
