import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, hofNormalisedTrial, type Trial } from "../../src/trial/index.js";
import { walkOnOneBelt } from "../events/walkOnOneBelt.js";
import { groundOf } from "../helpers.js";
import { walking, walkOnBelts } from "../walking.js";

const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);
const reasonsOf = (trial: Trial, code: string) =>
  trial.notComputed.filter((entry) => entry.code === code).map(({ id }) => id);
const ofGait = (gait: "running" | "walking") =>
  CATALOGUE.filter(({ gaits }) => gaits?.includes(gait)).map(({ id }) => id);

const apart = toGroundReaction(walkOnBelts());
const { plates: _plates, ...onePlate } = apart;
const run = toGroundReaction(syntheticRun({ contacts: 24 }).recording);

describe("a walk on two belts", () => {
  const trial = analyseTrial(apart, { filter: null, events: { threshold: 1 } });
  const mean = (id: string) => trial.summary.metrics[id]?.mean ?? Number.NaN;
  it("is told, and what describes running is left out with the reason", () => {
    expect(trial.settings).toMatchObject({ gait: "walking", gaitStated: false });
    expect(reasonsOf(trial, "other-gait")).toEqual(ofGait("running"));
    expect(trial.notComputed.find(({ id }) => id === "impactPeak")?.message).toBe(
      "it describes running; this trial is walking",
    );
    expect(trial.summary.impactPeakShare).toBeNull();
  });
  it("independent library: the fixture's walk, truth by its formulas (NumPy 2.4.6)", () => {
    const BW = walking.massKg * 9.80665;
    expect(mean("firstVerticalPeak") / BW).toBeCloseTo(walking.metrics.F1.BW, 5);
    expect(trial.summary.metrics.midstanceTrough?.normalised?.mean).toBeCloseTo(
      walking.metrics.F2trough.BW,
      5,
    );
    expect(mean("doubleSupportTime")).toBeCloseTo(walking.metrics.doubleSupportEach, 3);
    expect(mean("stanceShare")).toBeCloseTo(walking.metrics.stancePercent / 100, 3);
    expect(100 * mean("energyRecovery")).toBeCloseTo(walking.work.perStrideJ.recoveryPercent, 1);
  });
  it("law: step time = single support + double support, on average", () =>
    expect(mean("singleSupportTime") + mean("doubleSupportTime")).toBeCloseTo(mean("stepTime"), 4));
  it("Hof's forms, against the fixture's own", () => {
    const { hof } = walking.metrics;
    const plain = hofNormalisedTrial(trial, { legLength: hof.legLength });
    expect(plain.speed).toBeCloseTo(hof.speed, 12);
    expect((plain.speed ?? 0) ** 2).toBeCloseTo(hof.froude, 12);
    expect(plain.metrics.stepTime?.mean).toBeCloseTo(hof.stepTime, 9);
    expect(plain.metrics.stepLength?.mean).toBeCloseTo(hof.stepLength, 9);
    expect(plain.metrics.cadence?.mean).toBeCloseTo(hof.cadence, 9);
    expect(plain.metrics.firstVerticalPeak?.mean).toBeCloseTo(walking.metrics.F1.BW, 5);
    expect(plain.metrics.firstVerticalPeak?.n).toBe(trial.summary.metrics.firstVerticalPeak?.n);
    expect(plain.metrics.stanceShare).toBeUndefined();
    expect(() => hofNormalisedTrial(trial)).toThrow(
      expect.objectContaining({ code: "missing-value", argument: "legLength" }),
    );
    expect(() => hofNormalisedTrial(trial, { legLength: 92 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => hofNormalisedTrial({} as Trial, { legLength: 0.92 })).toThrow(
      expect.objectContaining({ code: "wrong-type" }),
    );
  });
  it("Hof's forms without a mass keep to lengths, times and rates", () => {
    const bare = { ...trial, settings: { ...trial.settings, mass: null, speed: null } };
    const plain = hofNormalisedTrial(bare, { legLength: 0.92 });
    expect(plain.speed).toBeNull();
    expect(plain.metrics.stepTime).toBeDefined();
    expect(plain.metrics.firstVerticalPeak).toBeUndefined();
  });
});

describe("a walk with both feet on one belt", () => {
  const trial = analyseTrial(onePlate, { filter: null });
  it("has what the body and single support tell, near what two belts tell", () => {
    const two = analyseTrial(apart, { filter: null });
    for (const id of [
      ...["contactTime", "stepTime", "cadence", "dutyFactor", "stepWidth", "positiveExternalWork"],
      ...["firstVerticalPeak", "midstanceTrough", "secondVerticalPeak", "doubleSupportTime"],
      ...["singleSupportTime", "stanceShare", "energyRecovery", "verticalOscillation"],
    ]) {
      const [one, other] = [trial, two].map((of) => of.summary.metrics[id]?.mean ?? Number.NaN) as [
        number,
        number,
      ];
      expect(one / other, id).toBeCloseTo(1, 3);
    }
    expect(codes(trial)).toContain("feet-share-plate");
  });
  it("has nothing that the force under one foot would tell, with the reason", () => {
    const lacking = CATALOGUE.filter(
      ({ needs, gaits }) => needs.includes("oneFoot") && (gaits ?? ["walking"]).includes("walking"),
    ).map(({ id }) => id);
    const listed = reasonsOf(trial, "feet-share-plate");
    const channels = trial.notComputed.filter(({ code }) => code !== "feet-share-plate").map(({ id }) => id);
    expect(listed).toEqual(lacking.filter((id) => !channels.includes(id)));
    expect(listed).toContain("peakVerticalForce");
    expect(listed).toContain("brakingImpulse");
    expect(trial.curves.up).toEqual({});
    expect(trial.curves.forward).toEqual({});
  });
  it("is plain data, with the events' own fields", () => {
    expect(JSON.parse(JSON.stringify(trial))).toEqual(trial);
    expect(trial.contacts[1]).toMatchObject({ shared: true, singleSupport: { from: expect.any(Number) } });
  });
  it("the surface is inferred from single support", () => {
    const { ground } = walkOnOneBelt({ steps: 12 });
    const { surface: _surface, ...unstated } = ground;
    expect(analyseTrial(unstated).settings.surface).toBe("belt");
    const { surface: _other, ...still } = walkOnOneBelt({ steps: 12, surface: "ground" }).ground;
    expect(analyseTrial(still).settings.surface).toBe("ground");
  });
  it("without a centre of pressure the refusal says what is missing", () => {
    const { moment: _moment, ...blind } = onePlate;
    expect(() => analyseTrial(blind)).toThrow(/no centre of pressure along `right` was recorded/);
  });
});

describe("running", () => {
  const trial = analyseTrial(run);
  it("has no walking metrics, with the reason, and all of its own", () => {
    expect(trial.settings.gait).toBe("running");
    expect(reasonsOf(trial, "other-gait")).toEqual(ofGait("walking"));
    expect(trial.summary.metrics.impactPeak).toBeDefined();
  });
  it("stated as walking by either option, it is followed with a caution", () => {
    const stated = analyseTrial(run, { gait: "walking" });
    expect(stated.settings).toMatchObject({ gait: "walking", gaitStated: true });
    expect(codes(stated)).toContain("gait-disagrees");
    expect(analyseTrial(run, { events: { gait: "walking" } }).settings.gait).toBe("walking");
  });
});

describe("jumping", () => {
  // Open recording: stepping on, standing, jump and landing at 450 Hz. Duarte & Watanabe (2021), doi:10.5281/zenodo.4599319.
  const up = readFileSync(new URL("../fixtures/text/jump-450hz.txt", import.meta.url), "utf8")
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => Number(line.split("\t")[1]));
  const trial = analyseTrial(groundOf({ up, sampleRate: 450, mass: null }), { filter: null });
  it("contacts of the body with their forces; no steps, strides or sides", () => {
    expect(trial.settings.gait).toBe("jumping");
    expect(trial.summary.strides).toBe(0);
    expect(trial.steps.map(({ values }) => values.peakVerticalForce)).toEqual([1492.25, 4696.75]);
    expect(trial.settings.massByForce).toBeNull();
    expect(trial.summary.metrics.stepTime).toBeUndefined();
    expect(trial.notComputed.find(({ id }) => id === "cadence")).toBeDefined();
    expect(codes(trial)).toContain("no-steps");
    expect(codes(trial)).not.toContain("no-stride");
  });
});

describe("comparing", () => {
  const comparedWithItself = (trial: Trial) => compareTrials(trial, trial);
  it("walking has no readings, with the reason", () => {
    const { overall, metrics, work } = comparedWithItself(analyseTrial(apart));
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toMatch(
      /no readings for walking until their rate of false alarms has been measured/,
    );
    expect(work.reading).toBe("unsettled");
    expect(metrics.some(({ id }) => id === "firstVerticalPeak")).toBe(true);
  });
  it("a walk against a run is unsettled too, and two runs are read as before", () => {
    const running = analyseTrial(run);
    const walked = analyseTrial(apart);
    expect(compareTrials(running, walked).overall.sentence).toMatch(
      /the baseline is running and the changed trial is walking/,
    );
    expect(
      comparedWithItself(analyseTrial(toGroundReaction(syntheticRun({ contacts: 60 }).recording))).overall
        .reading,
    ).toBe("no clear change");
  });
});
