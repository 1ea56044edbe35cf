import { describe, expect, it } from "vitest";
import {
  compareTrials,
  type MetricReliability,
  type RunnerTrials,
  reliability,
} from "../../../src/compare/index.js";
import { toGroundReaction } from "../../../src/force/index.js";
import { metricById } from "../../../src/metrics/index.js";
import { seededRandom, standardDeviation } from "../../../src/statistics/index.js";
import { syntheticRun } from "../../../src/synthetic/index.js";
import { analyseTrials, type Trial } from "../../../src/trial/index.js";
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };
import { type TrialParts, trialOf } from "../trialOf.js";

/** Thirty strides whose mean is exactly this. */
const strides = (mean: number) => Array.from({ length: 30 }, (_, i) => mean + (i % 2 === 0 ? 1 : -1));
const trialAt = (mean: number, parts: TrialParts = {}): Trial =>
  trialOf({ peakVerticalForce: strides(mean), brakingImpulse: strides(mean / 100) }, parts);
const runnersOf = (table: readonly (readonly number[])[]): RunnerTrials[] =>
  table.map((row, i) => ({ runner: `runner ${i + 1}`, trials: row.map((mean) => trialAt(mean)) }));
const metrics = ["peakVerticalForce", "brakingImpulse"].map(metricById);
const only = (given: readonly Trial[] | readonly RunnerTrials[]) => reliability(given, { metrics });
const metricOf = (found: { readonly metrics: readonly MetricReliability[] }, id = "peakVerticalForce") => {
  const metric = found.metrics.find((entry) => entry.id === id);
  if (metric === undefined) throw new Error(`no ${id}`);
  return metric;
};

describe("published tables as means of trials", () => {
  it("Shrout & Fleiss 1979: 0.17, 0.29, 0.71, 0.44, 0.62, 0.91, each with both names", () => {
    const { inputs, expected } = worked["icc.shrout"];
    const { correlations } = metricOf(only(runnersOf(inputs.ratings)));
    expect(correlations.map(({ form, alsoCalled, value }) => [form, alsoCalled, value.toFixed(2)])).toEqual([
      ["ICC(1,1)", "ICC(1)", expected.icc11.toFixed(2)],
      ["ICC(2,1)", "ICC(A,1)", expected.icc21.toFixed(2)],
      ["ICC(3,1)", "ICC(C,1)", expected.icc31.toFixed(2)],
      ["ICC(1,k)", "ICC(k)", expected.icc1k.toFixed(2)],
      ["ICC(2,k)", "ICC(A,k)", expected.icc2k.toFixed(2)],
      ["ICC(3,k)", "ICC(C,k)", expected.icc3k.toFixed(2)],
    ]);
  });
  it("Weir 2005, data set A: standard error of consistency 7.6, and 1.96 √2 of agreement is the change", () => {
    const { inputs, expected } = worked["icc.weir"];
    const { standardError, smallestDetectableChange, runners, trials } = metricOf(
      only(runnersOf(inputs.trials)),
    );
    expect(standardError.consistency.toFixed(1)).toBe(expected.sem.toFixed(1));
    expect(smallestDetectableChange.value).toBeCloseTo(1.96 * Math.SQRT2 * standardError.agreement, 10);
    expect([runners, trials]).toEqual([8, 2]);
  });
  it("law: with two trials 1.96 √2 of consistency is half the width of the limits of agreement", () => {
    for (const table of [worked["icc.weir"].inputs.trials, worked["icc.mcgraw"].inputs.ratings]) {
      const { standardError, limitsOfAgreement } = metricOf(only(runnersOf(table)));
      const half = ((limitsOfAgreement?.high ?? 0) - (limitsOfAgreement?.low ?? 0)) / 2;
      expect(1.96 * Math.SQRT2 * standardError.consistency).toBeCloseTo(half, 9);
    }
  });
  it("Bland & Altman's bias is the second trial less the first, with intervals around bias and limits", () => {
    const limits = metricOf(
      only(
        runnersOf([
          [100, 103],
          [110, 112],
          [90, 94],
          [105, 106],
        ]),
      ),
    ).limitsOfAgreement;
    expect(limits?.bias).toBeCloseTo(2.5, 10);
    for (const [value, interval] of [
      [limits?.bias, limits?.biasInterval],
      [limits?.low, limits?.lowInterval],
      [limits?.high, limits?.highInterval],
    ] as const) {
      expect(interval?.low).toBeLessThan(value as number);
      expect(interval?.high).toBeGreaterThan(value as number);
    }
  });
});

