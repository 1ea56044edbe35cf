import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  COMPARE_RUNNERS_DEFAULTS,
  COMPARE_TRIALS_DEFAULTS,
  compareRunners,
  type PairedRunner,
} from "../../../src/compare/index.js";
import { readRunners, writeJson } from "../../../src/exchange/index.js";
import { CATALOGUE } from "../../../src/metrics/index.js";
import {
  mean,
  pairedTTest,
  randomEffectsMean,
  seededRandom,
  standardDeviation,
} from "../../../src/statistics/index.js";
import { bodyWeights, compare, drawnBy, found, LESS, metrics, primaries } from "./drawn.js";

// Own draws in each file: what another file draws before must not move these.
const drawn = drawnBy(seededRandom(12));

it("levels, margin and tolerance are those of a comparison of two trials", () => {
  const { shownLevel, readingLevel, similarMargin, speedTolerance } = COMPARE_TRIALS_DEFAULTS;
  expect(COMPARE_RUNNERS_DEFAULTS).toMatchObject({
    shownLevel,
    readingLevel,
    similarMargin,
    speedTolerance,
  });
});

describe("pairs", () => {
  const runners = drawn({ runners: 12, factors: LESS });
  const result = compare(runners);
  const vertical = found(result);
  it("is in body weights, and Student's paired interval where runners differ more than strides tell", () => {
    const before = runners.map(({ baseline }) => bodyWeights(baseline));
    const after = runners.map(({ changed }) => bodyWeights(changed));
    const t = pairedTTest(after, before, { level: 0.95 });
    expect(vertical.unit).toBe("BW");
    expect(vertical.degreesOfFreedom).toBe(11);
    // Weights by strides move it little: they are nearly equal.
    expect(vertical.difference).toBeCloseTo(t.estimate, 3);
    expect(vertical.changed.mean - vertical.baseline.mean).toBeCloseTo(vertical.difference, 12);
    expect((vertical.interval.high - vertical.interval.low) / (t.interval.high - t.interval.low)).toBeCloseTo(
      1,
      1,
    );
    expect(vertical.baseline.sd).toBeCloseTo(standardDeviation(before), 12);
  });
  it("reads the vertical force lower, says how many runners moved the other way, and gives every runner's own difference", () => {
    expect(result.components[0]).toMatchObject({ reading: "lower", perKilometre: "lower" });
    expect(result.overall.lower).toEqual(["vertical"]);
    expect(vertical.runners.map(({ runner }) => runner)).toEqual(runners.map(({ runner }) => runner));
    const other = vertical.runners.filter(({ difference }) => difference > 0).length;
    expect(result.overall.sentence).toContain(
      other === 0
        ? "In the vertical force of 12 runners none moved the other way."
        : `In the vertical force of 12 runners ${other} moved the other way (higher).`,
    );
    expect(result.overall.sentence).toContain("the average runner");
    expect(result.overall.sentence).toContain("Matijevich et al. 2019");
    for (const { difference, interval } of vertical.runners) {
      expect(interval?.low ?? 1).toBeLessThan(difference);
      expect(interval?.high ?? -1).toBeGreaterThan(difference);
    }
  });
  it("counts runners that moved the other way", () => {
    const odd = [
      ...drawn({ runners: 11, factors: { peakVerticalForce: 0.8 } }),
      ...drawn({ runners: 1, factors: { peakVerticalForce: 1.03 } }),
    ].map((one, k) => ({ ...one, runner: `r${k}` }));
    const { components } = compare(odd);
    expect(components[0]?.reading).toBe("lower");
    expect(components[0]?.sentence).toContain("of 12 runners 1 moved the other way (higher)");
  });
  it("the variance between runners is that of the restricted likelihood of their changes", () => {
    const [changes, variances] = [0, 1].map((which) =>
      vertical.runners.map(({ difference, interval }) =>
        which === 0 ? difference : (((interval?.high ?? 0) - difference) / 2) ** 2,
      ),
    ) as [number[], number[]];
    const { betweenVariance } = randomEffectsMean(changes, variances);
    expect(vertical.betweenRunners).toBeCloseTo(Math.sqrt(betweenVariance), 2);
  });
  it("is plain JSON that reads back", () => {
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    expect(readRunners(writeJson(result)).schema).toBe("gait-kinetics/runners/1");
  });
  it("effect size: the mean change over the mean standard deviation of both conditions", () => {
    const [before, after] = [
      runners.map((r) => bodyWeights(r.baseline)),
      runners.map((r) => bodyWeights(r.changed)),
    ];
    const dav = (mean(after) - mean(before)) / ((standardDeviation(before) + standardDeviation(after)) / 2);
    expect(vertical.effectSize).toBeCloseTo(dav, 9);
  });
  it("property: swapping conditions mirrors, whatever the order of runners", () =>
    fc.assert(
      fc.property(fc.shuffledSubarray(runners, { minLength: 6 }), (some) => {
        const there = found(compare(some, { metrics: primaries }));
        const back = found(
          compare(
            some.map(({ runner, baseline, changed }) => ({ runner, baseline: changed, changed: baseline })),
            { metrics: primaries },
          ),
        );
        expect(back.difference).toBeCloseTo(-there.difference, 9);
        expect(back.readingInterval.low).toBeCloseTo(-there.readingInterval.high, 9);
      }),
      { numRuns: 10 },
    ));
});

