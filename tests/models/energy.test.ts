import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type ExternalWork,
  externalWork,
  type IndividualLimbsWorkOptions,
  individualLimbsWork,
  type PushAndBrakeTimesOptions,
  pushAndBrakeTimes,
  recoveredShare,
  type WorkParts,
  workPerMetre,
} from "../../src/models/index.js";
import energy from "../fixtures/metrics/energy.json" with { type: "json" }; // SciPy 1.17.1, 400 001 points of one step
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6, SciPy 1.17.1
import { mirroredRun, sampledRun } from "../metrics/runs.js";
import { bothFeet, walk } from "./walk.js";

const { walking, mirrored } = models;
const { ground, steps } = sampledRun();
const [first] = steps as [Required<(typeof steps)[number]>];
const from = first.contact.initialContact;
const to = first.nextSameSide.initialContact;
const parts = (positive: number): WorkParts => ({ positive, negative: -positive });

describe("externalWork with air drag D: E_f takes D x with it, like a slope", () => {
  it("SciPy, 400 001 points of a step: 5 N of drag, forward and external work within 2e-4", () => {
    const work = externalWork(mirroredRun(1000, 1).ground, 0, 0.72, 3, { until: 0.36, drag: mirrored.drag });
    expect(Math.abs((work.forward?.positive as number) / mirrored.forwardWithDrag - 1)).toBeLessThan(2e-4);
    expect(Math.abs((work.external?.positive as number) / mirrored.externalWithDrag - 1)).toBeLessThan(2e-4);
  });
  it("law: forward work adds up to drag × distance, vertical work to nothing", () => {
    const { forward, vertical } = externalWork(ground, from, to, 4, { drag: 4 });
    const net = (forward?.positive as number) + (forward?.negative as number);
    expect(net).toBeCloseTo(4 * 4 * (to - from), 8);
    expect(vertical.positive + vertical.negative).toBeCloseTo(0, 9);
  });
  it("law: drag in the recorded force or not, the motion is the same, since the mean is taken off", () => {
    const pushed = (ground.force.forward as Float64Array).map((f) => f + 4);
    const windy = externalWork({ ...ground, force: { ...ground.force, forward: pushed } }, from, to, 4, {
      drag: 4,
    });
    const still = externalWork(ground, from, to, 4, { drag: 4 });
    expect(windy.external?.positive).toBeCloseTo(still.external?.positive as number, 8);
  });
  it("refuses a drag that is no number", () =>
    expect(() => externalWork(ground, from, to, 3, { drag: Number.NaN })).toThrow(
      expect.objectContaining({ code: "not-finite" }),
    ));
});