describe("one runner", () => {
  const means = [1650, 1670, 1640, 1660, 1655];
  const found = only(means.map((mean) => trialAt(mean)));
  it("the error is the standard deviation between trials, its interval by chi-square of 4 degrees of freedom (0.4844 and 11.1433, printed tables)", () => {
    const { standardError, smallestDetectableChange, mean } = metricOf(found);
    expect(standardError.agreement).toBeCloseTo(standardDeviation(means), 9);
    expect(standardError.consistency).toBe(standardError.agreement);
    expect(mean).toBeCloseTo(1655, 9);
    const { value, interval, percent } = smallestDetectableChange;
    expect(value).toBeCloseTo(1.96 * Math.SQRT2 * standardDeviation(means), 9);
    expect(percent).toBeCloseTo((100 * value) / 1655, 9);
    expect((interval?.low ?? 0) / value).toBeCloseTo(Math.sqrt(4 / 11.1433), 5);
    expect((interval?.high ?? 0) / value).toBeCloseTo(Math.sqrt(4 / 0.4844), 3);
  });
  it("has no correlation and no limits, and says why", () => {
    expect(metricOf(found)).toMatchObject({
      runners: 1,
      trials: 5,
      correlations: [],
      limitsOfAgreement: null,
    });
    expect(found.settings.design).toContain("no intraclass correlation");
  });
  it("says that few trials tell little, and no longer with eleven", () => {
    expect(found.cautions.map(({ code }) => code)).toContain("few-trials");
    const many = only(Array.from({ length: 11 }, (_, i) => trialAt(1650 + (i % 3))));
    expect(many.cautions).toEqual([]);
  });
  it("the same as one entry with its name", () => {
    const named = only([{ runner: "Ida", trials: means.map((mean) => trialAt(mean)) }]);
    expect(named.metrics).toEqual(found.metrics);
  });
});

describe("into compareTrials as it is", () => {
  const levels = [1650, 1670, 1640, 1660, 1655];
  const repeats = only([...levels, ...levels, 1648].map((mean) => trialAt(mean)));
  const { value } = metricOf(repeats).smallestDetectableChange;
  const compared = (rise: number) =>
    compareTrials(trialAt(1650), trialAt(1650 + rise), {
      metrics,
      smallestDetectableChange: repeats.smallestDetectableChange,
    });
  it("its change and source stand beside the difference", () => {
    const [peak] = compared(2 * value).metrics;
    expect(peak?.smallestDetectableChange.value).toBeCloseTo(value, 9);
    expect(peak?.smallestDetectableChange.source).toContain(
      "1.96 √2 × the standard error of measurement of 11 trials of one runner",
    );
    expect(compared(0).cautions.map(({ code }) => code)).not.toContain("only-two-recordings");
  });
  it("a rise below it reads `unsettled` or `similar`, one above it `higher`, whatever the strides say", () => {
    const reading = (rise: number) =>
      compared(rise).components.find(({ component }) => component === "vertical")?.reading;
    expect(reading(0.9 * value)).not.toBe("higher");
    expect(reading(1.3 * value)).toBe("higher");
  });
  it("takes the change of every metric of the catalogue, from recordings", () => {
    const grounds = [1, 2, 3, 4].map((seed) =>
      toGroundReaction(syntheticRun({ contacts: 42, seed }).recording),
    );
    const [first, second, third, fourth] = analyseTrials(grounds) as [Trial, Trial, Trial, Trial];
    const found = reliability([first, second, third]);
    expect(found.metrics.length).toBeGreaterThan(30);
    for (const { smallestDetectableChange } of found.metrics) {
      expect(smallestDetectableChange.value).toBeGreaterThanOrEqual(0);
      expect(smallestDetectableChange.interval?.low).toBeLessThanOrEqual(smallestDetectableChange.value);
    }
    const { smallestDetectableChange } = found;
    const comparison = compareTrials(first, fourth, { smallestDetectableChange });
    const [compared] = comparison.metrics.filter(({ id }) => id === "brakingImpulse");
    // 2026-11-25: an impulse that no trial varies in had a change of 1.5e-13 N s, which every difference exceeds.
    expect(smallestDetectableChange.brakingImpulse).toBeUndefined();
    expect(compared?.smallestDetectableChange.value).toBeGreaterThan(0);
  });
  it("is plain JSON", () => expect(JSON.parse(JSON.stringify(repeats))).toEqual(repeats));
});

