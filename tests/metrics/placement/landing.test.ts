import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { assessLanding, takeOffDistance, touchdownDistance } from "../../../src/metrics/index.js";
import { TAKE_OFF_DISTANCE, TOUCHDOWN_DISTANCE } from "../../../src/metrics/placement/entries.js";
import { centreOfMassAt, syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrial } from "../../../src/trial/index.js";
import { meanAndSd, measuredRun, type PacedRun, runAt, truthOf } from "../../models/landing/runs.js";

/** Errors of both distances over a run, mm. */
function errorsOf(options: PacedRun) {
  const { ground, steps, truth } = measuredRun(options);
  const touchdown: number[] = [];
  const takeOff: number[] = [];
  for (const step of steps) {
    const [first, last] = [touchdownDistance(ground, step), takeOffDistance(ground, step)];
    if (first === null || last === null) continue;
    const { values } = truthOf(truth, step);
    touchdown.push(1000 * (first - values.touchdownDistance));
    takeOff.push(1000 * (last - values.takeOffDistance));
  }
  const strides = steps.filter(({ nextSameSide }) => nextSameSide !== undefined).length;
  return { strides, touchdown: meanAndSd(touchdown), takeOff: meanAndSd(takeOff) };
}

describe("synthetic truth at the zeros of the force: 2 N noise, 1 mm of centre of pressure, steps that vary, 1 kHz", () => {
  const noise = { force: 2, cop: 0.001, freeMoment: 0.3 };
  describe.each(["ground", "belt"] as const)("%s", (surface) => {
    it.each([8, 10, 12, 15, 18])("%d km/h: means within 3 mm, SD of single contacts below 5 mm", (speed) => {
      const { strides, touchdown, takeOff } = errorsOf({ ...runAt(speed), surface, noise });
      expect(touchdown.n).toBe(strides);
      // Over ground the runner leaves a plate of 100 m the sooner, the faster the run.
      expect(strides).toBeGreaterThan(surface === "ground" ? 50 : 75);
      for (const { mean, sd } of [touchdown, takeOff]) {
        expect(Math.abs(mean)).toBeLessThan(3);
        expect(sd).toBeLessThan(5);
      }
    });
  });
  it("at 300 Hz: means within 5 mm, SD below 5 mm", () => {
    const { touchdown, takeOff } = errorsOf({ ...runAt(18), sampleRate: 300, noise });
    for (const { mean, sd } of [touchdown, takeOff]) {
      expect(Math.abs(mean)).toBeLessThan(5);
      expect(sd).toBeLessThan(5);
    }
  });
});

const { ground, steps, truth } = measuredRun({ ...runAt(12), surface: "belt", duration: 10 });
const step = steps[3] as Required<Step>;
const both = [touchdownDistance, takeOffDistance];

describe("touches are read from the unfiltered force", () => {
  const { unfiltered, ...rest } = ground;
  it("so that the filter does not matter: 20 Hz, 50 Hz and none agree within 0.01 mm", () => {
    const raw = { ...rest, ...unfiltered, settings: { ...ground.settings, filter: null } } as GroundReaction;
    for (const metric of both) {
      const value = metric(raw, step) as number;
      expect(metric(ground, step)).toBeCloseTo(value, 5);
      expect(metric(lowPassGroundReaction(raw, { cutoff: 20 }), step)).toBeCloseTo(value, 5);
    }
  });
  it("null where only filtered force is at hand", () => {
    for (const metric of both) expect(metric(rest, step)).toBeNull();
    expect(assessLanding(rest, steps).absence?.code).toBe("filtered");
  });
});

