import { describe, expect, it } from "vitest";
import { halfSineFit, positiveExternalWork } from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";
import { mirroredRun, sampledRun } from "../runs.js";

const BW = 70 * 9.80665;
const { ground, steps } = sampledRun();
const step = steps[0] as Required<(typeof steps)[number]>;

describe("halfSineFit (half sine: Morin et al. 2005, J Appl Biomech 21:167)", () => {
  it("is 1 for a half sine, whatever its peak", () => {
    const up = Float64Array.from({ length: 241 }, (_, i) => 2.4 * BW * Math.sin((Math.PI * i) / 240));
    expect(halfSineFit(groundOf({ up, sampleRate: 1000 }), { contact: contactOver(0, 0.24) })).toBeCloseTo(
      1,
      4,
    );
  });
  it("falls with an impact peak on top", () => {
    const agreement = (impact: number): number => {
      const up = Float64Array.from(
        { length: 241 },
        (_, i) =>
          BW *
          (2.4 * Math.sin((Math.PI * i) / 240) +
            (i <= 50 ? impact * (1 - Math.cos((2 * Math.PI * i) / 50)) : 0)),
      );
      return halfSineFit(groundOf({ up, sampleRate: 1000 }), { contact: contactOver(0, 0.24) }) as number;
    };
    expect(agreement(0.3)).toBeLessThan(agreement(0));
    expect(agreement(0.6)).toBeLessThan(agreement(0.3));
  });
  it("refuses a contact outside the recording", () => {
    expect(() => halfSineFit(ground, { contact: contactOver(3, 4) })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});

describe("positiveExternalWork", () => {
  it("law: with neither braking nor propulsion only the bounce is left, weight × drop and the like", () => {
    const run = mirroredRun(1000, 2);
    const level = {
      ...run.ground,
      force: { ...run.ground.force, forward: new Float64Array(run.ground.force.up.length) },
    };
    const bounce = positiveExternalWork(level, run.steps[0] as (typeof run.steps)[number]);
    // 60.2 J vertical (energy.json, SciPy 1.17.1).
    expect(Math.abs((bounce as number) / 60.2087016846323 - 1)).toBeLessThan(1e-4);
  });
  it("grows with the speed at which the same braking happens (E = F v): at 2 m/s less than at 3 m/s", () => {
    const at = (speed: number): number => positiveExternalWork({ ...ground, speed }, step) as number;
    expect(at(2)).toBeLessThan(at(3));
  });
  it("the grade counts: 5 % uphill adds about the weight lifted in a step, m g 0.05 × 1.08 m = 37 J", () => {
    const cos = 1 / Math.hypot(1, 0.05);
    const up = ground.force.up.map((f) => cos * f);
    const forward = (ground.force.forward as Float64Array).map(
      (f, i) => f + 0.05 * cos * (ground.force.up[i] as number),
    );
    const uphill = { ...ground, grade: 0.05, force: { up, forward } };
    const more =
      (positiveExternalWork(uphill, step) as number) - (positiveExternalWork(ground, step) as number);
    expect(more).toBeGreaterThan(15);
    expect(more).toBeLessThan(37.1);
  });
  it("a weighed mass 5 % off is not used where the stride tells the mass", () => {
    expect(positiveExternalWork({ ...ground, subject: { mass: 73.5 } }, step)).toBe(
      positiveExternalWork(ground, step),
    );
  });
  it("null without neighbours", () => {
    expect(positiveExternalWork(ground, { contact: step.contact, next: step.next })).toBeNull();
    expect(
      positiveExternalWork(ground, { contact: step.contact, nextSameSide: step.nextSameSide }),
    ).toBeNull();
  });
  it.each([
    ["no forward force", { force: { up: ground.force.up } }, "missing-channel"],
    ["a speed below 0", { speed: -3 }, "out-of-range"],
    ["a grade in per cent", { grade: 5 }, "out-of-range"],
  ])("refuses %s", (_what, change, code) => {
    expect(() => positiveExternalWork({ ...ground, ...change }, step)).toThrow(
      expect.objectContaining({ code }),
    );
  });
});