describe("what a reading needs", () => {
  it("six runners, unless another number is asked for", () => {
    const five = drawn({ runners: 5, factors: { peakVerticalForce: 0.8 } });
    const { overall, components } = compare(five);
    expect(overall.reading).toBe("unsettled");
    expect(components[0]?.sentence).toContain("too few runners");
    expect(overall.toSettle).toContain("at least 6 runners: 1 more");
    expect(compare(five, { minimumRunners: 5 }).components[0]?.reading).toBe("lower");
  });
  it("`similar` where the interval lies within the margin, 10 % or a given one, and `reduced` needs that of all", () => {
    const runners = drawn({ runners: 20, change: 0, factors: LESS });
    const { overall, components } = compare(runners);
    expect(components.map(({ reading }) => reading)).toEqual(["lower", "similar", "similar"]);
    expect(overall.reading).toBe("reduced");
    expect(overall.sentence).toMatch(
      /^Reduced: the vertical force is lower \(-\d\.\d %\), and the anteroposterior/,
    );
    const tight = compare(runners, {
      margins: {
        brakingImpulse: { value: 0.1, unit: "%", source: "a plan" },
        mediolateralImpulse: { value: 1e-6, unit: "BW s", source: "a plan" },
      },
    });
    expect(tight.overall).toMatchObject({
      reading: "unsettled",
      unsettled: ["anteroposterior", "mediolateral"],
    });
    expect(tight.overall.toSettle?.join()).toMatch(/about \d+ more runners? for|a larger change for/);
    expect(found(tight, "brakingImpulse").margin.source).toBe("a plan");
  });
  it("shifted: one lower, another higher", () => {
    const { overall } = compare(drawn({ runners: 12, factors: { ...LESS, brakingImpulse: 1.2 } }));
    expect(overall).toMatchObject({ reading: "shifted", lower: ["vertical"], higher: ["anteroposterior"] });
    expect(overall.sentence).toMatch(/^Shifted, not reduced: the vertical force is lower/);
  });
  it("raised, and no clear change", () => {
    expect(compare(drawn({ runners: 12, factors: { brakingImpulse: 1.2 } })).overall.reading).toBe("raised");
    expect(compare(drawn({ runners: 12, change: 0 })).overall.reading).toBe("no clear change");
  });
  it("lower per step with more steps a kilometre is not reduced", () => {
    const more = drawn({ runners: 12, change: 0, factors: LESS }).map((one) => ({
      ...one,
      changed: one.changed.map((trial) => ({
        ...trial,
        steps: trial.steps.map((row) => ({ ...row, values: { ...row.values, stepTime: 0.31 } })),
      })),
    }));
    const { overall, components } = compare(more);
    expect(components[0]?.reading).toBe("lower");
    expect(components[0]?.perKilometre).toBe("higher");
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain("Per kilometre, where the number of steps counts too");
  });
  it("speeds that differ on average leave it unsettled; one runner's are said", () => {
    const all = drawn({
      runners: 8,
      parts: (_, condition) => ({ speed: condition === "changed" ? 3.2 : 3 }),
    });
    expect(compare(all).overall).toMatchObject({ reading: "unsettled" });
    const one = drawn({
      runners: 12,
      factors: LESS,
      parts: (k, condition) => ({ speed: k === 2 && condition === "changed" ? 3.1 : 3 }),
    });
    const result = compare(one);
    expect(result.overall.lower).toEqual(["vertical"]);
    expect(result.cautions.find(({ code }) => code === "speeds-differ")).toMatchObject({
      message: "the conditions of 1 of 12 runners differ in speed beside the technique",
      where: "runner 3",
    });
    expect(result.overall.sentence).toContain("differ in speed");
  });
  it("one foot alone in a runner's trial leaves it unsettled and names the runner", () => {
    const runners = drawn({
      runners: 8,
      parts: (k) => (k === 1 ? { cautions: [{ code: "one-foot", message: "one foot" }] } : {}),
    });
    const { overall } = compare(runners);
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain("trials of runner 2 cannot be read (one foot alone)");
  });
});

