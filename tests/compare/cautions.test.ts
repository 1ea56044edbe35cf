import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { metricById } from "../../src/metrics/index.js";
import type { Trial } from "../../src/trial/index.js";
import { type TrialParts, trialOf, typicalStrides } from "./trialOf.js";

const trial = (seed: number, parts: TrialParts = {}) => trialOf(typicalStrides(seed, 40), parts);
const cautionsOf = (one: TrialParts, other: TrialParts) =>
  compareTrials(trial(1, one), trial(2, other)).cautions;
const codesOf = (one: TrialParts, other: TrialParts) => cautionsOf(one, other).map(({ code }) => code);
const events = (threshold: number, cutoff: number | null = null): Partial<Trial["settings"]> => ({
  events: {
    threshold,
    thresholdRule: "default",
    thresholdShare: null,
    noiseFactor: null,
    fallLevel: threshold / 2,
    cutoff,
    shortestContact: 0.08,
    shortestFlight: 0.03,
    sides: "alternation",
  },
});

it("alike trials: only that two recordings were compared", () =>
  expect(codesOf({}, {})).toEqual(["only-two-recordings"]));

describe("masses", () => {
  it("mass ratios 1.2 % apart: the forces are not on one scale", () => {
    const found = cautionsOf({ massByForce: 70 }, { massByForce: 70.84 }).find(
      ({ code }) => code === "mass-ratios-differ",
    );
    expect(found?.message).toContain("the forces are not on one scale");
    expect(found?.message).toContain("1 in the baseline and 1.012 in the changed trial, 1.2 % apart");
    expect(found?.values).toEqual({
      baselineMass: 70,
      changedMass: 70,
      baselineMassByForce: 70,
      changedMassByForce: 70.84,
    });
  });
  it("exactly 1 % apart is allowed, and what is a little more is printed so that it shows", () => {
    expect(codesOf({}, { massByForce: 70.7 })).not.toContain("mass-ratios-differ");
    const found = cautionsOf({}, { massByForce: 70.70014 }).find(({ code }) => code === "mass-ratios-differ");
    expect(found?.message).toContain(
      "is 1 in the baseline and 1.010002 in the changed trial, 1.0002 % apart where 1 % is allowed",
    );
  });
  it("0.9 % apart, or both 3.6 % short alike, is nothing to say", () => {
    expect(codesOf({ massByForce: 70 }, { massByForce: 70.63 })).not.toContain("mass-ratios-differ");
    expect(codesOf({ massByForce: 67.5 }, { massByForce: 67.6 })).not.toContain("mass-ratios-differ");
  });
  it("another stated mass with the same ratio: said, with what it does to SI loads", () => {
    const found = cautionsOf({}, { mass: 75, massByForce: 75 }).find(({ code }) => code === "masses-differ");
    expect(found?.message).toContain("the stated masses are 70 and 75 kg");
  });
  it("stated in one only: the masses by force are held against each other", () => {
    const parts = (massByForce: number): TrialParts => ({
      mass: massByForce,
      massByForce,
      massStated: false,
    });
    expect(codesOf({}, parts(70.4))).not.toContain("masses-differ");
    expect(codesOf({}, parts(71.4))).toContain("masses-differ");
  });
  it("unknown by force: nothing to hold", () =>
    expect(codesOf({ massByForce: null }, { massByForce: 90 })).toEqual(["only-two-recordings"]));
});

