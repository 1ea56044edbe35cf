import { expect, it } from "vitest";
import { type Complete, withDefaults } from "../../src/units/index.js";

interface Options {
  readonly cutoff?: number | null | undefined;
  readonly order?: number | undefined;
}
const DEFAULTS: Complete<Options> = { cutoff: 50, order: 4 };

it("fills what is left out or undefined, keeps null and what is given, and changes neither argument", () => {
  const options: Options = { cutoff: null, order: undefined };
  expect(withDefaults(DEFAULTS, options)).toEqual({ cutoff: null, order: 4 });
  expect(withDefaults(DEFAULTS, { order: 2 })).toEqual({ cutoff: 50, order: 2 });
  expect(withDefaults(DEFAULTS, {})).not.toBe(DEFAULTS);
  expect(DEFAULTS).toEqual({ cutoff: 50, order: 4 });
  expect(options).toEqual({ cutoff: null, order: undefined });
});

it.each(["cutof", "toString", "constructor"])("refuses the option %s with the list", (name) => {
  expect(() => withDefaults(DEFAULTS, { [name]: 5 })).toThrow(
    expect.objectContaining({
      code: "unknown-option",
      argument: name,
      values: { allowed: ["cutoff", "order"] },
    }),
  );
});

it("2026-11-25: an option with the name of a method every object has was accepted", () => {
  expect(() => withDefaults(DEFAULTS, { valueOf: undefined } as Options)).toThrow(
    expect.objectContaining({ code: "unknown-option" }),
  );
});

it.each([[null], ["fast"], [5]])("refuses %j for options", (options) => {
  expect(() => withDefaults(DEFAULTS, options as unknown as Options)).toThrow(
    expect.objectContaining({ code: "wrong-type", argument: "options" }),
  );
});
