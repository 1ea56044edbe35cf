import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import {
  type AnalyseTrialOptions,
  analyseTrial,
  cumulativeLoad,
  stridePairs,
  strideValues,
  symmetryOf,
  type Trial,
} from "../../src/trial/index.js";

/** One foot alone: on 2026-11-25 left and right alternated, 35 kg were given and half the metrics were wrong. */
const oneFootOf = (contacts: number, seed = 1): GroundReaction => {
  const { recording, truth } = syntheticRun({ contacts, seed, speed: 3, noise: { force: 1 } });
  const gone = truth.contacts.filter((_, k) => k % 2 === 1);
  const { sampleRate } = recording;
  const channels = recording.channels.map((channel) => ({
    ...channel,
    samples: channel.samples.map((value, i) => {
      const t = i / sampleRate;
      return gone.some(({ initialContact, toeOff }) => t >= initialContact && t <= toeOff) ? 0 : value;
    }),
  }));
  const { firstFoot: _, ...rest } = toGroundReaction({ ...recording, channels });
  return rest;
};
const ground = oneFootOf(44);
const whole = analyseTrial(
  toGroundReaction(syntheticRun({ contacts: 44, speed: 3, noise: { force: 1 } }).recording),
);
const codes = ({ cautions }: Trial) => cautions.map(({ code }) => code);
const lacking = (trial: Trial) =>
  trial.notComputed.filter(({ code }) => code === "one-foot").map(({ id }) => id);
const bare = ({ subject: { mass: _, ...subject }, ...rest }: GroundReaction): GroundReaction => ({
  ...rest,
  subject,
});
const OF_BODY = [
  ...["aerialTime", "stepTime", "cadence", "verticalOscillation", "mediolateralExcursion"],
  ...["touchdownDistance", "takeOffDistance", "stepLength", "stepWidth"],
  ...["positiveWorkVertical", "positiveWorkForward", "positiveWorkLateral", "positiveExternalWork"],
  ...["verticalStiffness", "legStiffness", "elasticEnergy", "pushToBrakeTimeRatio"],
];
const OF_SIDE = ["medialImpulse", "lateralImpulse", "peakMedialForce", "peakLateralForce", "strikeIndex"];

describe.each<[string, GroundReaction]>([
  ["with a stated mass", ground],
  ["without a mass", bare(ground)],
])("one foot of a run, %s", (_, of) => {
  const trial = analyseTrial(of);
  it("all contacts are of one foot, which is not known", () => {
    expect(codes(trial)).toContain("one-foot");
    expect(trial.settings.events.sides).toBe("none");
    expect(trial.contacts.length).toBe(22);
    expect([...trial.contacts, ...trial.steps].every(({ side }) => side === "unknown")).toBe(true);
    expect(codes(trial).filter((code) => code.startsWith("sides-"))).toEqual([]);
  });
  it("no mass by force, and nothing is said of it or of a balance over strides of one foot", () => {
    expect(trial.settings.massByForce).toBeNull();
    expect(trial.settings.mass).toBe(of.subject.mass ?? null);
    for (const code of ["mass-disagrees", "mass-by-force", "sideways-unbalanced"]) {
      expect(codes(trial)).not.toContain(code);
    }
  });
  it("what is of the body, of a step or of a side is not computed, with the reason", () => {
    expect(lacking(trial).sort()).toEqual([...OF_BODY, ...OF_SIDE].sort());
    for (const id of lacking(trial)) {
      expect(trial.summary.metrics[id], id).toBeUndefined();
      expect(
        trial.steps.every(({ values }) => !(id in values)),
        id,
      ).toBe(true);
    }
  });
  it("strides are from a contact to the next one, and agree with those of both feet", () => {
    expect(trial.summary.strides).toBe(21);
    expect(stridePairs(trial.steps, trial)).toEqual(Array.from({ length: 21 }, (_, k) => [k]));
    expect(strideValues(trial.steps, "strideTime", trial).length).toBe(21);
    for (const id of ["strideTime", "dutyFactor", "strideLength", "contactTime", "peakVerticalForce"]) {
      const [one, both] = [trial, whole].map(({ summary }) => summary.metrics[id]?.mean ?? Number.NaN);
      expect((one as number) / (both as number), id).toBeCloseTo(1, 1);
    }
  });
  it("no symmetry and no sum over steps", () => {
    expect(symmetryOf(trial, "contactTime")).toMatchObject({ code: "one-foot" });
    expect(cumulativeLoad(trial, "peakVerticalForce")).toMatchObject({ code: "one-foot" });
  });
});

describe("the foot, where it is stated", () => {
  const named = (of: GroundReaction, options: AnalyseTrialOptions = {}) => analyseTrial(of, options);
  it.each<[string, Trial, string]>([
    ["by the first foot", named(ground, { events: { firstFoot: "left" } }), "first foot"],
    ["by the belt", named({ ...ground, side: "left" }), "plates"],
  ])("%s: of all contacts, and medial and lateral are given", (_, trial, method) => {
    expect(trial.settings.events.sides).toBe(method);
    expect(trial.contacts.every(({ side }) => side === "left")).toBe(true);
    expect(lacking(trial).sort()).toEqual([...OF_BODY].sort());
    expect(trial.summary.metrics.medialImpulse?.n).toBe(21);
    expect(trial.summary.metrics.medialImpulse?.left?.n).toBe(22);
    expect(trial.summary.metrics.strideTime?.mean).toBeCloseTo(0.672, 2);
    expect(symmetryOf(trial, "contactTime")).toMatchObject({ code: "one-foot" });
  });
  it("contacts of which marked events name both feet are of both", () => {
    const { contacts } = analyseTrial(ground);
    const recordedEvents = contacts.map(({ initialContact }, k) => ({
      label: "foot strike",
      time: initialContact,
      side: k % 2 === 0 ? ("left" as const) : ("right" as const),
    }));
    const trial = analyseTrial({ ...ground, recordedEvents });
    expect(codes(trial)).not.toContain("one-foot");
    expect(lacking(trial)).toEqual([]);
  });
});

it("two trials of one foot are not read (2026-11-25: shifted, the vertical force lower)", () => {
  const comparison = compareTrials(analyseTrial(oneFootOf(84)), analyseTrial(oneFootOf(84, 2)));
  expect(comparison.overall.reading).toBe("unsettled");
  expect(comparison.overall.sentence).toMatch(
    /^Unsettled: in both trials one foot alone seems to have been recorded/,
  );
  expect(comparison.metrics.some(({ perKilometre }) => perKilometre !== undefined)).toBe(false);
  expect(comparison.metrics.find(({ id }) => id === "peakVerticalForce")?.baseline.n).toBe(41);
  expect(comparison.work.reading).toBe("unsettled");
  const mixed = compareTrials(whole, analyseTrial(ground));
  expect(mixed.overall.sentence).toContain("in the changed trial one foot alone");
});
