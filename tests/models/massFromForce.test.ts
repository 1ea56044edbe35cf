import { expect, it } from "vitest";
import { massFromForce } from "../../src/models/index.js";
import { running, sampledRun } from "../metrics/runs.js";

const { ground, steps } = sampledRun();
const from = steps[0]?.contact.initialContact as number;
const to = steps[0]?.nextSameSide?.initialContact as number;
const { up } = ground.force;

it("law: mean vertical force over a whole stride is body weight; 70 kg within 1e-8 of the formulas' mass", () => {
  expect(massFromForce(up, 1000, from, to) / running.mass).toBeCloseTo(1, 8);
});
it("independent library: SciPy 1.17.1, integral of a degree-1 spline", () => {
  expect(massFromForce(up, 1000, from, to)).toBeCloseTo(running.motion[0]?.mass as number, 10);
});
it("on a slope the force normal to it holds W cos θ (law)", () => {
  const grade = 0.1;
  const normal = up.map((f) => f * Math.cos(Math.atan(grade)));
  expect(massFromForce(normal, 1000, from, to, { grade }) / running.mass).toBeCloseTo(1, 8);
});
it("over half a stride of uneven steps it is another number: whole strides only", () => {
  expect(Math.abs(massFromForce(up, 1000, from, from + 0.3) / running.mass - 1)).toBeGreaterThan(0.05);
});
it.each([
  ["a span outside the samples", 0, 99, {}],
  ["a span that ends a sample behind the last", from, (up.length + 0.5) / 1000, {}],
  ["gravity of 0", from, to, { gravity: 0 }],
  ["a grade in per cent", from, to, { grade: 7 }],
])("refuses %s", (_what, start, end, options) => {
  expect(() => massFromForce(up, 1000, start, end, options)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
it.each([
  [-0.1, 0.5, "from"],
  [99, 100, "from"],
  [0.5, 0.2, "to"],
  [0.5, 99, "to"],
])("a span of %f s to %f s is refused for its %s-end", (start, end, argument) => {
  expect(() => massFromForce(up, 1000, start, end)).toThrow(expect.objectContaining({ argument }));
});
it("refuses infinite gravity", () =>
  expect(() => massFromForce(up, 1000, from, to, { gravity: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ code: "not-finite", argument: "gravity" }),
  ));
it("refuses a force that points down: the sign of the plate is wrong", () => {
  expect(() =>
    massFromForce(
      up.map((f) => -f),
      1000,
      from,
      to,
    ),
  ).toThrow(expect.objectContaining({ code: "out-of-range", argument: "up" }));
});
