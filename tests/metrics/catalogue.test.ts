import { describe, expect, it } from "vitest";
import { type Contact, detectEvents, type Step, stepsOf } from "../../src/events/index.js";
import { type GroundReaction, type MomentComponents, toGroundReaction } from "../../src/force/index.js";
import * as metrics from "../../src/metrics/index.js";
import { CATALOGUE, type Metric, type MetricNeed, metricById } from "../../src/metrics/index.js";
import { isGaitKineticsError } from "../../src/units/index.js";
import { walkOnBelts } from "../walking.js";
import { sampledRun } from "./runs.js";

const { ground, steps } = sampledRun();
const step = steps[0] as Step;
const walk = toGroundReaction(walkOnBelts());
const walkedStep = stepsOf(detectEvents(walk).contacts)[1] as Step;
/** A recording and a step that a metric describes. */
const subjectOf = ({ gaits }: Metric): [GroundReaction, Step] =>
  gaits?.includes("running") === false ? [walk, walkedStep] : [ground, step];
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
  resultant: ["peakResultantForce", "peakFreeMoment", "freeMomentImpulse"],
  placement: [
    ...["touchdownDistance", "takeOffDistance", "stepLength", "strideLength", "stepWidth", "strikeIndex"],
  ],
  work: [
    ...["positiveWorkVertical", "positiveWorkForward", "positiveWorkLateral", "positiveExternalWork"],
    ...["verticalStiffness", "legStiffness", "elasticEnergy", "halfSineFit", "pushToBrakeTimeRatio"],
    "forceGenerationCost",
  ],
  walking: [
    ...["firstVerticalPeak", "midstanceTrough", "secondVerticalPeak", "doubleSupportTime"],
    ...["singleSupportTime", "stanceShare", "energyRecovery"],
  ],
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

const UNITS = ["s", "N", "N s", "N/s", "N m", "N m s", "m", "J", "N/m", "W/kg", "1", "steps/min"];
const NORMALISED: Readonly<Record<string, readonly [string, string]>> = {
  N: ["BW", "body weight"],
  "N s": ["BW s", "body weight"],
  "N/s": ["BW/s", "body weight"],
  "N m": ["BW m", "body weight"],
  "N m s": ["BW m s", "body weight"],
  J: ["J/kg/m", "mass and distance"],
  "N/m": ["N/m/kg", "mass"],
};

describe.each(CATALOGUE.map((entry) => [entry.id, entry] as const))("%s", (id, entry) => {
  it("has a function exported under its id, and computes with it", () => {
    expect(functions[id]).toBeTypeOf("function");
    expect(entry.compute).toBe(functions[id]);
  });
  it("has a name, a symbol, a unit, a definition in one sentence and a source", () => {
    expect(entry.name).toMatch(/^[a-z][a-z, -]+$/);
    expect(entry.symbol).toMatch(/^\S{1,14}$/);
    expect(UNITS).toContain(entry.unit);
    expect(entry.definition).toMatch(/^[A-Z0-9].+\.$/);
    expect(entry.definition).not.toMatch(/\. [A-Z]/);
    expect(entry.source).toMatch(/common practice|law|conservation|doi:|\d{4}/i);
  });
  it("is normalised as its unit asks", () => {
    // Work goes by the way, the energy of one bounce does not.
    const [unit, by] = entry.id === "elasticEnergy" ? ["J/kg", "mass"] : (NORMALISED[entry.unit] ?? []);
    expect(entry.normalised?.unit).toBe(unit);
    expect(entry.normalised?.by).toBe(by);
  });
  it("has a value per kilometre where it is a load", () => {
    expect(entry.perKilometre === true).toBe(entry.moreLoad === "higher");
    if (entry.family === "timing" || entry.family === "placement") expect(entry.moreLoad).toBe("none");
  });
  it("is a finite number where every need is met", () => {
    const [ground, step] = subjectOf(entry);
    // A coefficient of the caller's own is asked for, and none is taken for granted.
    const value =
      id === "forceGenerationCost"
        ? metrics.forceGenerationCost(ground, step, { coefficient: 0.265 })
        : entry.compute(ground, step);
    expect(Number.isFinite(value)).toBe(true);
  });
});

