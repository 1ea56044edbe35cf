import { describe, expect, it } from "vitest";
import { lowPassGroundReaction, toGroundReaction } from "../../src/force/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import {
  analyseTrial,
  type StanceComponent,
  type StanceCurvesOptions,
  stanceCurves,
} from "../../src/trial/index.js";
import { contactOver, groundOf } from "../helpers.js";

const ground = toGroundReaction(
  syntheticRun({
    contacts: 14,
    sampleRate: 500,
    noise: { force: 2 },
    variability: { contactTime: 0.02, impactAmplitude: 0.06, lateralAmplitude: 0.1 },
  }).recording,
);
const trial = analyseTrial(ground);
const directions = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;
const meanOf = (curves: readonly Float64Array[]) =>
  Array.from({ length: 101 }, (_, q) => curves.reduce((sum, c) => sum + (c[q] as number), 0) / curves.length);
const largestGap = (one: ArrayLike<number>, other: ArrayLike<number>) =>
  Math.max(...Array.from(one, (value, q) => Math.abs(value - (other[q] as number))));

describe.each(["vertical", "anteroposterior", "mediolateral"] as readonly StanceComponent[])(
  "%s",
  (component) => {
    it.each(["left", "right"] as const)(
      "law: the mean of the %s curves is the trial's mean curve",
      (side) => {
        const { curves, contacts, unit } = stanceCurves(ground, trial.contacts, {
          component,
          side,
          unit: "N",
        });
        const known = trial.curves[directions[component]]?.[side];
        expect([curves.length, contacts.length, unit]).toEqual([known?.n, known?.n, "N"]);
        expect(largestGap(meanOf(curves), known?.mean ?? [])).toBeLessThan(1e-9);
      },
    );
    it("body weights are newtons over mass and gravity", () => {
      const of = (options: StanceCurvesOptions) =>
        stanceCurves(ground, trial.contacts, { component, side: "left", ...options });
      const [newtons, weights, other] = [of({ unit: "N" }), of({}), of({ mass: 35 })];
      expect([weights.unit, ground.subject.mass]).toEqual(["BW", 70]);
      expect(
        largestGap(
          meanOf(weights.curves).map((v) => v * 70 * 9.80665),
          meanOf(newtons.curves),
        ),
      ).toBeLessThan(1e-9);
      expect(
        largestGap(
          meanOf(other.curves).map((v) => v / 2),
          meanOf(weights.curves),
        ),
      ).toBeLessThan(1e-12);
    });
  },
);

it("a recording that is filtered already is taken as it is", () => {
  const filtered = lowPassGroundReaction(ground, { cutoff: 50, order: 4 });
  const [one, other] = [stanceCurves(ground, trial.contacts), stanceCurves(filtered, trial.contacts)];
  expect(one.filter).toEqual({ cutoff: 50, order: 4 });
  expect(other).toEqual(one);
  expect(stanceCurves(ground, trial.contacts, { filter: null }).filter).toBeNull();
});

it("both feet: every contact in order, the mediolateral force outwards on both", () => {
  const both = stanceCurves(ground, trial.contacts, { component: "mediolateral" });
  const left = stanceCurves(ground, trial.contacts, { component: "mediolateral", side: "left" });
  expect(both.contacts).toEqual(trial.contacts);
  const first = both.contacts.findIndex(({ side }) => side === "left");
  expect(
    largestGap(
      both.curves[first] ?? [],
      (left.curves[0] ?? new Float64Array(0)).map((v) => -v),
    ),
  ).toBe(0);
});

it("by hand: straight lines between samples", () => {
  const ramp = groundOf({ up: [0, 10, 20, 30, 40], sampleRate: 10, mass: null });
  const { curves, unit } = stanceCurves(ramp, [contactOver(0.05, 0.25)], { filter: null, points: 5 });
  expect(unit).toBe("N");
  [5, 10, 15, 20, 25].forEach((value, q) => {
    expect(curves[0]?.[q]).toBeCloseTo(value, 12);
  });
});

it("leaves out contacts that share their plate", () => {
  const shared = trial.contacts.map((contact, k) =>
    k === 3 ? { ...contact, shared: true as const } : contact,
  );
  expect(stanceCurves(ground, shared).contacts).toHaveLength(trial.contacts.length - 1);
});

const upOnly = groundOf({ up: new Float64Array(500).fill(700), sampleRate: 500, mass: null });
const one = [contactOver(0.1, 0.3)];
describe("2026-11-25: TypeErrors of what is no recording, and curves of NaN or Infinity body weights", () => {
  it.each([
    null,
    undefined,
    {},
    { ...ground, force: undefined },
    { ...ground, settings: undefined },
    { ...ground, subject: null },
  ])("no ground reaction, case %#", (source) =>
    expect(() => stanceCurves(source as never, trial.contacts)).toThrow(
      expect.objectContaining({ code: "wrong-type" }),
    ),
  );
  it.each([null, {}, [null]])("contacts %o", (contacts) =>
    expect(() => stanceCurves(ground, contacts as never)).toThrow(
      expect.objectContaining({ code: "wrong-type" }),
    ),
  );
  it.each([
    [undefined, "wrong-type"],
    [0, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("gravity %s: %s for body weights, none needed for newtons", (gravity, code) => {
    const source = { ...ground, gravity } as typeof ground;
    expect(() => stanceCurves(source, trial.contacts)).toThrow(expect.objectContaining({ code }));
    expect(stanceCurves(source, trial.contacts, { unit: "N" }).unit).toBe("N");
  });
});
it.each([
  ["missing-channel", upOnly, one, { component: "anteroposterior" }],
  ["missing-value", upOnly, one, { unit: "BW" }],
  ["no-contact", upOnly, one, { side: "left" }],
  ["no-contact", upOnly, [], {}],
  [
    "missing-value",
    ground,
    trial.contacts.map((c) => ({ ...c, side: "unknown" })),
    { component: "mediolateral" },
  ],
  ["out-of-range", ground, trial.contacts, { component: "up" }],
  ["out-of-range", ground, trial.contacts, { side: "unknown" }],
  ["out-of-range", ground, trial.contacts, { points: 1 }],
  ["out-of-range", ground, trial.contacts, { mass: -70 }],
  ["out-of-range", ground, [contactOver(0.1, 500)], {}],
  ["unknown-option", ground, trial.contacts, { direction: "up" }],
])("refuses with %s", (code, source, contacts, options) =>
  expect(() => stanceCurves(source, contacts as never, options as never)).toThrow(
    expect.objectContaining({ code }),
  ),
);
