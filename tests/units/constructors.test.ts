import { expect, it } from "vitest";
import * as units from "../../src/units/index.js";

it.each([
  units.newtons,
  units.kilograms,
  units.metres,
  units.seconds,
  units.hertz,
  units.metresPerSecond,
  units.metresPerSecondSquared,
  units.newtonSeconds,
  units.newtonsPerSecond,
  units.newtonMetres,
  units.joules,
  units.stepsPerMinute,
  units.fraction,
])("%o states a unit and leaves the number alone", (state) => {
  expect(state(12.5)).toBe(12.5);
  expect(typeof state(12.5)).toBe("number");
});

it("samples keep their array: nothing is copied", () => {
  const values = new Float64Array([1, 2]);
  expect(units.samplesOf("N", values)).toBe(values);
});

it("the version is that of the package", async () => {
  const { default: manifest } = await import("../../package.json", { with: { type: "json" } });
  expect(units.VERSION).toBe(manifest.version);
});
