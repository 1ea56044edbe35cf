import { expect, it, vi } from "vitest";
import { fail, GaitKineticsError, isGaitKineticsError } from "../../src/units/index.js";

const caughtFrom = (action: () => unknown): unknown => {
  try {
    action();
  } catch (caught) {
    return caught;
  }
  throw new Error("nothing was thrown");
};

it("an error carries code, message, argument, place and values", () => {
  const caught = caughtFrom(() =>
    fail("out-of-range", "mass is 700 kg", { argument: "mass", where: "line 3", values: { given: 700 } }),
  );
  expect(caught).toBeInstanceOf(GaitKineticsError);
  expect(caught).toBeInstanceOf(Error);
  expect(caught).toMatchObject({
    name: "GaitKineticsError",
    code: "out-of-range",
    message: "mass is 700 kg",
    argument: "mass",
    where: "line 3",
    values: { given: 700 },
  });
});

it("a line break in a name does not break the message", () => {
  expect(caughtFrom(() => fail("gap", 'channel "Force\r\nplate" has a gap'))).toMatchObject({
    message: 'channel "Force plate" has a gap',
  });
});

it("details may be left out", () => {
  expect(caughtFrom(() => fail("gap", "a sample is missing"))).toMatchObject({
    argument: undefined,
    where: undefined,
    values: undefined,
  });
});

it("isGaitKineticsError knows an error of a second instance of the module, which instanceof does not", async () => {
  vi.resetModules();
  const second = await import("../../src/units/index.js");
  expect(second.GaitKineticsError).not.toBe(GaitKineticsError);
  const foreign = caughtFrom(() => second.fail("gap", "a sample is missing"));
  expect(foreign instanceof GaitKineticsError).toBe(false);
  expect(isGaitKineticsError(foreign)).toBe(true);
  expect(second.isGaitKineticsError(caughtFrom(() => fail("gap", "a sample is missing")))).toBe(true);
});

it.each([
  ["another error", new Error("no")],
  ["an error of the name without a code", Object.assign(new Error("no"), { name: "GaitKineticsError" })],
  ["an object that looks like one", { name: "GaitKineticsError", code: "gap", message: "no" }],
  ["a text", "GaitKineticsError"],
  ["nothing", undefined],
  ["null", null],
])("isGaitKineticsError does not take %s for one", (_, caught) => {
  expect(isGaitKineticsError(caught)).toBe(false);
});