describe("units, and what some runners lack", () => {
  it("without a mass of all, the metric's own unit, with a caution", () => {
    const runners = drawn({ parts: (k) => (k === 0 ? { mass: null } : {}) });
    const result = compare(runners);
    expect(found(result).unit).toBe("N");
    expect(result.cautions.map(({ code }) => code)).toContain("not-normalised");
    expect(() =>
      compare(runners, { margins: { peakVerticalForce: { value: 0.1, unit: "BW", source: "a plan" } } }),
    ).toThrow(expect.objectContaining({ code: "unit-mismatch" }));
  });
  it("a runner without the metric is left out of it and named", () => {
    const runners = drawn({ runners: 8 });
    const lacking = runners.map((one, k) =>
      k === 3
        ? {
            ...one,
            changed: one.changed.map((trial) => ({
              ...trial,
              steps: trial.steps.map((row) => ({ ...row, values: { ...row.values, brakingImpulse: null } })),
            })),
          }
        : one,
    );
    const result = compare(lacking);
    expect(found(result, "brakingImpulse").baseline.runners).toBe(7);
    expect(result.cautions.find(({ code }) => code === "runners-left-out")?.message).toContain("runner 4");
    expect(found(result).baseline.runners).toBe(8);
  });
  it("a metric that nobody has, and one of a single runner", () => {
    const runners = drawn();
    const none = compareRunners(runners, { metrics: CATALOGUE });
    expect(none.notCompared.find(({ id }) => id === "impactPeak")?.code).toBe("not-in-both");
    const [one, ...rest] = runners;
    const single = compare([
      one as PairedRunner,
      ...rest.map((other) => ({
        ...other,
        baseline: other.baseline.map((trial) => ({
          ...trial,
          steps: trial.steps.map((row) => ({ ...row, values: { ...row.values, brakingImpulse: null } })),
        })),
      })),
    ]);
    expect(single.notCompared.find(({ id }) => id === "brakingImpulse")?.code).toBe("too-few-runners");
    expect(single.components[1]).toMatchObject({ metric: null, reading: null });
  });
  it("without speeds nothing is known per kilometre, and nothing is reduced", () => {
    const { overall } = compare(
      drawn({ runners: 20, change: 0, factors: LESS, parts: () => ({ speed: null }) }),
    );
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain("Per kilometre nothing is known");
    expect(overall.toSettle).toContain("speed and step time of every trial, for loads per kilometre");
  });
});

describe("several trials a runner", () => {
  it("gives the standard deviation from trial to trial, which is near the true one", () => {
    const sd = [0, 1, 2, 3].map(
      () => found(compare(drawn({ runners: 12, trials: 3, trialSpread: 1 }))).betweenTrials,
    );
    // True: one standard deviation of strides, 40 N, of 70 kg.
    expect(mean(sd.map((value) => value ?? 0)) * 70 * 9.80665).toBeGreaterThan(34);
    expect(mean(sd.map((value) => value ?? 0)) * 70 * 9.80665).toBeLessThan(46);
  });
  it("is not known with one trial each", () => expect(found(compare(drawn())).betweenTrials).toBeNull());
  it("numbers of trials may differ between runners", () => {
    const runners = drawn({ runners: 8, trials: 2 }).map((one, k) =>
      k % 2 === 0 ? { ...one, baseline: one.baseline.slice(0, 1) } : one,
    );
    expect(found(compare(runners)).baseline.runners).toBe(8);
  });
});

describe("bad input", () => {
  const [ida, jo] = drawn({ runners: 2 }) as unknown as [PairedRunner, PairedRunner];
  it.each([
    ["no list", "x", "wrong-type"],
    ["no name", [{ ...ida, runner: "" }], "wrong-type"],
    ["no trial", [{ ...ida, changed: "x" }], "wrong-type"],
    ["an empty list of trials", [{ ...ida, changed: [] }], "too-short"],
    ["a name twice", [ida, { ...jo, runner: ida.runner }], "conflict"],
    ["a trial twice", [ida, { ...jo, changed: ida.changed }], "conflict"],
    ["groups without one", { baseline: [] }, "wrong-type"],
    [
      "different filters",
      [
        ida,
        ...drawn({ runners: 1, parts: () => ({ settings: { filter: null } }) }).map((one) => ({
          ...one,
          runner: "Mo",
        })),
      ],
      "not-comparable",
    ],
  ])("refuses %s", (_, runners, code) =>
    expect(() => compareRunners(runners as PairedRunner[])).toThrow(expect.objectContaining({ code })),
  );
  it.each([{ minimumRunners: 1 }, { readingLevel: 1 }, { similarMargin: -1 }])("refuses %o", (options) =>
    expect(() => compareRunners([ida, jo], options)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );
  it("no runner at all is no comparison", () => {
    const { overall, metrics: none } = compareRunners([], { metrics });
    expect(none).toEqual([]);
    expect(overall.reading).toBe("unsettled");
  });
});
