import { describe, expect, it } from "vitest";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE, contactTime, type Metric } from "../../src/metrics/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";

/** Synthetic truth in recordings that are not as one would wish; each test names what went wrong once, on 2026-11-25. */
const groundFrom = (options: SyntheticRunOptions) => toGroundReaction(syntheticRun(options).recording);
const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);

describe("a trial without any mass (threw)", () => {
  const up = Array.from({ length: 400 }, (_, i) =>
    i > 50 && i < 300 ? 1500 * Math.sin((Math.PI * (i - 50)) / 250) : 0,
  );
  const trial = analyseTrial(groundOf({ up, sampleRate: 1000, mass: null }));
  it("has no share of impact peaks and says why there is no peak", () => {
    expect(trial.summary.impactPeakShare).toBeNull();
    expect(trial.notComputed.find(({ id }) => id === "impactPeak")?.code).toBe("missing-mass");
    expect(trial.settings.mass).toBeNull();
    expect(trial.summary.metrics.peakVerticalForce?.normalised).toBeUndefined();
  });
  it("is one whatever metrics are asked for", () =>
    expect(analyseTrial(groundOf({ up, sampleRate: 1000, mass: null }), { metrics: [] }).steps.length).toBe(
      1,
    ));
});

it("speed 0 leaves out what needs a speed (threw)", () => {
  const trial = analyseTrial(groundFrom({ contacts: 12 }), { speed: 0 });
  const missing = trial.notComputed.filter(({ code }) => code === "missing-speed").map(({ id }) => id);
  expect(missing).toEqual([
    ...[
      "touchdownDistance",
      "takeOffDistance",
      "stepLength",
      "strideLength",
      "positiveWorkForward",
      "positiveExternalWork",
    ],
    ...["legStiffness", "pushToBrakeTimeRatio"],
  ]);
});

describe("short flights", () => {
  const shortFlights = (contactTime: number) =>
    groundFrom({
      contacts: 60,
      stance: { stepTime: 0.36, contactTime },
      variability: { stepTime: 0.008, contactTime: 0.01 },
    });
  it.each([0.33, 0.34])(
    "contact %d s of 0.36 s: forward offset below 0.1 N (2.4 and 5.1 N of contact force were taken off)",
    (contactTime) => {
      const ground = shortFlights(contactTime);
      expect(Math.abs(ground.settings.offset?.forward ?? 0)).toBeLessThan(0.1);
      expect(codes(ground)).not.toContain("drift-removed");
    },
  );
  it("are said, and so are contacts that were read as one (nothing was said)", () => {
    const trial = analyseTrial(shortFlights(0.34));
    expect(trial.contacts.length).toBeLessThan(60);
    expect(codes(trial)).toContain("long-contact");
    expect(codes(trial)).toContain("short-flights");
  });
  it("long flights are not spoken of", () => {
    const trial = analyseTrial(groundFrom({ contacts: 60 }));
    expect(codes(trial)).toEqual([]);
  });
});

it("flight level above half the threshold does not glue contacts together (4 of 80 were found)", () => {
  const { recording } = syntheticRun({ contacts: 40, offset: { up: 15 }, noise: { force: 1 } });
  const trial = analyseTrial(toGroundReaction(recording, { offset: "none", drift: "never" }));
  expect(trial.contacts.length).toBe(40);
});

it("a low sampling rate is refused by its own name, not by an option nobody gave", () => {
  const ground = groundFrom({ contacts: 12, sampleRate: 100 });
  expect(() => analyseTrial(ground)).toThrow(
    /sampling rate is 100 Hz; the default filter of 50 Hz needs more than 100 Hz/,
  );
  expect(analyseTrial(ground, { filter: { cutoff: 30 } }).contacts.length).toBe(12);
});

it("mass by force on a slope divides by g cos θ (law: the normal force carries W cos θ)", () => {
  const ground = groundFrom({ contacts: 24 });
  const level = analyseTrial(ground).settings.massByForce ?? Number.NaN;
  const slope = analyseTrial(ground, { grade: 0.1 }).settings.massByForce ?? Number.NaN;
  expect(slope / level).toBeCloseTo(Math.sqrt(1.01), 12);
});

it("one contact has a mean curve and no spread (was 0)", () => {
  const up = Array.from({ length: 400 }, (_, i) =>
    i > 50 && i < 300 ? 1500 * Math.sin((Math.PI * (i - 50)) / 250) : 0,
  );
  const { up: curves } = analyseTrial(groundOf({ up, sampleRate: 1000 })).curves;
  const [curve] = Object.values(curves);
  expect(curve?.n).toBe(1);
  expect(curve?.sd).toBeNull();
});

it("nobody leaves the ground: the refusal says so", () => {
  const up = Float64Array.from({ length: 3000 }, (_, i) => 700 + 100 * Math.sin(i / 100));
  expect(() => analyseTrial(groundOf({ up, sampleRate: 1000 }))).toThrow(
    /never falls below 60\d N: nobody leaves the ground/,
  );
});

it("a centre of pressure in the wrong unit is said, and no surface inferred from it (was taken to be a belt at 1944 m/s)", () => {
  const { surface: _, ...ground } = groundFrom({ contacts: 12 });
  const { right } = ground.moment ?? {};
  const trial = analyseTrial({
    ...ground,
    moment: { ...ground.moment, right: right?.map((m) => 1000 * m) as Float64Array },
  });
  expect(codes(trial)).toContain("centre-of-pressure-implausible");
  expect(trial.settings.surface).toBeNull();
});

it("a sampling rate far too high makes flights too short to see: the refusal asks for the rate", () => {
  const ground = groundFrom({ contacts: 12, firstContact: -0.05 });
  expect(() => analyseTrial({ ...ground, sampleRate: 4000 })).toThrow(/is the sampling rate right\?/);
});

describe("odd arguments (were TypeErrors)", () => {
  const ground: GroundReaction = groundFrom({ contacts: 6 });
  const broken: Metric = { ...(CATALOGUE[0] as Metric), id: "broken", compute: () => Number.NaN };
  it.each([
    ["events: null", { events: null as never }, "wrong-type"],
    ["ids in place of entries", { metrics: ["contactTime"] as never }, "wrong-type"],
    ["metrics: null", { metrics: null as never }, "wrong-type"],
    ["a metric that gives NaN, by its id", { metrics: [broken] }, "not-finite"],
  ])("%s", (_, options, code) =>
    expect(() => analyseTrial(ground, options)).toThrow(expect.objectContaining({ code })),
  );
  it.each([[undefined], [null], [syntheticRun({ contacts: 4 }).recording]])("%# no ground reaction", (odd) =>
    expect(() => analyseTrial(odd as never)).toThrow(
      expect.objectContaining({ code: "wrong-type", argument: "ground" }),
    ),
  );
  it("a metric of a contact that is not there", () =>
    expect(() => contactTime(ground, { contact: undefined as never })).toThrow(
      expect.objectContaining({ code: "wrong-type", argument: "step" }),
    ));
});
