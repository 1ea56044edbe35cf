import fc from "fast-check";
import { create, type FactoryFunctionMap, unitDependencies } from "mathjs";
import { describe, expect, it } from "vitest";
import {
  bodyWeight,
  convert,
  FACTORS,
  type KnownUnit,
  STANDARD_GRAVITY,
  unitFactor,
} from "../../src/units/index.js";

const UNITS = Object.keys(FACTORS) as KnownUnit[];
const ofDimension = (unit: KnownUnit) =>
  UNITS.filter((other) => FACTORS[other].dimension === FACTORS[unit].dimension);

describe("exact conversions", () => {
  it.each<[number, KnownUnit, number, KnownUnit]>([
    [12, "in", 1, "ft"],
    [5280, "ft", 1, "mi"],
    [63360, "in", 1, "mi"],
    [1, "in", 25.4, "mm"],
    [1, "mi", 1.609344, "km"],
    [1, "lb", 453.59237, "g"],
    [1, "lb", 0.45359237, "kg"],
    [1, "h", 3600, "s"],
    [1, "min", 60000, "ms"],
    [36, "km/h", 10, "m/s"],
    [60, "mi/h", 88 / 3, "m/s"],
    [60, "m/min", 1, "m/s"],
    [1, "kgf", 9.80665, "N"],
    [1, "lbf", 4.4482216152605, "N"],
    [1, "kN", 1000, "N"],
    [1000, "N mm", 1, "N m"],
    [1, "kHz", 1000, "Hz"],
    [1, "kJ", 1000, "J"],
  ])(
    "%d %s = %d %s (international yard and pound of 1959, standard gravity, SI prefixes)",
    (value, from, worth, to) => {
      // 60 mi/h are 88 ft/s: 26.8224 m/s.
      const expected = from === "mi/h" ? 26.8224 : worth;
      expect(Math.abs(convert(value, from, to) / expected - 1)).toBeLessThanOrEqual(Number.EPSILON);
    },
  );

  it.each<[number, KnownUnit, number, KnownUnit]>([
    [12, "in", 1, "ft"],
    [1, "ft", 12, "in"],
    [5280, "ft", 1, "mi"],
    [1, "mi", 5280, "ft"],
    [63360, "in", 1, "mi"],
    [36, "km/h", 10, "m/s"],
    [10, "m/s", 36, "km/h"],
    [1, "lbf", 0.45359237, "kgf"],
  ])("%d %s = %d %s to the last bit", (value, from, worth, to) => {
    expect(convert(value, from, to)).toBe(worth);
  });

  it("every ratio is of whole numbers, and every factor is its quotient", () => {
    for (const [unit, { ratio, toSi }] of Object.entries(FACTORS)) {
      expect(ratio.every(Number.isSafeInteger), unit).toBe(true);
      expect(toSi, unit).toBe(ratio[0] / ratio[1]);
    }
  });

  it("a pound-force is the weight of a pound, in whole numbers", () => {
    const { lb, kgf, lbf } = FACTORS;
    expect(BigInt(lb.ratio[0]) * BigInt(kgf.ratio[0])).toBe(BigInt(lbf.ratio[0]));
    expect(BigInt(lb.ratio[1]) * BigInt(kgf.ratio[1])).toBe(BigInt(lbf.ratio[1]));
  });

  it("independent library: mathjs 15 gives the same factors", () => {
    const math = create(unitDependencies as FactoryFunctionMap);
    for (const unit of UNITS) {
      const { si, toSi } = FACTORS[unit];
      expect(math.unit(1, unit).toNumber(si) / toSi, unit).toBeCloseTo(1, 14);
    }
  });

  it("property: there and back is the identity", () =>
    fc.assert(
      fc.property(
        fc
          .constantFrom(...UNITS)
          .chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...ofDimension(from)))),
        fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
        ([from, to], value) => {
          const back = convert(convert(value, from, to), to, from);
          // Four roundings.
          expect(Math.abs(back / value - 1)).toBeLessThanOrEqual(2 * Number.EPSILON);
        },
      ),
      { numRuns: 500, seed: 20 },
    ));

  it("property: a way through a third unit is the straight way", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS).chain((from) => {
          const same = fc.constantFrom(...ofDimension(from));
          return fc.tuple(fc.constant(from), same, same);
        }),
        ([from, through, to]) => {
          expect(convert(convert(1, from, through), through, to) / convert(1, from, to)).toBeCloseTo(1, 14);
        },
      ),
      { numRuns: 300, seed: 20 },
    ));
});

describe("names", () => {
  it.each([
    ["N mm", "N mm"],
    [" N*mm ", "N mm"],
    ["N · mm", "N mm"],
    ["N⋅m", "N m"],
    ["Nm", "N m"],
    ["Nmm", "N mm"],
    ["Ns", "N s"],
    ["m/s²", "m/s^2"],
    ["km/h", "km/h"],
  ])("%j is %s", (written, unit) => {
    expect(unitFactor(written)).toBe(FACTORS[unit as KnownUnit]);
  });

  it.each(["", "stone", "n", "KG", "toString", "__proto__", "N\nm/s"])(
    "%j is unknown, and said with what is known",
    (name) => {
      expect(() => unitFactor(name, "line 1")).toThrow(
        expect.objectContaining({
          code: "unknown-unit",
          where: "line 1",
          message: expect.stringMatching(/^line 1: .*kg.*$/),
        }),
      );
    },
  );

  it("mass is no weight: kilograms do not convert to newtons", () => {
    expect(() => convert(70, "kg", "N")).toThrow(expect.objectContaining({ code: "unit-mismatch" }));
    expect(() => convert(1, "J", "N m")).toThrow(expect.objectContaining({ code: "unit-mismatch" }));
    expect(() => convert(1, "stone" as KnownUnit, "kg")).toThrow(
      expect.objectContaining({ code: "unknown-unit" }),
    );
  });
});

it("weight is mass times standard gravity, 9.80665 m/s² (ISO 80000-3), or times the gravity given", () => {
  expect(STANDARD_GRAVITY).toBe(9.80665);
  expect(bodyWeight(70)).toBeCloseTo(686.4655, 12);
  expect(bodyWeight(70, 1.62)).toBeCloseTo(113.4, 12);
});
