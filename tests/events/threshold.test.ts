import { describe, expect, it } from "vitest";
import { detectEvents } from "../../src/events/index.js";
import { flightNoise, lowPassGroundReaction, toGroundReaction } from "../../src/force/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, analyseTrials } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";
import { CUTOFFS, NOISES, numpyRow, THRESHOLDS, thresholdRow } from "./accuracyRows.js";

const { recording } = syntheticRun({ contacts: 24, noise: { force: 3 } });
const ground = toGroundReaction(recording);
const WEIGHT = 70 * 9.80665;

describe("a share of body weight", () => {
  it("of the stated mass", () => {
    const { settings } = detectEvents({ ...ground, subject: { mass: 80 } }, { thresholdShare: 0.05 });
    expect(settings.threshold).toBeCloseTo(0.05 * 80 * 9.80665, 9);
    expect(settings).toMatchObject({ thresholdRule: "share of body weight", thresholdShare: 0.05 });
  });
  it("of the mass by force from a first pass, where none is stated (law: whole strides carry the body)", () => {
    const { subject: _, ...rest } = ground;
    const unstated = { ...rest, subject: {} };
    const { settings, contacts } = detectEvents(unstated, { thresholdShare: 0.05 });
    expect(settings.threshold / (0.05 * WEIGHT)).toBeCloseTo(1, 2);
    expect(contacts.every(({ threshold }) => threshold === settings.threshold)).toBe(true);
    // On a slope the normal force is W cos θ, and the share is of W.
    const slope = detectEvents({ ...unstated, grade: 0.1 }, { thresholdShare: 0.05 }).settings.threshold;
    expect(slope / settings.threshold).toBeCloseTo(Math.sqrt(1.01), 12);
  });
  it("is refused where no body weight is to be had", () => {
    const up = Array.from({ length: 600 }, (_, i) => (i > 200 && i < 400 ? 900 : 0));
    expect(() =>
      detectEvents(groundOf({ up, sampleRate: 1000, mass: null }), { thresholdShare: 0.05 }),
    ).toThrow(expect.objectContaining({ code: "missing-value", argument: "mass" }));
  });
});

describe("from the noise in flight", () => {
  it("mean + k SD, reported", () => {
    const noise = flightNoise(ground);
    const { settings } = detectEvents(ground, { noiseFactor: 6 });
    expect(settings.threshold).toBe((noise?.mean ?? 0) + 6 * (noise?.sd ?? 0));
    expect(settings).toMatchObject({ thresholdRule: "noise in flight", noiseFactor: 6 });
    expect(settings.threshold).toBeGreaterThan(15);
    expect(settings.threshold).toBeLessThan(20);
  });
  it("fewer than 4 SD are followed with a caution", () => {
    const codes = (noiseFactor: number) =>
      detectEvents(ground, { noiseFactor }).cautions.map(({ code }) => code);
    expect(codes(3)).toContain("threshold-in-noise");
    expect(codes(4)).toEqual([]);
  });
  it("1 N where a recording is without noise", () => {
    const clean = toGroundReaction(syntheticRun({ contacts: 12 }).recording);
    expect(detectEvents(clean, { noiseFactor: 5 }).settings.threshold).toBe(1);
  });
  it("is refused without a flight", () => {
    const up = Array.from({ length: 3000 }, (_, i) => 700 + 100 * Math.sin(i / 100));
    expect(() => detectEvents(groundOf({ up, sampleRate: 1000 }), { noiseFactor: 5 })).toThrow(
      expect.objectContaining({ code: "missing-value", argument: "noiseFactor" }),
    );
  });
});

it("the default says that it is one", () =>
  expect(detectEvents(ground).settings).toMatchObject({
    threshold: 20,
    thresholdRule: "default",
    thresholdShare: null,
    noiseFactor: null,
  }));

it.each([
  [{ threshold: 20, thresholdShare: 0.05 }, "conflict"],
  [{ threshold: 20, noiseFactor: 5 }, "conflict"],
  [{ thresholdShare: 0.05, noiseFactor: 5 }, "conflict"],
  [{ thresholdShare: 5 }, "out-of-range"],
  [{ thresholdShare: 0 }, "out-of-range"],
  [{ noiseFactor: 0 }, "out-of-range"],
  [{ noiseFactor: Number.NaN }, "not-finite"],
])("refuses %o with %s", (options, code) =>
  expect(() => detectEvents(ground, options)).toThrow(expect.objectContaining({ code })),
);

