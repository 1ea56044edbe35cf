import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  FIELD_PERMUTATION_DEFAULTS,
  FIELD_T_TEST_DEFAULTS,
  fieldPermutation,
  fieldSmoothness,
  fieldThreshold,
  fieldTTest,
  seededRandom,
} from "../../../src/statistics/index.js";
import published from "../../fixtures/statistics/fieldExamples.json" with { type: "json" };
import fixture from "../../fixtures/statistics/fields.json" with { type: "json" };

const near = (values: ArrayLike<number>, expected: readonly number[], digits = 10) => {
  expect(values.length).toBe(expected.length);
  for (const [q, value] of expected.entries()) expect(values[q]).toBeCloseTo(value, digits);
};

describe("NumPy 2.4.6, ten curves smoothed to 12 points", () => {
  const { data, tCurve, fwhmEstimate, criticalTwoTailed } = published.fieldTest;
  const test = fieldTTest(data, null);
  it("t along the curve", () => near(test.statistic, tCurve));
  it("smoothness 12.06", () => {
    expect(test.fullWidthAtHalfMaximum).toBeCloseTo(fwhmEstimate, 9);
    const mean =
      data[0]?.map((_, q) => data.reduce((sum, curve) => sum + (curve[q] as number), 0) / 10) ?? [];
    const residuals = data.map((curve) => curve.map((value, q) => value - (mean[q] as number)));
    expect(fieldSmoothness(residuals)).toBeCloseTo(fwhmEstimate, 9);
  });
  it("threshold", () =>
    expect(
      fieldThreshold({
        kind: "t",
        degreesOfFreedom: test.degreesOfFreedom,
        nodes: 101,
        fullWidthAtHalfMaximum: test.fullWidthAtHalfMaximum,
      }).threshold,
    ).toBeCloseTo(criticalTwoTailed, 9));
});

describe("SciPy 1.17.1, two small sets", () => {
  const { first, second, again } = fixture;
  it("pooled t of two sets", () => {
    const test = fieldTTest(first, second);
    near(test.statistic, fixture.twoSample);
    expect([test.test, test.degreesOfFreedom, test.curves]).toEqual(["two-sample", 7, [5, 4]]);
  });
  it("Welch's t of two sets, and the first decile of its degrees of freedom", () => {
    const test = fieldTTest(first, second, { pooled: false });
    near(test.statistic, fixture.welch.statistic);
    expect(test.degreesOfFreedom).toBeCloseTo(fixture.welch.lowDegreesOfFreedom, 9);
  });
  it("t of pairs", () => {
    const test = fieldTTest(first, again, { paired: true });
    near(test.statistic, fixture.paired);
    expect([test.test, test.degreesOfFreedom]).toEqual(["paired", 4]);
  });
  it("the largest t of all 126 permutations of two sets", () => {
    const { threshold, p, permutations, exact } = fieldPermutation(first, second);
    const seen = Math.max(...fixture.twoSample.map(Math.abs));
    expect([permutations, exact]).toEqual([126, true]);
    // Six of 126 may exceed it.
    expect(threshold).toBeCloseTo(fixture.dealt[119] as number, 9);
    expect(p).toBeCloseTo(fixture.dealt.filter((t) => t >= seen - 1e-9).length / 126, 12);
  });
  it("the largest t of all 32 signs of pairs; the two that are alike are too many for 0.05", () => {
    const at = (level: number) => fieldPermutation(first, again, { paired: true, level });
    const seen = Math.max(...fixture.paired.map(Math.abs));
    expect(at(0.1).threshold).toBeCloseTo(fixture.flipped[28] as number, 9);
    expect(at(0.1).p).toBeCloseTo(fixture.flipped.filter((t) => t >= seen - 1e-9).length / 32, 12);
    expect(at(0.05).threshold).toBeNull();
  });
  it("many random permutations come near all of them", () => {
    const wide = [...first.slice(0, 2), ...second.slice(0, 2)].map((curve, k) =>
      curve.map((value, q) => value + Math.sin(k * q)),
    );
    const all = fieldPermutation([...first, ...wide], [...second, ...wide], { permutations: 1e6 });
    const some = fieldPermutation([...first, ...wide], [...second, ...wide], {
      permutations: 20000,
      seed: 5,
    });
    expect([all.exact, some.exact]).toEqual([true, false]);
    expect(Math.abs((some.threshold as number) / (all.threshold as number) - 1)).toBeLessThan(0.02);
  });
});

/** Two sets of six to nine curves, uneven and unlike each other. */
const sets = fc
  .record({ seed: fc.integer({ min: 0, max: 1e6 }), points: fc.integer({ min: 3, max: 12 }) })
  .map(({ seed, points }) => {
    const random = seededRandom(seed);
    const set = () =>
      Array.from({ length: 6 + Math.floor(4 * random.uniform()) }, () =>
        Array.from({ length: points }, (_, q) => (1 + q) * random.normal() + 3 * Math.sin(q)),
      );
    return [set(), set()] as const;
  });