/** What is left of the recording or the step where one need is not met. */
function without(need: MetricNeed, [ground, step]: [GroundReaction, Step]): [GroundReaction, Step] {
  const { forward: _forward, ...noForward } = ground.force;
  const { right: _right, ...noRight } = ground.force;
  const { speed: _speed, ...noSpeed } = ground;
  const { surface: _surface, ...noSurface } = ground;
  const { feet: _feet, ...noFeet } = ground;
  const {
    forward: aboutForward,
    up: aboutUp,
    right: aboutRight,
  } = ground.moment as Required<MomentComponents>;
  const moment = (parts: MomentComponents): GroundReaction => ({ ...ground, moment: parts });
  const { next: _next, ...noNext } = step;
  const { nextSameSide: _same, ...noStride } = step;
  const cases: Record<MetricNeed, [GroundReaction, Step]> = {
    forward: [{ ...ground, force: noForward }, step],
    right: [{ ...ground, force: noRight }, step],
    copForward: [moment({ forward: aboutForward, up: aboutUp }), step],
    copRight: [moment({ up: aboutUp, right: aboutRight }), step],
    freeMoment: [moment({ forward: aboutForward, right: aboutRight }), step],
    side: [ground, { ...step, contact: { ...step.contact, side: "unknown" } }],
    foot: [noFeet, step],
    mass: [{ ...ground, subject: { height: 1.75 } }, noStride],
    height: [{ ...ground, subject: { mass: 70 } }, step],
    speed: [noSpeed, step],
    surface: [noSurface, step],
    oneFoot: [ground, sharingPlate(step)],
    next: [ground, noNext],
    nextSameSide: [ground, noStride],
    coefficient: [ground, step],
  };
  return cases[need];
}

/** The step as if both feet had been on one plate, yet never at a time. */
function sharingPlate({ contact, next, nextSameSide }: Step): Step {
  const share = (own: Contact): Contact => ({
    ...own,
    shared: true,
    singleSupport: own.singleSupport ?? { from: own.initialContact, to: own.toeOff },
  });
  return {
    contact: share(contact),
    ...(next && { next: share(next) }),
    ...(nextSameSide && { nextSameSide: share(nextSameSide) }),
  };
}

/** What a metric does where a need is not met: its value, null, or the code of its error. */
function outcome(entry: Metric, need: MetricNeed): number | null | string {
  try {
    return entry.compute(...without(need, subjectOf(entry)));
  } catch (caught) {
    if (isGaitKineticsError(caught)) return caught.code;
    throw caught;
  }
}

const LANDING: ReadonlySet<string> = new Set(["touchdownDistance", "takeOffDistance"]);
const LANDING_NEEDS: ReadonlySet<MetricNeed> = new Set(["forward", "copForward", "speed", "surface"]);

describe("needs tell the whole truth: without a need the metric is refused or null, without anything else it stays", () => {
  const withheld: Record<MetricNeed, string | null> = {
    forward: "missing-channel",
    right: "missing-channel",
    copForward: "missing-channel",
    copRight: "missing-channel",
    freeMoment: "missing-channel",
    side: null,
    foot: "missing-value",
    mass: "missing-value",
    height: "missing-value",
    speed: "missing-value",
    surface: "missing-value",
    oneFoot: "missing-channel",
    next: null,
    nextSameSide: null,
    coefficient: null,
  };
  describe.each(Object.keys(withheld) as MetricNeed[])("without %s", (need) => {
    it.each(CATALOGUE.map((entry) => [entry.id, entry] as const))("%s", (_id, entry) => {
      // A stride tells the mass, so that withholding every mass also withholds the stride.
      const strideMissing = need === "mass" && entry.needs.includes("nextSameSide");
      // Touchdown and take-off give no reason of their own: a trial asks `assessLanding`.
      const silent = LANDING.has(entry.id) && LANDING_NEEDS.has(need);
      const expected =
        strideMissing || silent
          ? null
          : entry.needs.includes(need)
            ? withheld[need]
            : entry.compute(...subjectOf(entry));
      // The height enters a landing only where the forward force does not even out: 2e-9 m here.
      if (need === "height" && LANDING.has(entry.id)) {
        expect(outcome(entry, need)).toBeCloseTo(expected as number, 7);
      } else expect(outcome(entry, need)).toBe(expected);
    });
  });
});

describe("what is null says why", () => {
  const contact = step.contact as Contact;
  it.each([
    ["side-unknown", ["medialImpulse", "lateralImpulse", "peakMedialForce", "peakLateralForce", "stepWidth"]],
    ["no-impact-peak", ["impactPeak", "timeToImpactPeak", "averageLoadingRate", "instantaneousLoadingRate"]],
    ["no-crossing", ["brakingTime", "propulsiveTime"]],
    ["no-flight", ["aerialTime"]],
    ["no-braking-rise", ["brakingLoadingRate"]],
    ["no-variation", ["halfSineFit"]],
    ["foot-unknown", ["strikeIndex"]],
    ["no-trough", ["firstVerticalPeak", "midstanceTrough", "secondVerticalPeak"]],
    ["no-single-support", ["singleSupportTime"]],
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
