import { describe, expect, it } from "vitest";
import {
  halfSineFit,
  positiveExternalWork,
  positiveWorkForward,
  positiveWorkLateral,
  positiveWorkVertical,
} from "../../../src/metrics/index.js";
import energy from "../../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import models from "../../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6, SciPy 1.17.1
import { contactOver, groundOf } from "../../helpers.js";
import { mirroredRun, running, sampledRun } from "../runs.js";

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

describe("work by axis", () => {
  const AXES = [
    ["forward", positiveWorkForward],
    ["vertical", positiveWorkVertical],
    ["lateral", positiveWorkLateral],
  ] as const;

  describe.each(running.motion.filter((row) => row.grade === 0))(
    "SciPy 1.17.1, degree-1 spline integrated twice over each stride: contact $index",
    (row) => {
      it.each(AXES)("%s", (axis, metric) =>
        expect(metric(ground, steps[row.index] as (typeof steps)[number])).toBeCloseTo(
          row.atSamples.step[axis][0] as number,
          8,
        ),
      );
    },
  );
  it("SciPy 1.17.1 on a slope of 5 %: forward and vertical", () => {
    const row = running.motion.find(({ grade }) => grade === 0.05) as (typeof running.motion)[number];
    const cos = 1 / Math.hypot(1, 0.05);
    const leaning = (ground.force.forward as Float64Array).map(
      (f, i) => f + 0.05 * cos * (ground.force.up[i] as number),
    );
    const force = { ...ground.force, up: ground.force.up.map((f) => cos * f), forward: leaning };
    const uphill = { ...ground, grade: 0.05, force };
    const here = steps[row.index] as (typeof steps)[number];
    expect(positiveWorkForward(uphill, here)).toBeCloseTo(row.atSamples.step.forward[0] as number, 8);
    expect(positiveWorkVertical(uphill, here)).toBeCloseTo(row.atSamples.step.vertical[0] as number, 8);
  });
  it("SciPy 1.17.1, 400 001 points of the mirrored step: 53.22, 60.21 and 0.221 J within 0.05 %", () => {
    const run = mirroredRun(1000, 2);
    const here = run.steps[0] as (typeof steps)[number];
    expect(Math.abs((positiveWorkForward(run.ground, here) ?? 0) / energy.forward - 1)).toBeLessThan(1e-4);
    expect(Math.abs((positiveWorkVertical(run.ground, here) ?? 0) / energy.vertical - 1)).toBeLessThan(1e-4);
    // One rise and one fall a step in the mirrored run, so the sum of rises is the range.
    expect(Math.abs((positiveWorkLateral(run.ground, here) ?? 0) / energy.lateralRange - 1)).toBeLessThan(
      5e-4,
    );
  });
  it("SciPy 1.17.1: 5 N of drag in forward and external work, within 2e-4", () => {
    const run = mirroredRun(1000, 2);
    const here = run.steps[0] as (typeof steps)[number];
    const { drag, forwardWithDrag, externalWithDrag } = models.mirrored;
    expect(
      Math.abs((positiveWorkForward(run.ground, here, { drag }) ?? 0) / forwardWithDrag - 1),
    ).toBeLessThan(2e-4);
    expect(
      Math.abs((positiveExternalWork(run.ground, here, { drag }) ?? 0) / externalWithDrag - 1),
    ).toBeLessThan(2e-4);
  });
  it("law: external work is at most forward + vertical, at least the larger of them, and no lateral is in it", () => {
    for (const here of steps.slice(0, 6)) {
      const [forward, vertical] = [
        positiveWorkForward(ground, here) ?? 0,
        positiveWorkVertical(ground, here) ?? 0,
      ];
      const external = positiveExternalWork(ground, here) ?? 0;
      // Where both only rise together the two are equal but for the rounding of some 350 sums.
      expect(external).toBeLessThanOrEqual((forward + vertical) * (1 + 1e-14));
      expect(external).toBeGreaterThan(Math.max(forward, vertical));
      const straight = {
        ...ground,
        force: { up: ground.force.up, forward: ground.force.forward as Float64Array },
      };
      expect(positiveExternalWork(straight, here)).toBe(external);
    }
  });
  it("law: vertical and lateral work do not depend on the speed, forward work grows with it", () => {
    const slow = { ...ground, speed: 2 };
    expect(positiveWorkVertical(slow, step)).toBe(positiveWorkVertical(ground, step));
    expect(positiveWorkLateral(slow, step)).toBe(positiveWorkLateral(ground, step));
    expect(positiveWorkForward(slow, step)).toBeLessThan(positiveWorkForward(ground, step) as number);
  });
  it.each(AXES)("%s: null without neighbours", (_axis, metric) => {
    expect(metric(ground, { contact: step.contact, next: step.next })).toBeNull();
    expect(metric(ground, { contact: step.contact, nextSameSide: step.nextSameSide })).toBeNull();
  });
  const { up, forward } = ground.force as Required<typeof ground.force>;
  it.each([
    ["no forward force", positiveWorkForward, { force: { up } }, {}, "missing-channel"],
    ["no rightward force", positiveWorkLateral, { force: { up, forward } }, {}, "missing-channel"],
    ["no surface", positiveWorkForward, { surface: undefined }, {}, "missing-value"],
    ["a drag of NaN", positiveWorkForward, {}, { drag: Number.NaN }, "not-finite"],
    ["another option", positiveExternalWork, {}, { wind: 3 }, "unknown-option"],
  ])("refuses %s", (_what, metric, change, options, code) => {
    const call = metric as typeof positiveWorkForward;
    expect(() => call({ ...ground, ...change } as typeof ground, step, options as { drag: number })).toThrow(
      expect.objectContaining({ code }),
    );
  });
});
