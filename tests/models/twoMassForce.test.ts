import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ForcePulse, twoMassForce } from "../../src/models/index.js";
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6

const runner = { mass: 70, contactTime: 0.25, aerialTime: 0.1, landingSpeed: 1.2, landingTime: 0.03 };

describe("twoMassForce (masses and shape: Clark, Ryan & Weyand 2017, J Exp Biol 220:247)", () => {
  it.each(models.twoMass)("NumPy: pulses of $mass kg", ({ lowerLimb, remainder, force, ...input }) => {
    const result = twoMassForce(input, { sampleRate: 25 / input.contactTime });
    expect(result.lowerLimb.impulse).toBeCloseTo(lowerLimb, 9);
    expect(result.remainder.impulse).toBeCloseTo(remainder, 9);
    expect(result.force.length).toBe(26);
    for (const [i, value] of force.entries()) expect(result.force[i]).toBeCloseTo(value, 7);
  });
  it("law: the whole impulse is the weight times contact and flight; by the samples too", () => {
    const { lowerLimb, remainder, force } = twoMassForce(runner, { sampleRate: 10_000 });
    const whole = 70 * 9.80665 * 0.35;
    expect(lowerLimb.impulse + remainder.impulse).toBeCloseTo(whole, 9);
    // Raised cosines end flat: the sum over samples is their integral.
    expect(force.reduce((sum, f) => sum + f, 0) / 10_000).toBeCloseTo(whole, 6);
  });
  it("law: in the rising half of its pulse the lower limb loses the landing speed, (∫F − m₁ g t)/m₁ = Δv", () => {
    const { lowerLimb } = twoMassForce(runner);
    const m1 = 0.08 * 70;
    expect((lowerLimb.impulse / 2 - m1 * 9.80665 * 0.03) / m1).toBeCloseTo(1.2, 12);
  });
  it("property: both pulses go with mass", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 4, noNaN: true }), (k) => {
        const pulses = (mass: number): ForcePulse[] => {
          const { lowerLimb, remainder } = twoMassForce({ ...runner, mass });
          return [lowerLimb, remainder];
        };
        const one = pulses(70);
        for (const [i, { amplitude }] of pulses(70 * k).entries()) {
          expect(amplitude / k / (one[i] as ForcePulse).amplitude).toBeCloseTo(1, 12);
        }
      }),
    ));
  it.each([
    ["a landing longer than half the contact", { landingTime: 0.13 }],
    ["a landing that takes more impulse than there is", { landingSpeed: 25 }],
    ["no mass", { mass: 0 }],
  ])("refuses %s", (_what, change) =>
    expect(() => twoMassForce({ ...runner, ...change })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );
  it("refuses a lower limb of the whole body", () =>
    expect(() => twoMassForce(runner, { lowerLimbShare: 1 })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: "lowerLimbShare" }),
    ));
});
