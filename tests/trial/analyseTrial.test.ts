import { describe, expect, it } from "vitest";
import { type GroundReaction, lowPassGroundReaction, toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, analyseTrials, stridePairs, strideValues, type Trial } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";

const run = syntheticRun({
  contacts: 24,
  seed: 5,
  variability: { stepTime: 0.01, contactTime: 0.015, brakingAmplitude: 0.04, medialAmplitude: 0.06 },
});
const ground = toGroundReaction(run.recording);
const trial = analyseTrial(ground);
const value = (of: Trial, id: string) => of.summary.metrics[id]?.mean ?? Number.NaN;

const scaled = (
  source: GroundReaction,
  by: Partial<Record<"forward" | "up" | "right", number>>,
  moment: Partial<Record<"forward" | "up" | "right", number>> = by,
): GroundReaction => {
  const times = (samples: Float64Array | undefined, factor = 1) => samples?.map((sample) => sample * factor);
  const forward = times(source.force.forward, by.forward);
  const right = times(source.force.right, by.right);
  const turning = (["forward", "up", "right"] as const).flatMap((direction) => {
    const samples = times(source.moment?.[direction], moment[direction]);
    return samples === undefined ? [] : [[direction, samples] as const];
  });
  return {
    ...source,
    force: {
      up: times(source.force.up, by.up) as Float64Array,
      ...(forward && { forward }),
      ...(right && { right }),
    },
    moment: Object.fromEntries(turning),
  };
};

describe("synthetic truth: mean over complete contacts against what the recording was made from", () => {
  // Threshold 20 N cuts the toe of each contact: impulses and times read short by what lies below it; see the book of
  // analytic values in tests/fixtures/metrics. Peaks do not depend on it.
  it.each([
    ["peakVerticalForce", 0.001],
    ["verticalImpulse", 0.001],
    ["stepTime", 0.0005],
    ["cadence", 0.0005],
    ["brakingImpulse", 0.005],
    ["propulsiveImpulse", 0.012],
    ["peakBrakingForce", 0.003],
    ["peakPropulsiveForce", 0.003],
    ["mediolateralImpulse", 0.01],
    ["medialImpulse", 0.01],
    ["verticalOscillation", 0.01],
    ["stepLength", 0.0005],
    ["positiveExternalWork", 0.01],
  ])("%s within a share of %d", (id, share) => {
    const pairs = trial.steps.flatMap(({ values }, k) => {
      const measured = values[id];
      const truth = run.truth.contacts[k]?.values[id as "stepTime"];
      return measured == null || truth === undefined ? [] : [[measured, truth] as const];
    });
    expect(pairs.length).toBeGreaterThan(20);
    const sum = (which: 0 | 1) => pairs.reduce((total, pair) => total + pair[which], 0);
    expect(Math.abs(sum(0) / sum(1) - 1), `${sum(0) / sum(1) - 1}`).toBeLessThan(share);
  });
  it("finds every contact and its side", () => {
    expect(trial.contacts.map(({ side }) => side)).toEqual(run.truth.contacts.map(({ side }) => side));
  });
});

describe("laws", () => {
  it("mean vertical force over whole strides weighs the runner, within 0.1 % over 11 strides of varied length", () =>
    expect((trial.settings.massByForce ?? 0) / 70).toBeCloseTo(1, 3));
  it("mirrored data give mirrored results", () => {
    const mirrored = analyseTrial({
      ...scaled(ground, { right: -1 }, { forward: -1, up: -1 }),
      firstFoot: "left",
    });
    expect(mirrored.notComputed).toEqual(trial.notComputed);
    for (const id of Object.keys(trial.summary.metrics)) {
      const before = trial.summary.metrics[id];
      const after = mirrored.summary.metrics[id];
      expect(after?.mean, id).toBeCloseTo(before?.mean ?? Number.NaN, 9);
      expect(after?.left?.mean ?? null, id).toBe(before?.right?.mean ?? null);
      expect(after?.right?.mean ?? null, id).toBe(before?.left?.mean ?? null);
    }
  });
  it("twice the force on twice the mass leaves every normalised value, every time and every length", () => {
    const factor = { forward: 2, up: 2, right: 2 };
    const events = { threshold: 20 };
    const one = analyseTrial(ground, { mass: 70, events });
    const two = analyseTrial(scaled(ground, factor), { mass: 140, events: { threshold: 40 } });
    // These are read where the force passes a level in newtons.
    const atNewtons = ["peakFreeMoment", "freeMomentImpulse", "touchdownDistance", "takeOffDistance"];
    // No feet and no coefficient are known of this runner, who does not walk.
    const absent = one.notComputed.map(({ id }) => id);
    const walking = CATALOGUE.filter(({ family }) => family === "walking").map(({ id }) => id);
    expect(absent).toEqual(["strikeIndex", "forceGenerationCost", ...walking]);
    for (const { id, normalised } of CATALOGUE) {
      if ([...atNewtons, ...absent].includes(id)) continue;
      const a = one.summary.metrics[id];
      const b = two.summary.metrics[id];
      const pick = (summary: typeof a) =>
        normalised === undefined ? summary?.mean : summary?.normalised?.mean;
      expect((pick(b) ?? Number.NaN) / (pick(a) ?? Number.NaN), id).toBeCloseTo(1, 9);
    }
  });
  it("a different start time changes no number", () => {
    const later = analyseTrial({ ...ground, startTime: 100 });
    expect(later).toEqual(trial);
  });
  it("the same input gives the same bytes", () =>
    expect(JSON.stringify(analyseTrial(toGroundReaction(run.recording)))).toBe(JSON.stringify(trial)));
});