describe("a measured centre of mass is taken instead", () => {
  const speed = 12 / 3.6;
  const forward = Float64Array.from(ground.force.up, (_, i) => {
    const time = i / ground.sampleRate;
    const contact = [...truth].reverse().find(({ initialContact }) => initialContact <= time);
    if (contact === undefined || time > contact.initialContact + contact.values.stepTime) return 0;
    return centreOfMassAt(contact, time).position.forward - speed * (time - 0.15);
  });
  const measured: GroundReaction = { ...ground, centreOfMass: { forward } };
  it("without a stride too, within 1.5 mm of the truth", () => {
    const alone = { contact: step.contact };
    const { values } = truthOf(truth, alone);
    expect(Math.abs((touchdownDistance(measured, alone) ?? 0) - values.touchdownDistance)).toBeLessThan(
      1.5e-3,
    );
    expect(Math.abs((takeOffDistance(measured, alone) ?? 0) - values.takeOffDistance)).toBeLessThan(1.5e-3);
    expect(touchdownDistance(ground, alone)).toBeNull();
  });
  it("10 mm further ahead it reads 10 mm less at touchdown and more at take-off; levels in body weights do", () => {
    const ahead = { ...ground, centreOfMass: { forward: forward.map((x) => x + 0.01) } };
    const options = { footLevel: { bodyWeights: 0.36 } };
    const [near, far] = [measured, ahead].map((g) =>
      both.map((metric) => metric(g, step, options) as number),
    );
    expect((near?.[0] ?? 0) - (far?.[0] ?? 0)).toBeCloseTo(0.01, 9);
    expect((far?.[1] ?? 0) - (near?.[1] ?? 0)).toBeCloseTo(0.01, 9);
  });
});

describe("outside its assumptions there is no number, and the reason", () => {
  /** The run with the unfiltered force changed, as a trial sees it. */
  const changed = (
    change: (parts: { up: Float64Array; forward: Float64Array; moment: Float64Array }) => Partial<{
      up: Float64Array;
      forward: Float64Array;
      moment: Float64Array;
    }>,
    more: Partial<GroundReaction> = {},
  ): GroundReaction => {
    const { recording } = syntheticRun({ ...runAt(12), surface: "belt", duration: 10 });
    const raw = toGroundReaction(recording);
    const parts = {
      up: raw.force.up,
      forward: raw.force.forward as Float64Array,
      moment: raw.moment?.right as Float64Array,
    };
    const { up, forward, moment } = { ...parts, ...change(parts) };
    return lowPassGroundReaction(
      { ...raw, ...more, force: { ...raw.force, up, forward }, moment: { ...raw.moment, right: moment } },
      { cutoff: 50 },
    );
  };
  const share =
    (part: number) =>
    ({ up, forward }: { up: Float64Array; forward: Float64Array }) => ({
      forward: forward.map((f, i) => f + part * (up[i] as number)),
    });
  it.each<[string, string, GroundReaction]>([
    ["a grade of 2 % that is not stated", "forward-unbalanced", changed(share(0.02))],
    ["a grade of 2 % stated where there is none", "forward-unbalanced", changed(() => ({}), { grade: 0.02 })],
    ["speeding up by 0.3 m/s²", "forward-unbalanced", changed(share(0.03))],
    [
      "a rail that pulls with 15 N",
      "forward-unbalanced",
      changed(({ forward }) => ({ forward: forward.map((f) => f + 15) })),
    ],
    ["a rail that carries 60 N", "weight-missing", changed(({ up }) => ({ up: up.map((f) => 0.91 * f) }))],
    ["the ground stated for a belt", "surface-disagrees", { ...ground, surface: "ground" }],
    ["a belt said to run at 24 km/h", "surface-disagrees", { ...ground, speed: 24 / 3.6 }],
  ])("%s: %s", (_what, code, source) => {
    expect(assessLanding(source, steps)).toMatchObject({ absence: { code }, margin: null });
    if (code !== "weight-missing") {
      const share = steps.filter((each) => touchdownDistance(source, each) !== null).length / steps.length;
      expect(share).toBeLessThan(0.1);
    }
  });
  it("walking: the other foot lands before this one leaves", () => {
    const early = { ...step.next, initialContact: step.contact.toeOff - 0.05 };
    for (const metric of both) expect(metric(ground, { ...step, next: early })).toBeNull();
    const walked = steps.map((each) => ({
      ...each,
      next: { ...each.contact, initialContact: each.contact.toeOff - 0.05 },
    }));
    expect(assessLanding(ground, walked).absence?.code).toBe("no-flight");
  });
  it.each<[string, GroundReaction]>([
    ["no surface", (({ surface: _, ...rest }) => rest)(ground)],
    ["no belt speed", (({ speed: _, ...rest }) => rest)(ground)],
    ["no centre of pressure", { ...ground, unfiltered: { force: ground.unfiltered?.force ?? ground.force } }],
  ])("%s: null", (_what, source) => {
    for (const metric of both) expect(metric(source, step)).toBeNull();
    expect(assessLanding(source, steps).absence).not.toBeNull();
  });
  it("no whole stride", () => {
    for (const metric of both) expect(metric(ground, { contact: step.contact })).toBeNull();
    expect(assessLanding(ground, [{ contact: step.contact }]).absence?.code).toBe("no-stride");
  });
});

