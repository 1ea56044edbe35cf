import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AirDragOptions, airDrag, airDragCaution } from "../../src/models/index.js";

const body = { mass: 70, height: 1.75 };

describe("airDrag", () => {
  it("law of drag, by hand: ρ C A u²/2 = 1.2 × 0.9 × 0.5 × 16/2 = 4.32 N", () =>
    expect(airDrag(4, { frontalArea: 0.5, airDensity: 1.2 })).toBeCloseTo(4.32, 12));
  it("gas law: the density of dry air at 20 °C and 101.325 kPa is 101325/(287.05 × 293.15) kg/m³", () =>
    expect(airDrag(1, { frontalArea: 2, dragCoefficient: 1 })).toBeCloseTo(101_325 / (287.05 * 293.15), 3));
  it("body surface of 70 kg and 175 cm is 1.85 m² (Du Bois & Du Bois 1916, from memory), 0.266 of it in the wind", () =>
    expect(airDrag(1, { ...body, airDensity: 2, dragCoefficient: 1 }) / 0.266).toBeCloseTo(1.85, 2));
  it("plausible: 3 N at about 3.4 m/s for an adult (from memory)", () => {
    expect(airDrag(3.4, body)).toBeGreaterThan(2.7);
    expect(airDrag(3.4, body)).toBeLessThan(3.3);
  });
  it("property: grows with the square of the speed through the air; a wind from behind that outruns the runner pushes", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (speed, wind) => {
          expect(airDrag(2 * speed, body) / airDrag(speed, body)).toBeCloseTo(4, 10);
          expect(airDrag(speed, { ...body, headwind: wind })).toBeCloseTo(airDrag(speed + wind, body), 10);
          expect(airDrag(0, { ...body, headwind: -wind })).toBeCloseTo(-airDrag(wind, body), 10);
        },
      ),
    ));
  it.each([{}, { mass: 70 }, { height: 1.75 }])("refuses a body that is not stated: %o", (options) =>
    expect(() => airDrag(4, options)).toThrow(expect.objectContaining({ code: "missing-value" })),
  );
  it.each([
    [-1, body],
    [4, { frontalArea: 0 }],
    [4, { ...body, height: 175 }],
    [4, { ...body, mass: 0 }],
    [4, { ...body, airDensity: 0 }],
    [4, { ...body, dragCoefficient: -1 }],
  ] as [number, AirDragOptions][])("refuses %f m/s with %o", (speed, options) =>
    expect(() => airDrag(speed, options)).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});

describe("airDragCaution (a limit of 3.5 m/s over ground, this library's choice)", () => {
  it("speaks over ground above 3.5 m/s where no drag was stated", () => {
    const caution = airDragCaution({ speed: 4.2, surface: "ground", drag: null });
    expect(caution).toMatchObject({ code: "air-drag", values: { speed: 4.2, limit: 3.5 } });
    expect(caution?.message).toContain("4.2 m/s");
  });
  it.each([
    ["on a belt", { speed: 6, surface: "belt", drag: null }],
    ["at 3.5 m/s", { speed: 3.5, surface: "ground", drag: null }],
    ["with a drag", { speed: 6, surface: "ground", drag: 8 }],
    ["with a drag of 0", { speed: 6, surface: "ground", drag: 0 }],
  ] as const)("is silent %s", (_what, trial) => expect(airDragCaution(trial)).toBeNull());
  it("refuses NaN for a speed", () =>
    expect(() => airDragCaution({ speed: Number.NaN, surface: "ground", drag: null })).toThrow(
      expect.objectContaining({ code: "not-finite" }),
    ));
});