describe("common practice for recreational running", () => {
  it("the synthetic runner's peak lies at 2 to 2.5 body weights and cadence at 165 to 185 steps/min", () => {
    const peak = trial.summary.metrics.peakVerticalForce?.normalised?.mean ?? 0;
    expect(peak).toBeGreaterThan(2);
    expect(peak).toBeLessThan(2.5);
    expect(value(trial, "cadence")).toBeGreaterThan(165);
    expect(value(trial, "cadence")).toBeLessThan(185);
  });
});

describe("strides (by hand)", () => {
  it("pairs successive contacts, not overlapping, and averages them", () => {
    expect(stridePairs(trial.steps)).toEqual(Array.from({ length: 12 }, (_, k) => [2 * k, 2 * k + 1]));
    const [first] = strideValues(trial.steps, "contactTime");
    const [a, b] = trial.steps.map(({ values }) => values.contactTime ?? Number.NaN);
    expect(first).toBe(((a ?? 0) + (b ?? 0)) / 2);
  });
  it("starts anew after a missed contact", () => {
    const rows = trial.steps.filter((_, k) => k !== 5);
    expect(stridePairs(rows).slice(0, 4)).toEqual([
      [0, 1],
      [2, 3],
      [5, 6],
      [7, 8],
    ]);
  });
});

describe("settings", () => {
  it("filter null leaves the force as it is; a filtered ground reaction is not filtered twice", () => {
    expect(analyseTrial(ground, { filter: null }).settings.filter).toBeNull();
    const filtered = lowPassGroundReaction(ground, { cutoff: 50 });
    expect(analyseTrial(filtered).summary).toEqual(trial.summary);
    expect(() => analyseTrial(filtered, { filter: { cutoff: 50 } })).toThrow(
      expect.objectContaining({ code: "conflict" }),
    );
  });
  it("events may have a cutoff of their own", () => {
    const other = analyseTrial(ground, { events: { cutoff: 100, threshold: 20 } });
    expect(other.settings.events.cutoff).toBe(100);
    expect(value(other, "contactTime")).not.toBe(value(trial, "contactTime"));
    expect(Math.abs(value(other, "contactTime") - value(trial, "contactTime"))).toBeLessThan(0.004);
  });
  it("a list of metrics of the caller's own, with an entry of their own", () => {
    const own = { ...(CATALOGUE[0] as (typeof CATALOGUE)[number]), id: "half", compute: () => 0.5 };
    const short = analyseTrial(ground, { metrics: [own] });
    expect(Object.keys(short.summary.metrics)).toEqual(["half"]);
    expect(short.summary.metrics.half?.mean).toBe(0.5);
  });
  it("trials to be compared get one threshold, the larger one", () => {
    const noisy = toGroundReaction(syntheticRun({ contacts: 24, seed: 5, noise: { force: 25 } }).recording);
    const [quiet, loud] = analyseTrials([ground, noisy]);
    expect(loud?.settings.events.threshold).toBeGreaterThan(20);
    expect(quiet?.settings.events.threshold).toBe(loud?.settings.events.threshold);
  });
});

describe("a single contact", () => {
  const up = Array.from({ length: 400 }, (_, i) =>
    i > 50 && i < 300 ? 1500 * Math.sin((Math.PI * (i - 50)) / 250) : 0,
  );
  const single = analyseTrial(groundOf({ up, sampleRate: 1000 }));
  it("is summarised by itself, and what needs a neighbour says so", () => {
    expect(single.summary.strides).toBe(0);
    expect(single.summary.metrics.peakVerticalForce).toMatchObject({ n: 1, sd: null, interval: null });
    expect(single.cautions.map(({ code }) => code)).toContain("no-stride");
    expect(single.notComputed.find(({ id }) => id === "stepTime")?.code).toBe("no-next-contact");
    expect(single.settings.massByForce).toBeNull();
  });
});

describe("data quality is said", () => {
  const codes = (source: GroundReaction, options = {}) =>
    analyseTrial(source, options).cautions.map(({ code }) => code);
  it.each([
    ["a mass 5 % off", ground, { mass: 73.5 }, "mass-disagrees"],
    ["no mass", { ...ground, subject: {} }, {}, "mass-by-force"],
    [
      "a plate tilted by 1 %",
      {
        ...ground,
        force: {
          ...ground.force,
          forward: ground.force.up.map((f, i) => (ground.force.forward?.[i] ?? 0) + 0.01 * f),
        },
      },
      {},
      "forward-unbalanced",
    ],
    [
      "a threshold within the noise",
      toGroundReaction(syntheticRun({ contacts: 24, noise: { force: 25 } }).recording),
      { events: { threshold: 20 } },
      "threshold-in-noise",
    ],
  ])("%s", (_, source, options, code) => expect(codes(source, options)).toContain(code));
  it("a clean recording with everything stated has but the note on few strides", () =>
    expect(trial.cautions.map(({ code }) => code)).toEqual(["few-strides"]));
});

describe("refuses", () => {
  it.each([
    [{ mass: -70 }, "out-of-range"],
    [{ mass: 686 }, "out-of-range"],
    [{ speed: 40 }, "out-of-range"],
    [{ surface: "water" as never }, "out-of-range"],
    [{ grade: 5 }, "out-of-range"],
    [{ level: 1 }, "out-of-range"],
    [{ filter: { cutoff: 600 } }, "out-of-range"],
    [{ masss: 70 } as never, "unknown-option"],
  ])("options %o", (options, code) =>
    expect(() => analyseTrial(ground, options)).toThrow(expect.objectContaining({ code })),
  );
  it("a force without a contact, saying what it reaches", () =>
    expect(() => analyseTrial(groundOf({ up: new Float64Array(500), sampleRate: 1000 }))).toThrow(
      /reaches 0.0 N/,
    ));
});