describe("what else than the technique differs", () => {
  it.each<[string, string, TrialParts]>([
    ["threshold", "thresholds-differ", { settings: events(25) }],
    ["filter for events", "event-filters-differ", { settings: events(20, 30) }],
    ["sampling rate", "sample-rates-differ", { settings: { sampleRate: 500 } }],
    ["surface", "surfaces-differ", { settings: { surface: "ground" } }],
    ["slope", "grades-differ", { settings: { grade: 0.02 } }],
    ["library version", "versions-differ", { settings: { version: "0.0.9" } }],
    ["speed not stated", "speed-not-stated", { speed: null }],
    ["speed", "speeds-differ", { speed: 3.3 }],
    ["footwear", "footwear-differs", { settings: { footwear: "racing shoe" } }],
    ["drag of the air", "air-drag-differs", { settings: { airDrag: 4 } }],
  ])("%s: %s, with both values, either way round", (_, code, parts) => {
    const one = cautionsOf({}, parts).find((caution) => caution.code === code);
    const other = cautionsOf(parts, {}).find((caution) => caution.code === code);
    expect(one?.values?.baseline).toEqual(other?.values?.changed);
    expect(one?.values?.changed).toEqual(other?.values?.baseline);
    expect(one?.values?.baseline).not.toEqual(one?.values?.changed);
  });
  it.each<[string, TrialParts, TrialParts, string]>([
    [
      "threshold",
      { settings: events(20) },
      { settings: events(20.0001) },
      "at 20 N in the baseline and at 20.0001 N",
    ],
    ["sampling rate", {}, { settings: { sampleRate: 1000.4 } }, "the sampling rates are 1000 and 1000.4 Hz"],
    ["slope", {}, { settings: { grade: 0.0050004 } }, "the slopes are 0 and 0.50004 %"],
    ["mass", {}, { mass: 70.7001, massByForce: 70.7001 }, "the stated masses are 70 and 70.7001 kg"],
    ["speed", {}, { speed: 3.0600001 }, "the speeds, 3 and 3.0600001 m/s, are more than 2 % apart"],
  ])("%s: as many digits are printed as show the difference", (_, one, other, words) =>
    expect(
      cautionsOf(one, other)
        .map(({ message }) => message)
        .join("; "),
    ).toContain(words),
  );
  it("another footwear stated in both is said in the answer itself; stated in one alone it is a caution", () => {
    const shoes = (footwear: string | null) => trial(1, { settings: { footwear } });
    const both = compareTrials(shoes("racing shoe"), shoes("trail shoe"));
    expect(both.overall.sentence).toContain("on the feet were “racing shoe” and “trail shoe”");
    const one = compareTrials(shoes("racing shoe"), shoes(null));
    expect(one.overall.sentence).not.toContain("racing shoe");
    expect(one.cautions.find(({ code }) => code === "footwear-differs")?.message).toContain(
      "“racing shoe” in the baseline, nothing stated in the changed trial",
    );
    expect(
      codesOf({ settings: { footwear: "barefoot" } }, { settings: { footwear: "barefoot" } }),
    ).not.toContain("footwear-differs");
  });
  it("landing found by another method is said where both trials have it", () => {
    const landing = (method: "force" | "measured") =>
      ({
        settings: {
          landing: {
            method,
            footLevel: 250,
            toe: "line",
            balance: 0,
            margin: { touchdown: 0.01, takeOff: 0.01 },
          } as unknown as Trial["settings"]["landing"],
        },
      }) satisfies TrialParts;
    expect(codesOf(landing("force"), landing("measured"))).toContain("landing-methods-differ");
    expect(codesOf(landing("force"), landing("force"))).not.toContain("landing-methods-differ");
    expect(codesOf(landing("force"), {})).not.toContain("landing-methods-differ");
  });
  it("both thresholds are said, and there is none for both", () => {
    const comparison = compareTrials(trial(1), trial(2, { settings: events(25) }));
    expect(comparison.settings.threshold).toBeNull();
    expect([comparison.baseline.threshold, comparison.changed.threshold]).toEqual([20, 25]);
    expect(comparison.cautions.find(({ code }) => code === "thresholds-differ")?.message).toContain(
      "at 20 N in the baseline and at 25 N in the changed trial",
    );
    expect(compareTrials(trial(1), trial(2)).settings.threshold).toBe(20);
  });
});

it("the trials' own cautions are carried with the trial's name, once where both say the same", () => {
  const both = { code: "low-sample-rate", message: "too slow", where: "up" };
  const one = { code: "drift", message: "drift was removed" };
  const carried = cautionsOf({ cautions: [both, one] }, { cautions: [both] }).slice(-2);
  expect(carried).toEqual([
    { ...both, where: "both trials, up" },
    { ...one, where: "baseline" },
  ]);
});