describe("workPerMetre", () => {
  it("SciPy: 1.50 J/kg/m of external work in a step of the mirrored run", () => {
    const work = externalWork(mirroredRun(1000, 1).ground, 0, 0.72, 3, { until: 0.36 });
    expect(workPerMetre(work, 70, 3 * 0.36).external?.positive).toBeCloseTo(
      energy.externalPerMassAndDistance,
      3,
    );
  });
  it("divides every part, and leaves null as it is", () => {
    const work: ExternalWork = { external: null, forward: null, vertical: parts(140), lateral: parts(7) };
    expect(workPerMetre(work, 70, 2)).toEqual({
      external: null,
      forward: null,
      vertical: { positive: 1, negative: -1 },
      lateral: { positive: 0.05, negative: -0.05 },
    });
  });
  it.each([
    [0, 1],
    [70, 0],
    [70, -1],
  ])("refuses %f kg over %f m", (mass, distance) =>
    expect(() =>
      workPerMetre({ external: null, forward: null, vertical: parts(1), lateral: null }, mass, distance),
    ).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});

describe("recoveredShare (Cavagna, Thys & Zamboni 1976, J Physiol 262:639)", () => {
  it("NumPy, 400 001 points of a stride: 62.0 % of the walk; works within 1e-4", () => {
    const work = externalWork(bothFeet(walk(1000)), 0, walking.strideTime, walking.speed);
    expect(Math.abs((work.forward?.positive as number) / walking.forward - 1)).toBeLessThan(1e-4);
    expect(Math.abs(work.vertical.positive / walking.vertical - 1)).toBeLessThan(1e-4);
    expect(Math.abs((work.external?.positive as number) / walking.external - 1)).toBeLessThan(1e-4);
    expect(recoveredShare(work)).toBeCloseTo(walking.recovered, 4);
  });
  it("published range: running recovers 0 to 4 % (abstract)", () => {
    const share = recoveredShare(externalWork(ground, from, to, 3)) as number;
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThan(0.04);
  });
  it.each([10, 20])(
    "published set-up (Cavagna, Willems et al. 2002, J Exp Biol 205:3413, fig. 1), by hand 1 − sin(α/2): %d degrees",
    (degrees) => {
      const lag = (degrees * Math.PI) / 180;
      const rises = (e: (x: number) => number): number => {
        let sum = 0;
        for (let i = 0; i < 36_000; i++) {
          sum += Math.max(0, e(((i + 1) * Math.PI) / 18_000) - e((i * Math.PI) / 18_000));
        }
        return sum;
      };
      const potential = (x: number): number => -Math.sin(x);
      const kinetic = (x: number): number => Math.sin(x - lag);
      const work = {
        forward: parts(rises(kinetic)),
        vertical: parts(rises(potential)),
        external: parts(rises((x) => potential(x) + kinetic(x))),
        lateral: null,
      };
      expect(recoveredShare(work)).toBeCloseTo(1 - Math.sin(lag / 2), 6);
    },
  );
  it("is null without a forward force, and without any work", () => {
    expect(recoveredShare({ external: null, forward: null, vertical: parts(1), lateral: null })).toBeNull();
    expect(
      recoveredShare({ external: parts(0), forward: parts(0), vertical: parts(0), lateral: null }),
    ).toBeNull();
  });
});

describe("pushAndBrakeTimes (Cavagna 2006, J Exp Biol 209:4051)", () => {
  it("NumPy, power on 400 001 points of a step: push 126.4 ms, brake 118.6 ms", () => {
    const { push, brake } = pushAndBrakeTimes(mirroredRun(1000, 1).ground, 0, 0.245, 0.72, 3);
    expect(Math.abs(push - mirrored.push)).toBeLessThan(2e-5);
    expect(Math.abs(brake - mirrored.brake)).toBeLessThan(2e-5);
  });
  it.each(models.force)("SciPy, splines on 400 001 points: uneven contact $index at 20 N", (row) => {
    const { contact, nextSameSide } = steps[row.index] as Required<(typeof steps)[number]>;
    const span = [contact.initialContact, contact.toeOff, nextSameSide.initialContact] as const;
    const { push } = pushAndBrakeTimes(ground, ...span, 3);
    // Straight power between samples against a curve: 2e-6 s.
    expect(Math.abs(push - row.push)).toBeLessThan(2e-6);
  });
  it("law: push and brake add up to the contact time", () => {
    const { push, brake } = pushAndBrakeTimes(ground, from, first.contact.toeOff, to, 3);
    expect(push + brake).toBeCloseTo(first.contact.toeOff - from, 12);
    expect(brake).toBeGreaterThan(0.05);
  });
  it("law: backward in time the same forces act and velocities turn round, so push and brake change places", () => {
    const { up, forward } = mirroredRun(1000, 2).ground.force;
    const back = {
      up: Float64Array.from(up).reverse(),
      forward: (forward as Float64Array).slice().reverse(),
    };
    const there = pushAndBrakeTimes(mirroredRun(1000, 2).ground, 0, 0.245, 0.72, 3);
    // The last contact, 1.080 to 1.325 s of 1.440 s, comes first.
    const again = pushAndBrakeTimes({ sampleRate: 1000, force: back }, 0.115, 0.36, 0.835, -3);
    expect(again.push).toBeCloseTo(there.brake, 9);
    expect(again.brake).toBeCloseTo(there.push, 9);
  });
  it("property: mass and force together change nothing", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (k) => {
        const { up, forward } = ground.force;
        const scaled = {
          sampleRate: 1000,
          force: { up: up.map((f) => k * f), forward: (forward as Float64Array).map((f) => k * f) },
        };
        const span = [from, first.contact.toeOff, to, 3] as const;
        expect(pushAndBrakeTimes(scaled, ...span).push).toBeCloseTo(
          pushAndBrakeTimes(ground, ...span).push,
          9,
        );
      }),
      { numRuns: 20 },
    ));
  it("uphill, more of the contact lifts: the push is longer than on the level", () => {
    const span = [from, first.contact.toeOff, to, 3] as const;
    expect(pushAndBrakeTimes(ground, ...span, { grade: 0.1 }).push).toBeGreaterThan(
      pushAndBrakeTimes(ground, ...span).push,
    );
  });
  it("refuses a record without the forward force", () =>
    expect(() =>
      pushAndBrakeTimes({ sampleRate: 1000, force: { up: ground.force.up } }, 0.2, 0.4, 0.9, 3),
    ).toThrow(expect.objectContaining({ code: "missing-channel" })));
  it.each([
    ["a toe-off behind the stride", [0.2, 1, 0.9, 3, {}], "out-of-range"],
    ["a stride behind the samples", [0.2, 0.4, 99, 3, {}], "out-of-range"],
    ["NaN for a speed", [0.2, 0.4, 0.9, Number.NaN, {}], "not-finite"],
    ["a mass below 0", [0.2, 0.4, 0.9, 3, { mass: -1 }], "out-of-range"],
    ["an infinite drag", [0.2, 0.4, 0.9, 3, { drag: Number.POSITIVE_INFINITY }], "not-finite"],
  ] as [string, [number, number, number, number, PushAndBrakeTimesOptions], string][])(
    "refuses %s",
    (_what, args, code) =>
      expect(() => pushAndBrakeTimes(ground, ...args)).toThrow(expect.objectContaining({ code })),
  );
});

