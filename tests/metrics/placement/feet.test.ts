import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { detectEvents, type Step, stepsOf } from "../../../src/events/index.js";
import { type GroundReaction, toGroundReaction } from "../../../src/force/index.js";
import { metricById, type StrikeIndexOptions, stepWidth, strikeIndex } from "../../../src/metrics/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrial } from "../../../src/trial/index.js";
import feet from "../../fixtures/metrics/feet.json" with { type: "json" }; // feet.py, NumPy 2.4.6
import { contactOver, groundOf } from "../../helpers.js";
import { sampledRun } from "../runs.js";

const { ground, steps } = sampledRun();
const step = steps[0] as Required<Step>;
const tracks = ground.feet as Required<NonNullable<GroundReaction["feet"]>>;
const moment = ground.moment as Required<NonNullable<GroundReaction["moment"]>>;

describe("stepWidth", () => {
  it.each(feet.contacts.slice(0, 7))("NumPy's weighted average: contact $index", (row) =>
    expect(stepWidth(ground, steps[row.index] as Step)).toBeCloseTo(row.stepWidth as number, 10),
  );
  it("synthetic truth: the feet's sideways distance, within 0.1 mm, on belt and ground", () => {
    for (const surface of ["belt", "ground"] as const) {
      const { recording, truth } = syntheticRun({ duration: 5, surface });
      const plain = toGroundReaction(recording);
      const run = stepsOf(detectEvents(plain).contacts).filter(({ next }) => next !== undefined);
      expect(run.length).toBeGreaterThan(8);
      for (const one of run) {
        const at = truth.contacts.findIndex(
          (each) => Math.abs(each.initialContact - one.contact.initialContact) < 0.01,
        );
        const [here, there] = [truth.contacts[at], truth.contacts[at + 1]];
        const true_ = Math.abs((here?.foot.right ?? 0) - (there?.foot.right ?? 0));
        expect(Math.abs((stepWidth(plain, one) ?? 0) - true_)).toBeLessThan(1e-4);
      }
    }
  });
  it("below 0 where the feet cross: the same places, the sides exchanged", () => {
    const swap = { left: "right", right: "left", unknown: "unknown" } as const;
    const crossed = { ...step, contact: { ...step.contact, side: swap[step.contact.side] } };
    expect(stepWidth(ground, crossed)).toBe(-(stepWidth(ground, step) as number));
  });
  it("law: a path at an angle widens one step and narrows the next; their mean stays", () => {
    const drift = (i: number) => 0.02 * (i / 360);
    const slanting = {
      ...ground,
      moment: {
        ...moment,
        forward: moment.forward.map((m, i) => m - drift(i) * (ground.force.up[i] as number)),
      },
    };
    const [first, second] = [steps[0] as Step, steps[1] as Step];
    const width = (record: GroundReaction, one: Step) => stepWidth(record, one) as number;
    expect(width(slanting, first)).toBeCloseTo(width(ground, first) - 0.02, 3);
    expect(width(slanting, first) + width(slanting, second)).toBeCloseTo(
      width(ground, first) + width(ground, second),
      4,
    );
  });
  it("reads each foot on its own plate: the sum of both, loaded by the other foot, is not looked at", () => {
    const both = {
      ...ground,
      moment: { ...moment, forward: moment.forward.map((m) => 7 * m) },
      plates: [ground, ground],
    };
    const apart = { contact: { ...step.contact, plate: 0 }, next: { ...step.next, plate: 1 } };
    expect(stepWidth(both, apart)).toBe(stepWidth(ground, step));
  });
  it("null without a next contact, without a side", () => {
    expect(stepWidth(ground, { contact: step.contact })).toBeNull();
    expect(stepWidth(ground, { ...step, contact: { ...step.contact, side: "unknown" } })).toBeNull();
  });
  it.each([
    ["a window that falls", ground, step, { from: 0.8, to: 0.2 }, "out-of-range"],
    ["no centre of pressure", { ...ground, moment: {} }, step, {}, "missing-channel"],
    ["a next contact outside", ground, { ...step, next: contactOver(8, 9) }, {}, "out-of-range"],
    [
      "a next contact that comes earlier",
      ground,
      { ...step, next: contactOver(0.01, 0.1) },
      {},
      "out-of-range",
    ],
    ["no contact", ground, {} as Step, {}, "wrong-type"],
  ] as const)("refuses %s", (_what, record, one, options, code) =>
    expect(() => stepWidth(record, one, options)).toThrow(expect.objectContaining({ code })),
  );
});

