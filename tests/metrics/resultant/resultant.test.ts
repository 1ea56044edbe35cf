import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { detectEvents, type Step, stepsOf } from "../../../src/events/index.js";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../../src/force/index.js";
import {
  type FreeMomentOptions,
  freeMomentImpulse,
  peakFreeMoment,
  peakResultantForce,
} from "../../../src/metrics/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrial } from "../../../src/trial/index.js";
import feet from "../../fixtures/metrics/feet.json" with { type: "json" }; // feet.py, NumPy 2.4.6
import { contactOver } from "../../helpers.js";
import { treadmillRun } from "../../models/landing/treadmillRun.js";
import { sampledRun } from "../runs.js";

const { ground, steps } = sampledRun();
const step = steps[0] as Step;
const moment = ground.moment as Required<NonNullable<GroundReaction["moment"]>>;
const right = ground.force.right as Float64Array;
const forward = ground.force.forward as Float64Array;

describe.each(feet.contacts)("NumPy's vectors on the sampled run: contact $index", (row) => {
  const here = steps[row.index] as Step;
  it("peak resultant force", () =>
    expect(peakResultantForce(ground, here)).toBeCloseTo(row.peakResultantForce, 9));
  it("peak free moment, M less the moment of the force at the centre of pressure", () =>
    expect(peakFreeMoment(ground, here)).toBeCloseTo(row.peakFreeMoment, 9));
  it("free-moment impulse, the area split where T turns round", () =>
    expect(freeMomentImpulse(ground, here)).toBeCloseTo(row.freeMomentImpulse, 9));
});

describe("synthetic truth: half sine of free moment, channels through recording and filter", () => {
  const { recording, truth } = syntheticRun({ duration: 6, surface: "belt" });
  const plain = toGroundReaction(recording);
  const run = stepsOf(detectEvents(plain).contacts);
  const values = (k: number) => truth.contacts[k + truth.contacts.length - run.length]?.values;
  it("contacts of truth and recording are the same ones", () => {
    expect(run.length).toBeGreaterThan(10);
    run.forEach((one, k) => {
      const true_ = truth.contacts[k + truth.contacts.length - run.length];
      expect(Math.abs(one.contact.initialContact - (true_?.initialContact ?? 0))).toBeLessThan(0.01);
    });
  });
  it.each([0, 1, 5])("contact %i unfiltered: peaks within 0.03 per cent", (k) => {
    const here = run[k] as Step;
    const true_ = values(k);
    expect(Math.abs(peakResultantForce(plain, here) / (true_?.peakResultantForce ?? 0) - 1)).toBeLessThan(
      3e-4,
    );
    expect(Math.abs((peakFreeMoment(plain, here) ?? 0) / (true_?.peakFreeMoment ?? 0) - 1)).toBeLessThan(
      3e-4,
    );
  });
  it.each([0, 1, 5])(
    "contact %i unfiltered: the half sine's impulse between the floors, within 5e-5",
    (k) => {
      const here = run[k] as Step;
      const true_ = truth.contacts[k + truth.contacts.length - run.length] as (typeof truth.contacts)[number];
      const loaded = [...plain.force.up.keys()].filter((i) => {
        const time = i / plain.sampleRate;
        return time >= true_.initialContact && time <= true_.toeOff && (plain.force.up[i] as number) >= 40;
      });
      const phase = (i: number | undefined) =>
        (Math.PI * ((i ?? 0) / plain.sampleRate - true_.initialContact)) /
        (true_.toeOff - true_.initialContact);
      const share = (Math.cos(phase(loaded[0])) - Math.cos(phase(loaded.at(-1)))) / 2;
      expect(share).toBeGreaterThan(0.99);
      const impulse = (freeMomentImpulse(plain, here) ?? 0) / true_.values.freeMomentImpulse;
      expect(Math.abs(impulse / share - 1)).toBeLessThan(5e-5);
    },
  );
  it("low-passed at 50 Hz: within 1 % of the peaks, 2 % of the impulse", () => {
    const smooth = lowPassGroundReaction(plain, { cutoff: 50 });
    run.forEach((here, k) => {
      const true_ = values(k);
      expect(Math.abs(peakResultantForce(smooth, here) / (true_?.peakResultantForce ?? 0) - 1)).toBeLessThan(
        0.01,
      );
      expect(Math.abs((peakFreeMoment(smooth, here) ?? 0) / (true_?.peakFreeMoment ?? 0) - 1)).toBeLessThan(
        0.01,
      );
      expect(
        Math.abs((freeMomentImpulse(smooth, here) ?? 0) / (true_?.freeMomentImpulse ?? 0) - 1),
      ).toBeLessThan(0.02);
    });
  });
});