describe("individualLimbsWork (Donelan, Kram & Kuo 2002, J Biomech 35:117)", () => {
  const { strideTime, speed, doubleSupport } = walking;
  const work = (options: IndividualLimbsWorkOptions = {}, limbs = walk(1000)) =>
    individualLimbsWork(limbs, 0, strideTime, speed, options);
  it.each(["left", "right", "combined"] as const)(
    "NumPy, 400 001 points of a stride: %s within 1e-4",
    (limb) => {
      expect(Math.abs(work()[limb].positive / walking[limb].positive - 1)).toBeLessThan(1e-4);
      expect(Math.abs(work()[limb].negative / walking[limb].negative - 1)).toBeLessThan(1e-4);
    },
  );
  it("the combined work falls 29.0 % short of the legs' (NumPy), near the published third (abstract)", () => {
    const { left, right, combined } = work();
    const short = 1 - combined.positive / (left.positive + right.positive);
    expect(short).toBeCloseTo(
      1 - walking.combined.positive / (walking.left.positive + walking.right.positive),
      4,
    );
    expect(short).toBeCloseTo(0.29, 2);
  });
  it("in double support the trailing leg pushes and the leading one brakes (NumPy); an end between samples", () => {
    const until = doubleSupport.time;
    const { left, right } = work({ until });
    expect(Math.abs(left.positive / doubleSupport.trailing.positive - 1)).toBeLessThan(2e-4);
    expect(Math.abs(right.negative / doubleSupport.leading.negative - 1)).toBeLessThan(2e-4);
    expect(left.negative).toBeCloseTo(0, 6);
  });
  it("law: the windows of a stride add up to the stride, wherever they meet between samples", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1.05, noNaN: true }), (cut) => {
        const [before, after] = [work({ until: cut }), work({ since: cut })];
        const whole = work();
        // A piece of power cut in two is two straight lines: 1e-4 J.
        expect(before.right.positive + after.right.positive).toBeCloseTo(whole.right.positive, 3);
        expect(before.combined.negative + after.combined.negative).toBeCloseTo(whole.combined.negative, 3);
      }),
      { numRuns: 30 },
    ));
  it("law: over a steady stride each leg of a mirrored walk does no net work", () => {
    const { left, right } = work();
    expect(left.positive + left.negative).toBeCloseTo(0, 3);
    expect(right.positive + right.negative).toBeCloseTo(0, 3);
  });
  it("SciPy: one leg at a time, as in running, it is the power of the whole force: 113.56 J a step", () => {
    const run = mirroredRun(1000, 1).ground;
    const zero = new Float64Array(run.force.up.length);
    const none = { sampleRate: 1000, force: { up: zero, forward: zero, right: zero } };
    const { right, combined } = individualLimbsWork({ left: none, right: run }, 0, 0.72, 3, { until: 0.36 });
    expect(Math.abs(right.positive / mirrored.powerPositive - 1)).toBeLessThan(1e-4);
    expect(combined).toEqual(right);
  });
  it("mirrored data gives mirrored results", () => {
    const { left, right } = walk(1000);
    const flip = (record: typeof left): typeof left => ({
      ...record,
      force: { ...record.force, right: (record.force.right as Float64Array).map((f) => -f) },
    });
    const mirror = work({}, { left: flip(right), right: flip(left) });
    expect(mirror.left.positive).toBeCloseTo(work().right.positive, 9);
    expect(mirror.right.negative).toBeCloseTo(work().left.negative, 9);
  });
  it("does without the sideways force, which is 1 J of 26 here", () => {
    const { left, right } = walk(1000);
    const plain = ({ sampleRate, force: { up, forward } }: typeof left): typeof left => ({
      sampleRate,
      force: forward === undefined ? { up } : { up, forward },
    });
    const without = work({}, { left: plain(left), right: plain(right) }).left.positive;
    expect(Math.abs(without - work().left.positive)).toBeLessThan(1);
    expect(without).not.toBe(work().left.positive);
  });
  it.each([
    ["a missing forward force", "missing-channel", { forward: undefined }, 1000],
    ["another length", "unequal-lengths", { up: new Float64Array(5) }, 1000],
    ["another rate", "unequal-lengths", {}, 500],
  ])("refuses %s", (_what, code, change, sampleRate) => {
    const { left, right } = walk(1000);
    const { forward, ...force } = { ...right.force, ...change };
    const other = { sampleRate, force: forward === undefined ? force : { ...force, forward } };
    expect(() => work({}, { left, right: other })).toThrow(expect.objectContaining({ code }));
  });
  it.each([{ since: -0.1 }, { since: 0.5, until: 0.4 }, { until: 2 }, { mass: 0 }, { grade: 7 }])(
    "refuses %o",
    (options) => expect(() => work(options)).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});
