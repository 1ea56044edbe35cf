import { describe, expect, it } from "vitest";
import { stepLength, strideLength } from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";

const contact = contactOver(0.1, 0.35, "left");
const still = { up: new Float64Array(2001), sampleRate: 1000 };

describe("published (Murray, Drought & Kory 1964, men, table): 1.54 m/s at 117 steps/min", () => {
  const ground = groundOf({ ...still, speed: 1.54, surface: "ground" });
  const step = {
    contact,
    next: contactOver(0.1 + 60 / 117, 1),
    nextSameSide: contactOver(0.1 + 120 / 117, 1.8),
  };
  it("step 0.79 m", () => expect(stepLength(ground, step)).toBeCloseTo(0.79, 2));
  it("stride 1.58 m", () => expect(strideLength(ground, step)).toBeCloseTo(1.58, 2));
  it("the same on a belt that runs at this speed (common practice)", () => {
    const belt = groundOf({ ...still, speed: 1.54, surface: "belt" });
    expect(stepLength(belt, step)).toBe(stepLength(ground, step));
    expect(strideLength(belt, step)).toBe(strideLength(ground, step));
  });
});

describe.each([stepLength, strideLength])("%o", (metric) => {
  const step = { contact, next: contactOver(0.5, 0.7), nextSameSide: contactOver(0.9, 1.1) };
  it("null without the neighbour", () => {
    expect(metric(groundOf({ ...still, speed: 3, surface: "belt" }), { contact })).toBeNull();
  });
  it.each([
    ["no speed", { surface: "belt" as const }, "missing-value", "speed"],
    ["no surface", { speed: 3 }, "missing-value", "surface"],
    ["a speed of 0", { speed: 0, surface: "belt" as const }, "out-of-range", "speed"],
    ["a speed that is no number", { speed: Number.NaN, surface: "belt" as const }, "not-finite", "speed"],
  ])("refuses %s", (_what, stated, code, argument) => {
    expect(() => metric(groundOf({ ...still, ...stated }), step)).toThrow(
      expect.objectContaining({ code, argument }),
    );
  });
});