describe.each([{ correlated: false }, { correlated: true }])("properties, %o", (options) => {
  it("swapping sets turns t round and leaves both thresholds", () =>
    fc.assert(
      fc.property(sets, ([first, second]) => {
        const [one, other] = [fieldTTest(first, second, options), fieldTTest(second, first, options)];
        near(
          one.statistic,
          Array.from(other.statistic, (t) => -t),
          8,
        );
        expect(one.fullWidthAtHalfMaximum).toBeCloseTo(other.fullWidthAtHalfMaximum, 8);
        const more = { ...options, permutations: 60 };
        const thresholds = [fieldPermutation(first, second, more), fieldPermutation(second, first, more)];
        expect(thresholds[0]?.threshold).toBeCloseTo(thresholds[1]?.threshold as number, 7);
      }),
      { numRuns: 60 },
    ));
  it("scaling leaves t", () =>
    fc.assert(
      fc.property(sets, fc.double({ min: 0.01, max: 1000, noNaN: true }), ([first, second], k) => {
        const scaled = (list: readonly (readonly number[])[]) => list.map((curve) => curve.map((v) => k * v));
        const [one, other] = [
          fieldTTest(first, second, options),
          fieldTTest(scaled(first), scaled(second), options),
        ];
        near(one.statistic, Array.from(other.statistic), 6);
      }),
      { numRuns: 60 },
    ));
});

it("curves that resemble the one before count as fewer: 40 of an alternating pair of levels held for ten each", () => {
  const held = Array.from({ length: 40 }, (_, k) =>
    [0, 1, 2, 3].map((q) => (Math.floor(k / 10) % 2) + 0.01 * Math.sin(3 * k + q)),
  );
  const free = fieldTTest(
    held,
    held.map((curve) => curve.map((value) => value + 1)),
  );
  const bound = fieldTTest(
    held,
    held.map((curve) => curve.map((value) => value + 1)),
    { correlated: true },
  );
  expect(free.effectiveShare[0]).toBe(1);
  expect(bound.effectiveShare[0]).toBeLessThan(0.15);
  expect(bound.degreesOfFreedom).toBeLessThan(0.15 * 80);
  expect(Math.abs(bound.statistic[0] as number)).toBeLessThan(0.4 * Math.abs(free.statistic[0] as number));
});

it("forms no statistic where curves hardly spread, and finds no smoothness there", () => {
  const set = (shift: number) =>
    Array.from({ length: 8 }, (_, k) => [20 + 1e-12 * k + shift, 30 + Math.sin(k), 40 + 2 * Math.cos(k), 20]);
  const { statistic, formed } = fieldTTest(set(0), set(1e-9));
  expect(formed).toEqual([false, true, true, false]);
  expect(statistic[0]).toBe(0);
});

const some = [
  [1, 2, 3],
  [2, 3, 3],
  [3, 1, 2],
  [2, 2, 4],
  [1, 1, 1],
];
it.each([
  ["too-short", [[1, 2]], null, {}],
  ["too-short", some.slice(0, 4), some, { correlated: true }],
  [
    "unequal-lengths",
    [
      [1, 2],
      [1, 2, 3],
    ],
    null,
    {},
  ],
  [
    "unequal-lengths",
    some,
    [
      [1, 2],
      [2, 1],
    ],
    {},
  ],
  ["unequal-lengths", some, some.slice(1), { paired: true }],
  [
    "not-finite",
    [
      [1, Number.NaN],
      [2, 3],
    ],
    null,
    {},
  ],
  [
    "wrong-type",
    [
      ["1", 2],
      [2, 3],
    ],
    null,
    {},
  ],
  ["wrong-type", 7, null, {}],
  ["conflict", some, null, { paired: true }],
  [
    "out-of-range",
    [
      [1, 2],
      [1, 2],
      [1, 2],
    ],
    null,
    {},
  ],
  ["out-of-range", some, some, { paired: true }],
  ["out-of-range", some, null, { leastSpread: 1 }],
  ["unknown-option", some, null, { pair: true }],
])("refuses with %s", (code, first, second, options) =>
  expect(() => fieldTTest(first as never, second as never, options as object)).toThrow(
    expect.objectContaining({ code }),
  ),
);

it.each([
  { level: 0 },
  { level: 0.5 },
  { permutations: 5 },
  { permutations: 100.5 },
  { seed: -1 },
  { blockLength: 0 },
])("refuses the permutation %o", (options) =>
  expect(() =>
    fieldPermutation(
      some,
      some.map((c) => c.map((v) => v + 1)),
      options,
    ),
  ).toThrow(expect.objectContaining({ code: "out-of-range" })),
);
it("2026-11-25: blocks longer than a set took seconds, or for ever, to say nothing", () => {
  const others = some.map((curve) => curve.map((value) => value + 1));
  for (const blockLength of [6, 3e8, 1e308]) {
    expect(() => fieldPermutation(some, others, { blockLength })).toThrow(
      expect.objectContaining({ code: "out-of-range", message: expect.stringContaining("to 5") }),
    );
  }
  expect(fieldPermutation(some, others, { blockLength: 5 }).threshold).toBeNull();
});
it("2026-11-25: the smoothness of values whose squares are no numbers was NaN", () =>
  expect(() => fieldSmoothness([[1e308, -1e308, 1e308]])).toThrow(
    expect.objectContaining({ code: "not-finite" }),
  ));
it("refuses the smoothness of curves that are nought", () =>
  expect(() => fieldSmoothness([[0, 0, 0]])).toThrow(expect.objectContaining({ code: "out-of-range" })));

it("the options of a permutation begin as those of the test along the curve", () =>
  expect(FIELD_PERMUTATION_DEFAULTS).toMatchObject(FIELD_T_TEST_DEFAULTS));
