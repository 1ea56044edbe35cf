import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type HofBody, type HofQuantity, hofNormalised } from "../../src/models/index.js";
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6
import published from "../fixtures/models/published.json" with { type: "json" };

const { hof, speed, strideTime, legLength } = models.walking;

describe("hofNormalised (Hof 1996, Gait Posture 4:222)", () => {
  it.each([
    ["speed", speed, hof.speed],
    ["length", (speed * strideTime) / 2, hof.length],
    ["time", strideTime / 2, hof.time],
    ["frequency", 2 / strideTime, hof.frequency],
  ] as const)("NumPy: %s of the walk", (quantity, value, expected) =>
    expect(hofNormalised(quantity, value, { legLength })).toBeCloseTo(expected, 12),
  );
  it("NumPy: the speed squared is the Froude number", () =>
    expect(hofNormalised("speed", speed, { legLength }) ** 2).toBeCloseTo(hof.froude, 12));
  it("worked example (gait.johnson.transition): leg 0.9 m, Froude number 1 at 3 m/s", () => {
    const { inputs, expected, tolerance } = published["gait.johnson.transition"];
    const unit = 1 / hofNormalised("speed", 1, inputs);
    expect(Math.abs(unit * Math.sqrt(inputs.froude) - expected.speed)).toBeLessThan(tolerance.abs);
  });
  it.each(["energy.tucker.walk", "energy.tucker.jog"] as const)(
    "worked example (%s): power ÷ speed, both dimensionless, is the cost of transport",
    (id) => {
      const { inputs, expected, tolerance } = published[id];
      const body = { legLength: 0.9, mass: inputs.weight / 9.80665 };
      const cost = hofNormalised("power", inputs.power, body) / hofNormalised("speed", inputs.speed, body);
      expect(Math.abs(cost - expected.costOfTransport)).toBeLessThan(tolerance.abs);
    },
  );
  it("by hand: body weight is 1, on a lever of the leg's length 1 too", () => {
    const body = { legLength: 0.9, mass: 70 };
    expect(hofNormalised("force", 70 * 9.80665, body)).toBeCloseTo(1, 12);
    expect(hofNormalised("moment", 70 * 9.80665 * 0.9, body)).toBeCloseTo(1, 12);
  });
  it("law: impulse = force × time, power = force × speed, moment = force × length, speed = length ÷ time", () => {
    const body = { legLength: 0.87, mass: 63, gravity: 9.78 };
    const of = (quantity: HofQuantity, value: number): number => hofNormalised(quantity, value, body);
    expect(of("impulse", 900 * 0.3)).toBeCloseTo(of("force", 900) * of("time", 0.3), 12);
    expect(of("power", 900 * 1.2)).toBeCloseTo(of("force", 900) * of("speed", 1.2), 12);
    expect(of("moment", 900 * 0.1)).toBeCloseTo(of("force", 900) * of("length", 0.1), 12);
    expect(of("speed", 0.7 / 0.5)).toBeCloseTo(of("length", 0.7) / of("time", 0.5), 12);
    expect(of("frequency", 1 / 0.5)).toBeCloseTo(1 / of("time", 0.5), 12);
  });
  it("property: a body k times as long and k³ times as heavy that moves alike has the same numbers", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2, noNaN: true }), (k) => {
        const small: HofBody = { legLength: 0.9, mass: 70 };
        const large: HofBody = { legLength: 0.9 * k, mass: 70 * k ** 3 };
        expect(hofNormalised("speed", 1.3 * Math.sqrt(k), large)).toBeCloseTo(
          hofNormalised("speed", 1.3, small),
          10,
        );
        expect(hofNormalised("impulse", 20 * k ** 3.5, large)).toBeCloseTo(
          hofNormalised("impulse", 20, small),
          10,
        );
      }),
    ));
  it.each(["force", "moment", "power", "impulse"] as const)("refuses a %s without the mass", (quantity) =>
    expect(() => hofNormalised(quantity, 1, { legLength: 0.9 })).toThrow(
      expect.objectContaining({ code: "missing-value", argument: "mass" }),
    ),
  );
  it.each([
    ["speed", 1, { legLength: 0 }, "out-of-range"],
    ["force", 1, { legLength: 0.9, mass: -70 }, "out-of-range"],
    ["force", 1, { legLength: 0.9, mass: 70, gravity: 0 }, "out-of-range"],
    ["speed", Number.NaN, { legLength: 0.9 }, "not-finite"],
    ["weight", 1, { legLength: 0.9 }, "out-of-range"],
  ] as [HofQuantity, number, HofBody, string][])("refuses %s of %f over %o", (quantity, value, body, code) =>
    expect(() => hofNormalised(quantity, value, body)).toThrow(expect.objectContaining({ code })),
  );
});
