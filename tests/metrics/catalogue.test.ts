import { describe, expect, it } from "vitest";
import type { Contact, Step } from "../../src/events/index.js";
import type { GroundReaction } from "../../src/force/index.js";
import * as metrics from "../../src/metrics/index.js";
import { CATALOGUE, type Metric, type MetricNeed, metricById } from "../../src/metrics/index.js";
import { isGaitKineticsError } from "../../src/units/index.js";
import { sampledRun } from "./runs.js";

const { ground, steps } = sampledRun();
const step = steps[0] as Step;
const functions = metrics as unknown as Readonly<Record<string, unknown>>;

// Source of the ids, their order, units and primaries: the library's own definition of its families (design of the catalogue).
const ORDER = {
  timing: [
    "contactTime",
    "aerialTime",
    "stepTime",
    "strideTime",
    "cadence",
    "dutyFactor",
    "brakingTime",
    "propulsiveTime",
  ],
  vertical: [
    ...["peakVerticalForce", "impactPeak", "timeToImpactPeak", "averageLoadingRate", "earlyLoadingRate"],
    ...["instantaneousLoadingRate", "verticalImpulse", "meanVerticalForce", "verticalOscillation"],
  ],
  anteroposterior: [
    ...["brakingImpulse", "propulsiveImpulse", "netForwardImpulse"],
    ...["peakBrakingForce", "peakPropulsiveForce", "brakingLoadingRate"],
  ],
  mediolateral: [
    ...["mediolateralImpulse", "medialImpulse", "lateralImpulse"],
    ...["peakMedialForce", "peakLateralForce", "mediolateralExcursion"],
  ],
  placement: ["stepLength", "strideLength"],
  work: ["positiveExternalWork", "halfSineFit"],
};

it("lists every metric once, family by family, in the order of every table", () => {
  expect(CATALOGUE.map(({ id }) => id)).toEqual(Object.values(ORDER).flat());
  for (const { id, family } of CATALOGUE) expect(ORDER[family], id).toContain(id);
});

it("names one primary for each component and one for work", () => {
  const primaries = CATALOGUE.filter(({ primary }) => primary).map(({ id, component }) => [component, id]);
  expect(primaries).toEqual([
    ["vertical", "peakVerticalForce"],
    ["anteroposterior", "brakingImpulse"],
    ["mediolateral", "mediolateralImpulse"],
    ["none", "positiveExternalWork"],
  ]);
});

describe.each(CATALOGUE.map((entry) => [entry.id, entry] as const))("%s", (id, entry) => {
  it("has a function exported under its id, and computes with it", () => {
    expect(functions[id]).toBeTypeOf("function");
    expect(entry.compute).toBe(functions[id]);
  });
  it("has a name, a symbol, a unit, a definition in one sentence and a source", () => {
    expect(entry.name).toMatch(/^[a-z][a-z -]+$/);
    expect(entry.symbol).toMatch(/^\S{1,12}$/);
    expect(["s", "N", "N s", "N/s", "m", "J", "1", "steps/min"]).toContain(entry.unit);
    expect(entry.definition).toMatch(/^[A-Z0-9].+\.$/);
    expect(entry.definition).not.toMatch(/\. [A-Z]/);
    expect(entry.source).toMatch(/common practice|law|doi:|\d{4}/i);
  });
  it("is normalised as its unit asks", () => {
    const by = { N: "BW", "N s": "BW s", "N/s": "BW/s", J: "J/kg/m" }[entry.unit];
    expect(entry.normalised?.unit).toBe(by);
    expect(entry.normalised?.by).toBe(by && (entry.unit === "J" ? "mass and distance" : "body weight"));
  });
  it("has a value per kilometre where it is a load", () => {
    expect(entry.perKilometre === true).toBe(entry.moreLoad === "higher");
    if (entry.family === "timing" || entry.family === "placement") expect(entry.moreLoad).toBe("none");
  });
  it("is a finite number where every need is met", () => {
    expect(Number.isFinite(entry.compute(ground, step))).toBe(true);
  });
});

/** What is left of the recording or the step where one need is not met. */
function without(need: MetricNeed): [GroundReaction, Step] {
  const { forward: _forward, ...noForward } = ground.force;
  const { right: _right, ...noRight } = ground.force;
  const { speed: _speed, ...noSpeed } = ground;
  const { surface: _surface, ...noSurface } = ground;
  const { next: _next, ...noNext } = step;
  const { nextSameSide: _same, ...noStride } = step;
  const cases: Record<MetricNeed, [GroundReaction, Step]> = {
    forward: [{ ...ground, force: noForward }, step],
    right: [{ ...ground, force: noRight }, step],
    side: [ground, { ...step, contact: { ...step.contact, side: "unknown" } }],
    mass: [{ ...ground, subject: {} }, noStride],
    speed: [noSpeed, step],
    surface: [noSurface, step],
    next: [ground, noNext],
    nextSameSide: [ground, noStride],
  };
  return cases[need];
}

/** What a metric does where a need is not met: its value, null, or the code of its error. */
function outcome(entry: Metric, need: MetricNeed): number | null | string {
  try {
    return entry.compute(...without(need));
  } catch (caught) {
    if (isGaitKineticsError(caught)) return caught.code;
    throw caught;
  }
}

describe("needs tell the whole truth: without a need the metric is refused or null, without anything else it stays", () => {
  const withheld: Record<MetricNeed, string | null> = {
    forward: "missing-channel",
    right: "missing-channel",
    side: null,
    mass: "missing-value",
    speed: "missing-value",
    surface: "missing-value",
    next: null,
    nextSameSide: null,
  };
  describe.each(Object.keys(withheld) as MetricNeed[])("without %s", (need) => {
    it.each(CATALOGUE.map((entry) => [entry.id, entry] as const))("%s", (_id, entry) => {
      // A stride tells the mass, so that withholding every mass also withholds the stride.
      const strideMissing = need === "mass" && entry.needs.includes("nextSameSide");
      const expected = strideMissing
        ? null
        : entry.needs.includes(need)
          ? withheld[need]
          : entry.compute(ground, step);
      expect(outcome(entry, need)).toBe(expected);
    });
  });
});

describe("what is null says why", () => {
  const contact = step.contact as Contact;
  it.each([
    ["side-unknown", ["medialImpulse", "lateralImpulse", "peakMedialForce", "peakLateralForce"]],
    ["no-impact-peak", ["impactPeak", "timeToImpactPeak", "averageLoadingRate", "instantaneousLoadingRate"]],
    ["no-crossing", ["brakingTime", "propulsiveTime"]],
    ["no-flight", ["aerialTime"]],
    ["no-braking-rise", ["brakingLoadingRate"]],
    ["no-variation", ["halfSineFit"]],
  ])("%s", (code, ids) => {
    expect(CATALOGUE.filter(({ nullWhen }) => nullWhen?.code === code).map(({ id }) => id)).toEqual(ids);
    const still = ground.force.up.map(() => 900);
    const record: GroundReaction = { ...ground, force: { up: still, forward: still, right: still } };
    const walking = {
      contact: { ...contact, side: "unknown" },
      next: { ...contact, initialContact: contact.toeOff - 0.01 },
    };
    for (const id of ids) expect(metricById(id).compute(record, walking as Step), id).toBeNull();
  });
});

it("finds an entry by its id, and refuses another with the list of those there are", () => {
  expect(metricById("cadence").unit).toBe("steps/min");
  expect(() => metricById("calcLR")).toThrow(
    expect.objectContaining({ code: "out-of-range", message: expect.stringContaining("averageLoadingRate") }),
  );
});