it("simulation, 400 runners of 6 trials whose trials vary by 20 N: 1.96 √2 of the error is 55.4 N, within 2 %; 95 % intervals hold it in 93 to 97 of 100", () => {
  const random = seededRandom(12);
  const truth = 1.96 * Math.SQRT2 * 20;
  let squares = 0;
  let covered = 0;
  for (let r = 0; r < 400; r++) {
    const trials = Array.from({ length: 6 }, () => trialAt(1650 + 20 * random.normal()));
    const { value, interval } = metricOf(
      reliability(trials, { metrics: [metricById("peakVerticalForce")] }),
    ).smallestDetectableChange;
    squares += value ** 2 / 400;
    if ((interval?.low ?? 0) < truth && truth < (interval?.high ?? 0)) covered++;
  }
  expect(Math.abs(Math.sqrt(squares) / truth - 1)).toBeLessThan(0.02);
  expect(covered).toBeGreaterThanOrEqual(372);
  expect(covered).toBeLessThanOrEqual(388);
});

describe("what else differed between a runner's trials is said", () => {
  const same = Array.from({ length: 11 }, () => trialAt(1650));
  const codes = (parts: TrialParts) => only([...same, trialAt(1655, parts)]).cautions.map(({ code }) => code);
  const { events } = trialAt(1650).settings;
  it.each([
    ["speeds-differ", { speed: 3.1 }],
    ["thresholds-differ", { settings: { events: { ...events, threshold: 30 } } }],
    ["event-filters-differ", { settings: { events: { ...events, cutoff: 30 } } }],
    ["sample-rates-differ", { settings: { sampleRate: 500 } }],
    ["surfaces-differ", { settings: { surface: "ground" } }],
    ["grades-differ", { settings: { grade: 0.05 } }],
    ["footwear-differs", { settings: { footwear: "spikes" } }],
    ["force-scales-differ", { massByForce: 72 }],
  ] as const)("%s", (code, parts) => {
    expect(codes(parts)).toEqual([code]);
    expect(codes({})).toEqual([]);
  });
  it("speeds within 2 % and between runners are no matter", () => {
    expect(codes({ speed: 3.05 })).toEqual([]);
    const two = Array.from({ length: 10 }, (_, i) => ({
      runner: `runner ${i}`,
      trials: [trialAt(1600 + 9 * i, { speed: 3 + i / 10 }), trialAt(1610 + 7 * i, { speed: 3 + i / 10 })],
    }));
    expect(only(two).cautions).toEqual([]);
  });
  it("a caution of several trials is said once, with the trials", () => {
    const caution = { code: "tilt", message: "the plate is tilted" };
    const { cautions } = only([
      ...same,
      trialAt(1650, { cautions: [caution] }),
      trialAt(1651, { cautions: [caution] }),
    ]);
    expect(cautions).toEqual([{ ...caution, where: "trial 12 of the runner, trial 13 of the runner" }]);
  });
});