describe("strikeIndex (Cavanagh & Lafortune 1980)", () => {
  const foot = { heel: { forward: 0, right: 0 }, toe: { forward: 0.3, right: 0 } };
  /** A load of 1000 N at one place. */
  const standing = (forward: number, right: number): GroundReaction => ({
    ...groundOf({ up: new Float64Array(11).fill(1000), sampleRate: 10 }),
    moment: {
      right: new Float64Array(11).fill(1000 * forward),
      forward: new Float64Array(11).fill(-1000 * right),
    },
  });
  const whole: Step = { contact: contactOver(0.1, 0.9, "right") };

  it.each(feet.contacts)("NumPy's dot products: contact $index", (row) =>
    expect(strikeIndex(ground, steps[row.index] as Step)).toBeCloseTo(row.strikeIndex, 9),
  );
  it.each([
    [0, 0],
    [0.1, 1 / 3],
    [0.2, 2 / 3],
    [0.3, 1],
    [-0.03, -0.1],
  ])("by hand: %f m from the heel of a foot of 0.3 m is %f", (place, index) =>
    expect(strikeIndex(standing(place, 0.02), whole, { foot })).toBeCloseTo(index, 12),
  );
  it("property: it is a place along the foot, wherever that lies and however it points", () =>
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 1.2, noNaN: true }),
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (share, aside, angle) => {
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          const turned = {
            heel: { forward: 1, right: -2 },
            toe: { forward: 1 + 0.28 * c, right: -2 + 0.28 * s },
          };
          const record = standing(1 + 0.28 * share * c - aside * s, -2 + 0.28 * share * s + aside * c);
          expect(strikeIndex(record, whole, { foot: turned })).toBeCloseTo(share, 9);
        },
      ),
      { numRuns: 50 },
    ));
  it("the foot stated for the instant gives what its track gives", () => {
    const up = ground.force.up;
    const first = Math.ceil(step.contact.initialContact * 1000);
    const at = up.findIndex((force, i) => i >= first && force >= 250);
    const place = at - (Number(up[at]) - 250) / (Number(up[at]) - Number(up[at - 1]));
    const { heel, toe } = tracks.right;
    const read = (samples: Float64Array) => {
      const i = Math.floor(place);
      return Number(samples[i]) + (place - i) * (Number(samples[i + 1]) - Number(samples[i]));
    };
    const line = (track: typeof heel) => ({ forward: read(track.forward), right: read(track.right) });
    const { feet: _feet, ...bare } = ground;
    expect(strikeIndex(bare, step, { foot: { heel: line(heel), toe: line(toe) } })).toBeCloseTo(
      strikeIndex(ground, step) as number,
      12,
    );
  });
  it("reads the unfiltered force where there is one", () => {
    const late = { ...ground, force: { ...ground.force, up: ground.force.up.map((f) => f / 2) } };
    const kept = { ...late, unfiltered: { force: ground.force, moment } };
    expect(strikeIndex(kept, step)).toBe(strikeIndex(ground, step));
    expect(strikeIndex(late, step)).not.toBe(strikeIndex(ground, step));
  });
  it("null below the foot level, without a side, and for a foot whose place is not known", () => {
    expect(strikeIndex(ground, step, { footLevel: 5000 })).toBeNull();
    expect(strikeIndex(ground, { contact: { ...step.contact, side: "unknown" } })).toBeNull();
    expect(strikeIndex({ ...ground, feet: { left: tracks.left } }, step)).toBeNull();
  });
  const { heel, toe } = tracks.right;
  const gap = { ...toe, forward: toe.forward.map(() => Number.NaN) };
  const short = { ...toe, right: toe.right.slice(1) };
  it.each([
    ["a level of 0", ground, { footLevel: 0 }, "out-of-range"],
    ["heel and toe in one place", ground, { foot: { heel: foot.heel, toe: foot.heel } }, "out-of-range"],
    ["a foot without toes", ground, { foot: { heel: foot.heel } }, "wrong-type"],
    ["no foot at all", { ...ground, feet: undefined }, {}, "missing-value"],
    ["a track that has a gap", { ...ground, feet: { right: { heel, toe: gap } } }, {}, "not-finite"],
    [
      "a track of another length",
      { ...ground, feet: { right: { heel, toe: short } } },
      {},
      "unequal-lengths",
    ],
    ["no centre of pressure", { ...ground, moment: {} }, {}, "missing-channel"],
  ] as [string, GroundReaction, StrikeIndexOptions, string][])("refuses %s", (_what, record, options, code) =>
    expect(() => strikeIndex(record, step, options)).toThrow(expect.objectContaining({ code })),
  );

  it("a trial without feet says why; with them it has the values of the function", () => {
    const { recording } = syntheticRun({ duration: 4 });
    const plain = toGroundReaction(recording);
    const metrics = [metricById("strikeIndex")];
    expect(analyseTrial(plain, { metrics }).notComputed).toEqual([
      { id: "strikeIndex", code: "missing-foot", message: "the place of heel and toes is not known" },
    ]);
    const still = (value: number) => new Float64Array(plain.force.up.length).fill(value);
    const track = (forward: number) => ({ forward: still(forward), right: still(0) });
    const both = { heel: track(-1), toe: track(1) };
    const { steps: rows } = analyseTrial({ ...plain, feet: { left: both, right: both } }, { metrics });
    expect(rows.length).toBeGreaterThan(5);
    for (const { values } of rows) expect(values.strikeIndex).toBeTypeOf("number");
  });
});
