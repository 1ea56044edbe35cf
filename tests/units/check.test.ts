import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requireFiniteSamples, requireNumber, requireOneOf } from "../../src/units/index.js";

it("2026-11-25: an object without a prototype, a large integer or a list that holds itself made the message fail", () => {
  const circular: unknown[] = [];
  circular.push(circular);
  for (const given of [Object.create(null), [Object.create(null)], circular, 10n, Symbol("x"), () => 1]) {
    expect(() => requireNumber("share", given)).toThrow(expect.objectContaining({ code: "wrong-type" }));
    expect(() => requireOneOf("side", given, ["left", "right"])).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  }
});

describe("requireNumber", () => {
  it.each([
    [0.5, { above: 0, below: 1 }],
    [0, { from: 0, to: 1 }],
    [1, { from: 0, to: 1 }],
    [-3, {}],
    [4, { whole: true }],
  ])("lets %d pass %o", (value, bounds) => {
    expect(requireNumber("share", value, bounds)).toBe(value);
  });

  it.each<[unknown, object, string]>([
    ["0.5", {}, "wrong-type"],
    [undefined, {}, "wrong-type"],
    [null, {}, "wrong-type"],
    [5n, {}, "wrong-type"],
    [Number.NaN, {}, "not-finite"],
    [Number.POSITIVE_INFINITY, { above: 0 }, "not-finite"],
    [0, { above: 0 }, "out-of-range"],
    [1, { below: 1 }, "out-of-range"],
    [-0.1, { from: 0 }, "out-of-range"],
    [1.1, { to: 1 }, "out-of-range"],
    [4.5, { whole: true }, "out-of-range"],
  ])("refuses %s with %o as %s", (value, bounds, code) => {
    expect(() => requireNumber("share", value, bounds)).toThrow(
      expect.objectContaining({ code, argument: "share" }),
    );
  });

  it("says what it was, what is allowed, and the hint", () => {
    expect(() =>
      requireNumber("mass", 700, { above: 0, below: 500, unit: "kg", hint: "it may be in newtons" }),
    ).toThrow("mass is 700 kg; a finite number above 0 and below 500 kg is needed (it may be in newtons)");
    expect(() => requireNumber("order", 4.5, { from: 2, whole: true })).toThrow(
      "order is 4.5; a whole number from 2 is needed",
    );
    expect(() => requireNumber("share", 2, { to: 1, unit: "1" })).toThrow(
      "share is 2; a finite number to 1 is needed",
    );
  });
});

describe("requireFiniteSamples", () => {
  it("property: finite samples pass, and one that is not is found", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1, maxLength: 50 }),
        fc.nat(),
        fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
        (values, place, bad) => {
          const samples = new Float64Array(values);
          expect(requireFiniteSamples("up", samples)).toBeUndefined();
          const index = place % samples.length;
          samples[index] = bad;
          expect(() => requireFiniteSamples("up", samples)).toThrow(
            expect.objectContaining({
              code: "not-finite",
              where: `sample ${index}`,
              values: { index, given: String(bad) },
            }),
          );
        },
      ),
      { numRuns: 300, seed: 20 },
    ));

  it("opposite infinities do not cancel, and a sum that overflows is no fault", () => {
    const infinite = new Float64Array([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]);
    expect(() => requireFiniteSamples("up", infinite)).toThrow(
      expect.objectContaining({ where: "sample 0" }),
    );
    expect(
      requireFiniteSamples("up", new Float64Array([Number.MAX_VALUE, Number.MAX_VALUE])),
    ).toBeUndefined();
  });

  it.each([[[1, 2]], [new Float32Array(2)], [undefined], [null], ["12"]])(
    "refuses %o, which is no Float64Array",
    (samples) => {
      expect(() => requireFiniteSamples("up", samples)).toThrow(
        expect.objectContaining({ code: "wrong-type", argument: "up" }),
      );
    },
  );
});

describe("requireOneOf", () => {
  it("gives the word back", () => {
    expect(requireOneOf("surface", "belt", ["ground", "belt"])).toBe("belt");
  });

  it.each(["track", "Belt", "", undefined, null, 3, Symbol("belt")])("refuses %s with the list", (value) => {
    expect(() => requireOneOf("surface", value, ["ground", "belt"])).toThrow(
      expect.objectContaining({
        code: "out-of-range",
        message: expect.stringContaining('"ground" or "belt"'),
      }),
    );
  });
});