describe("what a trial lacks", () => {
  it("a metric that one trial does not have is left out, with the trial and its reason", () => {
    const without = trialOf({ peakVerticalForce: strides(1650) });
    const { metrics: found, notCompared, smallestDetectableChange } = only([trialAt(1655), without]);
    expect(found.map(({ id }) => id)).toEqual(["peakVerticalForce"]);
    expect(notCompared).toEqual([
      {
        id: "brakingImpulse",
        code: "not-in-all",
        message: expect.stringContaining("not in trial 2 of the runner"),
      },
    ]);
    expect(Object.keys(smallestDetectableChange)).toEqual(["peakVerticalForce"]);
  });
  it("a metric of some contacts alone is left out", () => {
    const some = trialOf({ peakVerticalForce: strides(1650), brakingImpulse: strides(16).slice(0, 15) });
    expect(only([trialAt(1650), some]).notCompared).toMatchObject([
      { id: "brakingImpulse", code: "too-few-contacts" },
    ]);
  });
  it("no share of a mean that is near zero", () => {
    const near = [0.5, -0.4, 0.2].map((mean) => trialOf({ peakVerticalForce: strides(mean) }));
    const [metric] = reliability(near, { metrics: [metricById("peakVerticalForce")] }).metrics;
    expect(metric?.smallestDetectableChange.percent).toBeNull();
  });
});

it.each([
  ["too-short", () => only([trialAt(1)])],
  [
    "too-short",
    () =>
      only([
        { runner: "Ida", trials: [trialAt(1), trialAt(2)] },
        { runner: "Bo", trials: [trialAt(1)] },
      ]),
  ],
  [
    "unequal-lengths",
    () =>
      only([
        { runner: "Ida", trials: [trialAt(1), trialAt(2), trialAt(3)] },
        { runner: "Bo", trials: [trialAt(1), trialAt(2)] },
      ]),
  ],
  [
    "conflict",
    () =>
      only([
        { runner: "Ida", trials: [trialAt(1), trialAt(2)] },
        { runner: "Ida", trials: [trialAt(1), trialAt(2)] },
      ]),
  ],
  ["not-comparable", () => only([trialAt(1), trialAt(2, { settings: { filter: null } })])],
  ["not-comparable", () => only([trialAt(1), trialAt(2, { settings: { gait: "walking" } })])],
  ["wrong-type", () => only([])],
  ["wrong-type", () => only(null as unknown as Trial[])],
  ["wrong-type", () => only([trialAt(1), { runner: "Ida", trials: [] }] as unknown as Trial[])],
  ["wrong-type", () => only([{ runner: "Ida", trials: [1, 2] }] as unknown as RunnerTrials[])],
  ["out-of-range", () => reliability([trialAt(1), trialAt(2)], { level: 1 })],
  ["unknown-option", () => reliability([trialAt(1), trialAt(2)], { form: "ICC(2,1)" } as object)],
] as const)("refuses with %s, case %#", (code, call) =>
  expect(call).toThrow(expect.objectContaining({ code })),
);

it("names the runners and how many trials each has where they are not alike", () =>
  expect(() =>
    only([
      { runner: "Ida", trials: [trialAt(1), trialAt(2), trialAt(3)] },
      { runner: "Bo", trials: [trialAt(1), trialAt(2)] },
    ]),
  ).toThrow(/Ida has 3 trials and Bo 2/));