it.each([{ thresholdShare: 0.05 }, { noiseFactor: 8 }])(
  "trials to be compared share the largest threshold that %o gives any of them",
  (events) => {
    const heavy = toGroundReaction(syntheticRun({ contacts: 24, mass: 80, noise: { force: 4 } }).recording);
    const own = [ground, heavy].map((one) => analyseTrial(one, { events }).settings.events.threshold);
    const both = analyseTrials([ground, heavy], { events });
    expect(own[0]).toBeLessThan(own[1] ?? 0);
    expect(both.map(({ settings }) => settings.events.threshold)).toEqual([own[1], own[1]]);
  },
);

describe("events on a copy of their own", () => {
  const trial = analyseTrial(ground, { events: { cutoff: 100, thresholdShare: 0.05 } });
  it("are those of that copy, and the metrics those of theirs", () => {
    const copy = lowPassGroundReaction(ground, { cutoff: 100 });
    expect(trial.contacts).toEqual(detectEvents(copy, { thresholdShare: 0.05 }).contacts);
    const own = analyseTrial(ground, { events: { thresholdShare: 0.05 } });
    expect(own.contacts).not.toEqual(trial.contacts);
    const peak = (of: typeof trial) => of.steps.map(({ values }) => values.peakVerticalForce);
    expect(peak(own)).toEqual(peak(trial));
  });
  it("are in the settings", () => {
    expect(trial.settings.events).toMatchObject({
      cutoff: 100,
      thresholdRule: "share of body weight",
      thresholdShare: 0.05,
    });
    expect(analyseTrial(ground).settings.events.cutoff).toBeNull();
  });
});

describe("accuracy against the true zeros of the force, as the accuracy page prints it", () => {
  const named = Object.keys(THRESHOLDS);
  it.each(
    named.flatMap((threshold) =>
      NOISES.flatMap((noise) => {
        const numpy = numpyRow(threshold, noise);
        return numpy === undefined ? [] : [[threshold, noise, numpy] as const];
      }),
    ),
  )("independent code: NumPy's study, %s, noise %d N, unfiltered", (threshold, noise, numpy) => {
    const { initialContact, toeOff } = thresholdRow(threshold, noise, null);
    // Two means of 150 trials each differ by less than 4 standard errors, and by rounding.
    const reach = (sd: number) => 4 * sd * Math.sqrt(2 / 150) + 0.005;
    expect(Math.abs(initialContact.mean - (numpy.contactBiasMs ?? 0))).toBeLessThan(
      reach(numpy.contactSdMs ?? 0),
    );
    expect(Math.abs(toeOff.mean - (numpy.toeOffBiasMs ?? 0))).toBeLessThan(reach(numpy.toeOffSdMs ?? 0));
    expect(initialContact.sd / (numpy.contactSdMs ?? 0)).toBeGreaterThan(0.7);
    expect(initialContact.sd / (numpy.contactSdMs ?? 0)).toBeLessThan(1.4);
  });
  it("5 % BW lies between 20 and 50 N, as its 34 N do", () => {
    const [low, share, high] = ["20 N", "5 % BW", "50 N"].map((name) => thresholdRow(name, 0, null));
    expect(share?.initialContact.mean).toBeGreaterThan(low?.initialContact.mean ?? 0);
    expect(share?.initialContact.mean).toBeLessThan(high?.initialContact.mean ?? 0);
  });
  it("a filter makes initial contact earlier, the more the lower its cutoff (20 Hz: some 4 ms at 20 N)", () => {
    const early = CUTOFFS.map((cutoff) => thresholdRow("20 N", 2, cutoff).initialContact.mean);
    expect([...early].sort((a, b) => b - a)).toEqual(early);
    expect((early[0] ?? 0) - (early.at(-1) ?? 0)).toBeGreaterThan(3.5);
    expect((early[0] ?? 0) - (early.at(-1) ?? 0)).toBeLessThan(5.5);
  });
});