describe("bad input", () => {
  const filter = (cutoff: number): TrialParts => ({ settings: { filter: { cutoff, order: 4 } } });
  it.each([
    [{ settings: { filter: null } }, "no filter"],
    [filter(30), "a 30 Hz filter of order 4"],
    [{ settings: { filter: { cutoff: 50, order: 2 } } }, "a 50 Hz filter of order 2"],
    [filter(50.0002), "a 50.0002 Hz filter of order 4"],
  ])("refuses trials behind different filters, and names both: %o", (parts, words) => {
    const compare = () => compareTrials(trial(1), trial(2, parts as TrialParts));
    expect(compare).toThrow(expect.objectContaining({ code: "not-comparable" }));
    expect(compare).toThrow(
      `the baseline was analysed with a 50 Hz filter of order 4 and the changed trial with ${words}`,
    );
  });
  it("two trials without filter are compared", () =>
    expect(
      compareTrials(trial(1, { settings: { filter: null } }), trial(2, { settings: { filter: null } }))
        .settings.filter,
    ).toBeNull());
  it.each([[null], [undefined], [{}], [{ schema: "another" }]])("refuses %o as a trial", (given) =>
    expect(() => compareTrials(trial(1), given as unknown as Trial)).toThrow(
      expect.objectContaining({ code: "wrong-type", argument: "changed" }),
    ),
  );
  const change = (parts: object) => ({
    smallestDetectableChange: { peakVerticalForce: { value: 10, unit: "N", source: "a table", ...parts } },
  });
  it.each([
    [{ readingLevel: 1 }, "out-of-range"],
    [{ readingLevel: 99 }, "out-of-range"],
    [{ shownLevel: 0 }, "out-of-range"],
    [{ shownLevel: Number.NaN }, "not-finite"],
    [{ minimumStrides: 1 }, "out-of-range"],
    [{ minimumStrides: 20.5 }, "out-of-range"],
    [{ minimumStridesCorrelated: "40" }, "wrong-type"],
    [{ similarMargin: -0.1 }, "out-of-range"],
    [{ speedTolerance: -0.1 }, "out-of-range"],
    [{ level: 0.95 }, "unknown-option"],
    [change({ value: -1 }), "out-of-range"],
    [change({ value: Number.POSITIVE_INFINITY }), "not-finite"],
    [change({ unit: "kN" }), "unit-mismatch"],
    [change({ source: " " }), "missing-value"],
    [{ smallestDetectableChange: { stride: { value: 1, unit: "N", source: "a table" } } }, "out-of-range"],
    [{ smallestDetectableChange: { peakVerticalForce: 10 } }, "wrong-type"],
    [{ smallestDetectableChange: { peakVerticalForce: null } }, "wrong-type"],
    [{ smallestDetectableChange: { peakVerticalForce: ["N"] } }, "wrong-type"],
    [{ smallestDetectableChange: null }, "wrong-type"],
    [{ smallestDetectableChange: [] }, "wrong-type"],
    [{ smallestDetectableChange: 5 }, "wrong-type"],
    [change({ unit: null }), "unit-mismatch"],
    [change({ source: 7 }), "missing-value"],
    [{ metrics: null }, "wrong-type"],
    [{ metrics: "contactTime" }, "wrong-type"],
    [{ metrics: ["contactTime"] }, "wrong-type"],
    [{ metrics: [undefined] }, "wrong-type"],
    [{ metrics: [metricById("contactTime"), { id: "own" }] }, "wrong-type"],
    [{ metrics: [{ ...metricById("contactTime"), moreLoad: "up" }] }, "wrong-type"],
  ])("refuses the option %o: %s", (options, code) =>
    expect(() => compareTrials(trial(1), trial(2), options as object)).toThrow(
      expect.objectContaining({ code }),
    ),
  );
  it.each([
    [
      { smallestDetectableChange: null },
      "smallestDetectableChange is null; an object is needed that holds { value, unit, source } by metric id",
    ],
    [
      { smallestDetectableChange: { peakVerticalForce: null } },
      "smallestDetectableChange.peakVerticalForce is null; { value, unit, source } is needed, in N or % or BW, with the source it is from",
    ],
    [
      { metrics: null },
      'metrics is null; a list of catalogue entries is needed, such as [metricById("contactTime")]',
    ],
    [{ metrics: ["contactTime"] }, 'metrics[0] is "contactTime"; a list of catalogue entries is needed'],
    [
      { metrics: [metricById("contactTime"), { id: "own" }] },
      "metrics[1] is an object without id, name, unit, family, component, needs or moreLoad",
    ],
  ])("says of %o what is allowed", (options, words) =>
    expect(() => compareTrials(trial(1), trial(2), options as object)).toThrow(words),
  );
  it("a change in body weights needs the baseline's mass", () =>
    expect(() =>
      compareTrials(trial(1, { mass: null, massByForce: null }), trial(2), change({ unit: "BW" })),
    ).toThrow(expect.objectContaining({ code: "missing-value" })));
  it("work per distance is no unit for a change per step", () =>
    expect(() =>
      compareTrials(trial(1), trial(2), {
        smallestDetectableChange: { positiveExternalWork: { value: 0.1, unit: "J/kg/m", source: "a table" } },
      }),
    ).toThrow(expect.objectContaining({ code: "unit-mismatch" })));
});
