import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  convert,
  type Dimension,
  FACTORS,
  isGaitKineticsError,
  type KnownUnit,
} from "../../src/units/index.js";
import { parseQuantity } from "../../src/units/parse/index.js";

const UNITS = Object.keys(FACTORS) as KnownUnit[];

/** Below this a double loses digits, and the last bit is no longer a small part of it. */
const hasAllDigits = (value: number) => value === 0 || Math.abs(value) > 1e-300;

describe("reads", () => {
  it.each(UNITS)("1 %s as the factor itself, to the last bit", (unit) => {
    expect(parseQuantity(`1 ${unit}`, FACTORS[unit].dimension)).toBe(FACTORS[unit].toSi);
  });

  it.each<[string, Dimension, number]>([
    ["154 lb", "mass", 154 * 0.45359237],
    ["154lbs", "mass", 154 * 0.45359237],
    ["150 pounds", "mass", 150 * 0.45359237],
    ["70kg", "mass", 70],
    ["70 KG", "mass", 70],
    ["70 kilogrammes", "mass", 70],
    ["1.2 Mg", "mass", 1200],
    ["36 km/h", "speed", 10],
    ["36 km / h", "speed", 10],
    ["36 kph", "speed", 10],
    ["36 kilometres per hour", "speed", 10],
    ["7.5 mph", "speed", 3.3528],
    ["7.5 miles/hour", "speed", 3.3528],
    ["20 N", "force", 20],
    ["20 newtons", "force", 20],
    ["1.5 kN", "force", 1500],
    ["50 Hz", "frequency", 50],
    ["50 hz", "frequency", 50],
    ["1 kHz", "frequency", 1000],
    ["5 ft 11 in", "length", 1.8034],
    ["178 cm", "length", 1.78],
    ["1.78 metres", "length", 1.78],
    ["1,78 m", "length", 1.78],
    [".5 m", "length", 0.5],
    ["-3 mm", "length", -0.003],
    ["-5 ft 11 in", "length", -1.8034],
    ["250 ms", "time", 0.25],
    ["1 min 30 s", "time", 90],
    ["2e2 ms", "time", 0.2],
    ["9.81 m/s^2", "acceleration", 9.81],
    ["9.81 m/s²", "acceleration", 9.81],
    ["9.81 m/s2", "acceleration", 9.81],
    ["18 N s", "impulse", 18],
    ["18 Ns", "impulse", 18],
    ["7 N·m", "moment", 7],
    ["7000 Nmm", "moment", 7],
    ["7 N m", "energy", 7],
    ["0.1 kJ", "energy", 100],
    ["  70   kg  ", "mass", 70],
  ])("%j as %s %d", (text, dimension, value) => {
    expect(Math.abs(parseQuantity(text, dimension) - value)).toBeLessThanOrEqual(
      2 * Number.EPSILON * Math.abs(value),
    );
  });

  it("property: any number in any unit, as convert has it, but for the last bit", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...UNITS),
        fc.double({ min: -1e9, max: 1e9, noNaN: true }).filter(hasAllDigits),
        fc.constantFrom("", " "),
        (unit, value, blank) => {
          const si = UNITS.find((name) => name === FACTORS[unit].si) as KnownUnit;
          const exact = convert(value, unit, si);
          const read = parseQuantity(`${value}${blank}${unit}`, FACTORS[unit].dimension);
          expect(Math.abs(read - exact)).toBeLessThanOrEqual(2 * Number.EPSILON * Math.abs(exact));
        },
      ),
      { numRuns: 500, seed: 20 },
    ));
});

describe("refuses", () => {
  it.each<[string, Dimension, string, RegExp]>([
    ["1500 N", "mass", "unit-mismatch", /is a force; a mass is needed, such as "70 kg"; mass is not weight/],
    ["70 kg", "force", "unit-mismatch", /is a mass; a force is needed/],
    ["7 J", "moment", "unit-mismatch", /is an energy; a moment is needed/],
    ["12 km", "speed", "unit-mismatch", /is a length/],
    ["5 m^2", "length", "unit-mismatch", /something else/],
    ["70 kg kg", "mass", "unit-mismatch", /something else/],
    ["5:30 min/km", "speed", "unit-mismatch", /pace/],
    ["5.5 min per mile", "speed", "unit-mismatch", /pace/],
    ["70", "mass", "unknown-unit", /"70 kg".*kg, g, lb/],
    ["5 ft 11", "length", "unknown-unit", /no unit/],
    ["11 stone", "mass", "unknown-unit", /"stone".*kg, g, lb/],
    ["5 yd", "length", "unknown-unit", /"yd"/],
    ["5 constructor", "mass", "unknown-unit", /constructor/],
    ["0x10 kg", "mass", "unknown-unit", /x10/],
    ["5 %", "length", "unknown-unit", /%/],
    ["1,500 N", "force", "wrong-type", /write "1500 N" or "1.500 N"/],
    ["seventy kg", "mass", "wrong-type", /no quantity/],
    ["kg", "mass", "wrong-type", /no quantity/],
    ["", "mass", "wrong-type", /no quantity/],
    ["NaN kg", "mass", "wrong-type", /no quantity/],
    ["Infinity kg", "mass", "wrong-type", /no quantity/],
    ["1e999 kg", "mass", "not-finite", /largest/],
    ["5 V", "voltage" as Dimension, "out-of-range", /dimension/],
    [70 as unknown as string, "mass", "wrong-type", /text/],
  ])("%j as %s: %s", (text, dimension, code, message) => {
    expect(() => parseQuantity(text, dimension)).toThrow(
      expect.objectContaining({ code, message: expect.stringMatching(message) }),
    );
  });

  it("property: any text is a finite number or the library's own error, in one line", () => {
    const piece = fc.oneof(
      fc.constantFrom(
        ...UNITS,
        "1",
        ",",
        ".",
        "e",
        "-",
        " ",
        "^",
        "/",
        "*",
        "(",
        ")",
        "999",
        "\n",
        "5 ft 11 in",
      ),
      fc.string({ unit: "binary", maxLength: 4 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), fc.constantFrom(...UNITS), (pieces, unit) => {
        try {
          expect(Number.isFinite(parseQuantity(pieces.join(""), FACTORS[unit].dimension))).toBe(true);
        } catch (caught) {
          if (!isGaitKineticsError(caught)) throw caught;
          expect(caught.message).not.toMatch(/[\r\n]/);
        }
      }),
      { numRuns: 2000, seed: 20 },
    );
  });
});