describe("published (running, peak of |T|/(W × height) 5.9 ± 2.1, 9.3 ± 3.2, 6.7 ± 1.6 × 10⁻³, in Almosnino et al. 2009, doi:10.1186/1758-2555-1-19)", () => {
  // The open recording at 2.5 m/s, whose free moment holds vibrations of the treadmill: SD 10 N m unfiltered.
  const { ground: open, steps: run } = treadmillRun();
  const { force, moment: whole } = open.unfiltered as Required<NonNullable<GroundReaction["unfiltered"]>>;
  const raw: GroundReaction = { ...open, force, moment: whole, settings: { ...open.settings, filter: null } };
  const mean = (record: GroundReaction) => {
    const peaks = run.map((one) => peakFreeMoment(record, one) as number);
    return peaks.reduce((sum, value) => sum + value, 0) / peaks.length / (76.96 * 9.80665 * 1.83);
  };
  it("an open treadmill recording behind 20 Hz: 7.3 × 10⁻³, among them", () => {
    expect(mean(lowPassGroundReaction(raw, { cutoff: 20 }))).toBeCloseTo(0.0073, 4);
  });
  it("behind 50 Hz, vibrations and all: 19 × 10⁻³, which no limb made", () => {
    expect(mean(open)).toBeCloseTo(0.019, 3);
  });
});