describe("2026-11-25: few trials, no variation, another mass", () => {
  const noisy = (seed: number, mean = 1650, parts: TrialParts = {}): Trial => {
    const random = seededRandom(seed);
    return trialOf(
      { peakVerticalForce: Array.from({ length: 40 }, () => mean + 40 * random.normal()) },
      parts,
    );
  };
  const peak = [metricById("peakVerticalForce")];
  const options = (repeats: readonly Trial[]) => ({
    metrics: peak,
    smallestDetectableChange: reliability(repeats, { metrics: peak }).smallestDetectableChange,
  });
  it("a change from 3 trials took the place of what strides ask for, and a caution went away", () => {
    const repeats = [noisy(1), noisy(2), noisy(3)];
    const given = options(repeats);
    expect(given.smallestDetectableChange.peakVerticalForce?.degreesOfFreedom).toBe(2);
    const without = compareTrials(noisy(4, 1650), noisy(5, 1674), { metrics: peak, similarMargin: 0 });
    const [alone] = without.metrics;
    const small = { peakVerticalForce: { value: 1, unit: "N", source: "3 trials", degreesOfFreedom: 2 } };
    const result = compareTrials(noisy(4, 1650), noisy(5, 1674), {
      metrics: peak,
      similarMargin: 0,
      smallestDetectableChange: small,
    });
    const [found] = result.metrics;
    expect(result.overall.toSettle?.[0]).toMatch(/further strides/);
    expect(result.overall.toSettle).toEqual(without.overall.toSettle);
    expect(found?.smallestDetectableChange.value).toBe(alone?.smallestDetectableChange.value);
    expect(found?.margin.value).toBe(alone?.margin.value);
    expect(found?.perKilometre?.smallestDetectableChange.value).toBe(
      alone?.perKilometre?.smallestDetectableChange.value,
    );
    expect(found?.smallestDetectableChange.source).toMatch(
      /, larger than what was given with 2 degrees of freedom \(3 trials\)$/,
    );
    const caution = result.cautions.find(({ code }) => code === "only-two-recordings");
    expect(caution?.message).toContain("rests on 2 degrees of freedom and may be far too small by chance");
    expect(caution?.message).toContain("0.8 of the standard deviation of strides, or more, stays in force");
  });
  it("a larger one from few trials counts, and one with 10 degrees of freedom stands alone", () => {
    const with_ = (value: number, degreesOfFreedom: number) =>
      compareTrials(noisy(4), noisy(5), {
        metrics: peak,
        smallestDetectableChange: {
          peakVerticalForce: { value, unit: "N", source: "trials", degreesOfFreedom },
        },
      });
    expect(with_(500, 2).metrics[0]?.smallestDetectableChange).toMatchObject({
      value: 500,
      source: expect.stringMatching(/^trials, with 2 degrees of freedom larger than /),
    });
    const enough = with_(1, 10);
    expect(enough.metrics[0]?.smallestDetectableChange).toEqual({ value: 1, source: "trials" });
    expect(enough.cautions.map(({ code }) => code)).not.toContain("only-two-recordings");
    expect(() => with_(1, 0)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
  it("identical trials gave a smallest detectable change of 0, and nobody said why", () => {
    const found = reliability([noisy(1), noisy(1), noisy(1)], { metrics: peak });
    expect(found.smallestDetectableChange).toEqual({});
    expect(found.cautions[0]).toMatchObject({
      code: "same-data",
      values: { same: 80, contacts: 80, pairs: 3 },
    });
    expect(found.cautions[0]?.message).toContain(
      "80 of 80 contacts have the very same numbers in trial 1 of the runner and trial 2 of the runner (and in 2 more such pairs)",
    );
  });
  it("trials of 70 and 72 kg gave no caution, those of 70 and 90 kg a change for one runner", () => {
    const of = (mass: number) => [noisy(1), noisy(2, 1650, { mass, massByForce: mass })];
    const codes = (mass: number) => reliability(of(mass), { metrics: peak }).cautions.map(({ code }) => code);
    expect(codes(72)).toContain("masses-differ");
    expect(codes(70.5)).not.toContain("masses-differ");
    expect(codes(77)).toContain("masses-differ");
    expect(() => codes(90)).toThrow(
      expect.objectContaining({
        code: "not-comparable",
        message: expect.stringContaining("70 kg in trial 1 of the runner and 90 kg in trial 2 of the runner"),
      }),
    );
  });
});