describe("assessment of a trial", () => {
  it("a level run: 20 and 40 mm, what the toe leaves open, and nothing to say", () => {
    const { absence, margin, cautions } = assessLanding(ground, steps);
    expect(absence).toBeNull();
    expect(margin?.touchdown).toBeCloseTo(0.02, 3);
    expect(margin?.takeOff).toBeCloseTo(0.04, 3);
    expect(cautions).toEqual([]);
  });
  it("a mean forward force of 0.7 % is said, with what it may move", () => {
    const { up, forward } = ground.force as { up: Float64Array; forward: Float64Array };
    const tilted = {
      ...ground,
      force: { ...ground.force, forward: forward.map((f, i) => f + 0.007 * (up[i] as number)) },
    };
    const { absence, margin, cautions } = assessLanding(tilted, steps);
    expect(absence).toBeNull();
    const strideTime = 0.702;
    expect(margin?.touchdown).toBeCloseTo(0.02 + 0.007 * (0.55 * 1.75 + (9.80665 * strideTime ** 2) / 6), 3);
    expect(cautions.map(({ code }) => code)).toEqual(["landing-shifted"]);
    const balanced = assessLanding({ ...tilted, forwardBalance: 0.007 }, steps);
    expect(balanced.margin?.takeOff).toBeCloseTo(0.04 + 0.007 * 0.55 * 1.75, 4);
  });
  it("the trial's balance is taken off as a tilt: touchdown as on the level plate, within 1 mm", () => {
    const { force: unfiltered, moment } = ground.unfiltered as Required<
      NonNullable<GroundReaction["unfiltered"]>
    >;
    const { up, forward } = unfiltered as { up: Float64Array; forward: Float64Array };
    const force = { up, forward: forward.map((f, i) => f + 0.007 * (up[i] as number)) };
    const tilted = { ...ground, unfiltered: { force, moment }, forwardBalance: 0.007 };
    const [tiltedValue, level] = [tilted, ground].map((g) => touchdownDistance(g, step) as number);
    expect(Math.abs((tiltedValue ?? 0) - (level ?? 1))).toBeLessThan(1e-3);
  });
});

describe("entries", () => {
  const metrics = [TOUCHDOWN_DISTANCE, TAKE_OFF_DISTANCE];
  it("analyseTrial gives the same values as the functions", () => {
    const { recording } = syntheticRun({ ...runAt(12), surface: "belt", duration: 10 });
    const trial = analyseTrial(toGroundReaction(recording), { metrics });
    const balanced = { ...ground, forwardBalance: trial.settings.landing?.balance ?? Number.NaN };
    expect(trial.steps[3]?.values.touchdownDistance).toBe(touchdownDistance(balanced, step));
    expect(trial.steps[3]?.values.takeOffDistance).toBe(takeOffDistance(balanced, step));
    expect(trial.steps.at(-1)?.values.touchdownDistance).toBeNull();
  });
  it("a recording without a centre of pressure lists both as not computed", () => {
    const { recording } = syntheticRun({ ...runAt(12), surface: "belt", duration: 10 });
    const channels = recording.channels.filter(({ quantity }) => quantity !== "centre-of-pressure");
    const { notComputed } = analyseTrial(toGroundReaction({ ...recording, channels }), { metrics });
    expect(notComputed.map(({ id, code }) => [id, code])).toEqual([
      ["touchdownDistance", "missing-channel"],
      ["takeOffDistance", "missing-channel"],
    ]);
  });
  it("a belt of unknown speed: neither is computed", () => {
    const { recording } = syntheticRun({ ...runAt(12), surface: "belt", duration: 10 });
    const { speed: _, ...rest } = recording;
    const { notComputed } = analyseTrial(toGroundReaction(rest), { metrics });
    expect(notComputed.map(({ code }) => code)).toEqual(["missing-speed", "missing-speed"]);
  });
  it.each(both)("%o refuses a step without contact, and a foot level of 0", (metric) => {
    expect(() => metric(ground, {} as Step)).toThrow(expect.objectContaining({ code: "wrong-type" }));
    expect(() => metric(ground, step, { footLevel: 0 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