describe("laws", () => {
  it("resultant: at least the vertical peak, and that alone without horizontal force", () => {
    const { up } = ground.force;
    const still = new Float64Array(up.length);
    const vertical = { ...ground, force: { up, forward: still, right: still } };
    expect(peakResultantForce(vertical, step)).toBe(1876.1492);
    expect(peakResultantForce(ground, step)).toBeGreaterThan(1876.1492);
  });
  it("property: turned about the vertical, the resultant and the free moment stay", () =>
    fc.assert(
      fc.property(fc.double({ min: -3.2, max: 3.2, noNaN: true }), (angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turn = (a: Float64Array, b: Float64Array) => ({
          forward: a.map((value, i) => c * value - s * (b[i] as number)),
          right: a.map((value, i) => s * value + c * (b[i] as number)),
        });
        const turned = {
          ...ground,
          force: { up: ground.force.up, ...turn(forward, right) },
          moment: { up: moment.up, ...turn(moment.forward, moment.right) },
        };
        expect(peakResultantForce(turned, step)).toBeCloseTo(peakResultantForce(ground, step), 8);
        expect(peakFreeMoment(turned, step)).toBeCloseTo(peakFreeMoment(ground, step) as number, 8);
      }),
      { numRuns: 20 },
    ));
  it("property: the origin of the moment does not matter", () =>
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (x, z) => {
          const moved = {
            ...ground,
            moment: {
              forward: moment.forward.map((m, i) => m - z * (ground.force.up[i] as number)),
              up: moment.up.map((m, i) => m + z * (forward[i] as number) - x * (right[i] as number)),
              right: moment.right.map((m, i) => m + x * (ground.force.up[i] as number)),
            },
          };
          expect(peakFreeMoment(moved, step)).toBeCloseTo(peakFreeMoment(ground, step) as number, 9);
          expect(freeMomentImpulse(moved, step)).toBeCloseTo(freeMomentImpulse(ground, step) as number, 9);
        },
      ),
      { numRuns: 20 },
    ));
  it("force, moment and floor three times as large: three times the moment and impulse", () => {
    const by3 = (samples: Float64Array) => samples.map((value) => 3 * value);
    const heavy = {
      ...ground,
      force: { up: by3(ground.force.up), forward: by3(forward), right: by3(right) },
      moment: { forward: by3(moment.forward), up: by3(moment.up), right: by3(moment.right) },
    };
    for (const metric of [peakFreeMoment, freeMomentImpulse]) {
      expect(metric(heavy, step, { floor: 120 })).toBeCloseTo(3 * (metric(ground, step) as number), 9);
    }
  });
  it("a constant moment of 6 N m under a constant load: 6 N m, and 6 N m × time, whichever way it turns", () => {
    for (const sign of [1, -1]) {
      const series = (value: number) => new Float64Array(251).fill(value);
      const record: GroundReaction = {
        ...ground,
        force: { up: series(700), forward: series(0), right: series(0) },
        moment: { up: series(sign * 6), forward: series(0), right: series(0) },
      };
      const whole = { contact: contactOver(0, 0.25) };
      expect(peakFreeMoment(record, whole)).toBe(6);
      expect(freeMomentImpulse(record, whole)).toBeCloseTo(1.5, 12);
    }
  });
  it("reads the foot's own plate where plates are kept apart", () => {
    const zero = new Float64Array(right.length);
    const other = {
      ...ground,
      force: { up: zero, forward: zero, right: zero },
      moment: { up: zero, forward: zero, right: zero },
    };
    const double = {
      ...ground,
      force: { up: ground.force.up.map((f) => 2 * f), forward, right },
      plates: [other, ground],
    };
    const on = { contact: { ...step.contact, plate: 1 } };
    expect(peakResultantForce(double, on)).toBe(peakResultantForce(ground, step));
    expect(peakFreeMoment(double, on)).toBe(peakFreeMoment(ground, step));
    expect(peakFreeMoment(double, { contact: { ...step.contact, plate: 0 } })).toBeNull();
  });
  it("below the floor the unfiltered force decides: a filter that spreads it adds nothing", () => {
    const up = ground.force.up.map(() => 30);
    const spread = { ...ground, unfiltered: { force: { ...ground.force, up }, moment } };
    expect(peakFreeMoment(spread, step)).toBeNull();
  });
});

describe("nulls and trouble", () => {
  const light = { ...ground, force: { ...ground.force, up: ground.force.up.map((f) => f / 100) } };
  it.each([peakFreeMoment, freeMomentImpulse])("%o is null below 40 N", (metric) =>
    expect(metric(light, step)).toBeNull(),
  );
  it.each([peakFreeMoment, freeMomentImpulse])("%o refuses a floor of 0, NaN, another option", (metric) => {
    for (const [options, code] of [
      [{ floor: 0 }, "out-of-range"],
      [{ floor: Number.NaN }, "not-finite"],
      [{ level: 3 }, "unknown-option"],
    ] as const) {
      expect(() => metric(ground, step, options as FreeMomentOptions)).toThrow(
        expect.objectContaining({ code }),
      );
    }
  });
  it.each([peakResultantForce, peakFreeMoment, freeMomentImpulse])(
    "%o refuses a contact outside the recording",
    (metric) => {
      expect(() => metric(ground, { contact: contactOver(3, 4) })).toThrow(
        expect.objectContaining({ code: "out-of-range" }),
      );
      expect(() => metric(ground, {} as Step)).toThrow(expect.objectContaining({ code: "wrong-type" }));
    },
  );
  it("without a free moment in the file a trial lists both with the reason", () => {
    const { recording } = syntheticRun({ duration: 3 });
    const channels = recording.channels.filter(({ quantity }) => quantity !== "free-moment");
    const { notComputed } = analyseTrial(toGroundReaction({ ...recording, channels }));
    expect(notComputed).toContainEqual({
      id: "peakFreeMoment",
      code: "missing-channel",
      message: "the free moment was not recorded",
    });
    expect(notComputed.map(({ id }) => id)).toContain("freeMomentImpulse");
    expect(notComputed.map(({ id }) => id)).not.toContain("peakResultantForce");
  });
});
