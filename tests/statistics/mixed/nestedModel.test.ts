import { describe, expect, it } from "vitest";
import {
  analysisOfVariance,
  type NestedLayout,
  nestedModel,
  pairedTTest,
  seededRandom,
} from "../../../src/statistics/index.js";
import nlme from "../../fixtures/statistics/nested.json" with { type: "json" };

describe("R's nlme 3.1-162: runners, their conditions, trials", () => {
  it.each(nlme.cases)("$name", (known) => {
    const { runner, condition, trial, changed } = known;
    const found = nestedModel(known.values, { effects: { changed }, levels: { runner, condition, trial } });
    found.effects.forEach(({ estimate, standardError }, k) => {
      expect(estimate).toBeCloseTo(known.effects[k] ?? Number.NaN, 5);
      expect(standardError / (known.errors[k] ?? Number.NaN)).toBeCloseTo(1, 5);
    });
    ["runner", "condition", "trial", "residual"].forEach((name, k) => {
      expect(found.variances[name]).toBeCloseTo(known.variances[k] ?? Number.NaN, 5);
    });
    expect(found.logLikelihood).toBeCloseTo(known.logLikelihood, 6);
  });
});

/** Runners with a level, a change and noise of their own: two conditions of `each` values. */
function pairs(runners: number, each: number, seed: number) {
  const random = seededRandom(seed);
  const rows = Array.from({ length: runners }, (_, r) => {
    const [level, change] = [3 * random.normal(), 1 + 2 * random.normal()];
    return [0, 1].map((changed) =>
      Array.from({ length: each }, () => ({
        r,
        changed,
        y: 50 + level + changed * change + random.normal(),
      })),
    );
  });
  const all = rows.flat(2);
  const means = [0, 1].map((changed) =>
    rows.map((conditions) => (conditions[changed] ?? []).reduce((sum, { y }) => sum + y / each, 0)),
  );
  const layout: NestedLayout = {
    effects: { changed: all.map(({ changed }) => changed) },
    levels: { runner: all.map(({ r }) => r), condition: all.map(({ changed }) => changed) },
  };
  return { values: all.map(({ y }) => y), layout, before: means[0] ?? [], after: means[1] ?? [] };
}

it.each([1, 2, 3])("law: balanced pairs are the paired t test of the runners' means, seed %i", (seed) => {
  const { values, layout, before, after } = pairs(9, 4, seed);
  const t = pairedTTest(after, before);
  const effect = nestedModel(values, layout).effects[1];
  expect(effect?.estimate).toBeCloseTo(t.estimate, 9);
  expect(effect?.standardError).toBeCloseTo(t.standardError, 5);
  expect(effect?.degreesOfFreedom).toBeCloseTo(t.degreesOfFreedom, 3);
  expect(effect?.interval.low).toBeCloseTo(t.interval.low, 3);
});

it("law: one balanced level has the variances of the analysis of variance", () => {
  const random = seededRandom(6);
  const groups = Array.from({ length: 6 }, () => {
    const level = 2 * random.normal();
    return Array.from({ length: 5 }, () => level + random.normal());
  });
  const { between, within } = analysisOfVariance(groups);
  const found = nestedModel(groups.flat(), {
    levels: { runner: groups.flatMap((own, k) => own.map(() => k)) },
  });
  expect(found.variances.residual).toBeCloseTo(within.meanSquare, 5);
  expect(found.variances.runner).toBeCloseTo((between.meanSquare - within.meanSquare) / 5, 4);
  expect(found.groups).toEqual({ runner: 6 });
  expect(found.effects[0]?.degreesOfFreedom).toBeCloseTo(5, 3);
});

it("a level that varies by less than chance has a variance of 0", () => {
  const values = [1, 3, 2, 3, 1, 2, 2, 1, 3];
  const found = nestedModel(values, { levels: { runner: "AAABBBCCC" } });
  expect(found.variances.runner).toBe(0);
  expect(found.effects[0]).toMatchObject({ estimate: 2 });
  expect(found.effects[0]?.degreesOfFreedom).toBeCloseTo(8, 3);
});

it("property: moving and scaling the values moves and scales the effects; labels are but names", () => {
  const { values, layout } = pairs(6, 3, 8);
  const one = nestedModel(values, layout);
  const other = nestedModel(
    values.map((value) => 1000 + 10 * value),
    {
      ...layout,
      levels: {
        runner: Array.from(layout.levels.runner ?? [], (r) => `r${r}`),
        condition: layout.levels.condition ?? [],
      },
    },
  );
  expect(other.effects[0]?.estimate).toBeCloseTo(1000 + 10 * (one.effects[0]?.estimate ?? 0), 4);
  expect(other.effects[1]?.standardError).toBeCloseTo(10 * (one.effects[1]?.standardError ?? 0), 4);
  expect((other.variances.runner ?? 0) / (100 * (one.variances.runner ?? 1))).toBeCloseTo(1, 4);
});

describe("bad input", () => {
  const values = [1, 3, 2, 4, 6, 5, 7, 9];
  const runner = "AABBCCDD";
  it.each<[string, number[], NestedLayout, string]>([
    ["no level", values, { levels: {} }, "too-short"],
    ["too few values", [1, 2], { levels: { runner: "AB" } }, "too-short"],
    ["labels of another length", values, { levels: { runner: "AABB" } }, "unequal-lengths"],
    ["a column of another length", values, { effects: { x: [1] }, levels: { runner } }, "unequal-lengths"],
    [
      "a number that is none",
      values,
      { effects: { x: [1, 2, 3, 4, 5, 6, 7, Number.NaN] }, levels: { runner } },
      "not-finite",
    ],
    [
      "a constant column",
      values,
      { effects: { x: values.map(() => 1) }, levels: { runner } },
      "out-of-range",
    ],
    ["a single group", values, { levels: { runner: "AAAAAAAA" } }, "out-of-range"],
    ["groups of one", values, { levels: { runner: "ABCDEFGH" } }, "out-of-range"],
    ["a level that splits nothing", values, { levels: { runner, again: runner } }, "out-of-range"],
    [
      "five levels",
      values,
      { levels: { a: runner, b: runner, c: runner, d: runner, e: runner } },
      "out-of-range",
    ],
    ["values that leave nothing over", [1, 1, 2, 2, 3, 3, 4, 4], { levels: { runner } }, "out-of-range"],
  ])("refuses %s", (_, given, layout, code) =>
    expect(() => nestedModel(given, layout)).toThrow(expect.objectContaining({ code })),
  );
  it("refuses a level of 1", () =>
    expect(() => nestedModel(values, { levels: { runner } }, { level: 1 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ));
});
