import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockSeries, studentisedRatios } from "../../src/statistics/bootstrapBlocks.js";
import {
  bootstrapDifference,
  differenceInterval,
  quantile,
  seededRandom,
  standardDeviation,
} from "../../src/statistics/index.js";
import numpy from "../fixtures/statistics/bootstrap.json" with { type: "json" }; // bootstrap.py, NumPy 2.4.6

describe.each(numpy.cases)("NumPy with given block starts: blocks of $blockLength", (given) => {
  const one = blockSeries(given.first, given.blockLength);
  const other = blockSeries(given.second, given.blockLength);
  it("standard error from the means of all circular blocks", () =>
    expect(Math.hypot(one.standardError, other.standardError) / given.standardError).toBeCloseTo(1, 12));
  it("quantiles of the studentised differences, and the interval from them", () => {
    let next = 0;
    const ratios = studentisedRatios(one, other, given.resamples, () => given.uniforms[next++] as number);
    expect(next).toBe(given.uniforms.length);
    const low = quantile(ratios, (1 - given.level) / 2);
    const high = quantile(ratios, (1 + given.level) / 2);
    expect(low).toBeCloseTo(given.ratios[0] as number, 10);
    expect(high).toBeCloseTo(given.ratios[1] as number, 10);
    expect(given.difference - high * given.standardError).toBeCloseTo(given.interval[0] as number, 10);
    expect(given.difference - low * given.standardError).toBeCloseTo(given.interval[1] as number, 10);
  });
  it("the function makes of its own starts what these make of theirs", () => {
    const { resamples: _, ...same } = given;
    const found = bootstrapDifference(given.first, given.second, {
      level: same.level,
      blockLength: same.blockLength,
      resamples: 500,
      seed: 9,
    });
    const ratios = studentisedRatios(one, other, 500, seededRandom(9).uniform);
    expect(found.difference).toBeCloseTo(given.difference, 12);
    expect(found.interval?.low).toBeCloseTo(
      given.difference - quantile(ratios, (1 + same.level) / 2) * given.standardError,
      10,
    );
    expect(found.interval?.high).toBeCloseTo(
      given.difference - quantile(ratios, (1 - same.level) / 2) * given.standardError,
      10,
    );
  });
});

it("by hand: blocks of one give s/√n, the textbook standard error", () => {
  const values = [4, 6, 5, 9, 1, 7];
  expect(blockSeries(values, 1).standardError).toBeCloseTo(standardDeviation(values) / Math.sqrt(6), 12);
});

it("published formula by hand: r 0.5 of 64 values is twice (√6 0.5/0.75)^⅔ 4, rounded up", () => {
  // r₁ is taken free of its bias, so that the series must give (n r₁ + 1)/(n − 4) = 0.5: r₁ = 29/64.
  const n = 64;
  const random = seededRandom(4);
  const noise = Array.from({ length: n }, () => random.normal());
  const wave = Array.from({ length: n }, (_, i) => Math.sin(i / 6));
  const mixed = (share: number) => noise.map((x, i) => (1 - share) * x + share * (wave[i] as number));
  const r1 = (x: readonly number[]) => {
    const m = x.reduce((sum, value) => sum + value / n, 0);
    const c = x.map((value) => value - m);
    return (
      c.slice(1).reduce((sum, value, i) => sum + value * (c[i] as number), 0) /
      c.reduce((sum, value) => sum + value * value, 0)
    );
  };
  let [low, high] = [0, 1];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (r1(mixed(middle)) < 29 / 64) low = middle;
    else high = middle;
  }
  const { blockLength } = bootstrapDifference(mixed(low), mixed(low));
  expect(blockLength).toBe(Math.ceil(2 * ((Math.sqrt(6) * 0.5) / 0.75) ** (2 / 3) * 4));
});

it("coverage by simulation, seeded: of pairs without a difference about one in a hundred leaves the 99 % interval", () => {
  const random = seededRandom(31);
  const series = (n: number, r: number) => {
    let x = random.normal();
    return Array.from({ length: n }, () => {
      const here = x;
      x = r * x + Math.sqrt(1 - r * r) * random.normal();
      return here;
    });
  };
  for (const [n, r] of [
    [20, 0],
    [40, 0.3],
    [80, 0.6],
  ] as const) {
    let left = 0;
    for (let pair = 0; pair < 400; pair++) {
      const { interval } = bootstrapDifference(series(n, r), series(n, r), { level: 0.99, resamples: 400 });
      if (interval !== null && (interval.low > 0 || interval.high < 0)) left++;
    }
    // 1 % and three standard errors of 400 pairs: 2.5 %.
    expect(left, `${n} values, r ${r}`).toBeLessThanOrEqual(10);
  }
});

it("agrees with Student's t on 200 normal values to a few per cent of the width", () => {
  const random = seededRandom(12);
  const normal = () => Array.from({ length: 200 }, () => random.normal());
  const [a, b] = [normal(), normal()];
  const student = differenceInterval(a, b, 0.95).interval;
  const { interval } = bootstrapDifference(a, b, { blockLength: 1, resamples: 20_000 });
  const width = (student?.high ?? 0) - (student?.low ?? 0);
  expect(Math.abs((interval?.low ?? 0) - (student?.low ?? 0)) / width).toBeLessThan(0.05);
  expect(Math.abs((interval?.high ?? 0) - (student?.high ?? 0)) / width).toBeLessThan(0.05);
});

it("property: shifts with the values, scales with them, and the same seed gives the same interval", () =>
  fc.assert(
    fc.property(
      fc.tuple(fc.nat(4294967295), fc.integer({ min: 8, max: 20 }), fc.integer({ min: 8, max: 20 })),
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.integer({ min: -3, max: 3 }),
      ([seed, n1, n2], shift, power) => {
        const random = seededRandom(seed);
        const one = Array.from({ length: n1 }, () => random.normal());
        const other = Array.from({ length: n2 }, () => random.normal());
        const options = { resamples: 200, blockLength: 2 };
        const found = bootstrapDifference(one, other, options);
        const factor = 2 ** power;
        const moved = bootstrapDifference(
          one.map((x) => factor * (x + shift)),
          other.map((x) => factor * x),
          options,
        );
        expect(bootstrapDifference(one, other, options)).toEqual(found);
        expect((moved.interval?.low ?? Number.NaN) / factor).toBeCloseTo(
          (found.interval?.low ?? 0) + shift,
          6,
        );
        expect((moved.interval?.high ?? Number.NaN) / factor).toBeCloseTo(
          (found.interval?.high ?? 0) + shift,
          6,
        );
      },
    ),
    { numRuns: 100 },
  ));

it("no spread at all: an interval of no width", () =>
  expect(bootstrapDifference([3, 3, 3, 3, 3], [1, 1, 1, 1])).toMatchObject({
    difference: 2,
    interval: { low: 2, high: 2, level: 0.95 },
  }));

it("a single value that spreads: resamples without it have no spread of their own, and there is no interval", () =>
  expect(bootstrapDifference([0, 0, 0, 5], [0, 0, 0, 0], { level: 0.99 }).interval).toBeNull());

it("5000 strides, four metrics, 2000 resamples: well under a second", () => {
  const random = seededRandom(5);
  const series = () => Array.from({ length: 5000 }, () => random.normal());
  const [a, b] = [series(), series()];
  const start = performance.now();
  for (let metric = 0; metric < 4; metric++) bootstrapDifference(a, b, { blockLength: 8, seed: metric });
  // 0.05 to 0.1 s here; ten times that leaves room for a loaded machine.
  expect(performance.now() - start).toBeLessThan(1000);
});

it.each([
  [{ level: 1 }, "out-of-range"],
  [{ resamples: 99 }, "out-of-range"],
  [{ resamples: 200.5 }, "out-of-range"],
  [{ seed: -1 }, "out-of-range"],
  [{ blockLength: 0 }, "out-of-range"],
  [{ blockLength: 3 }, "out-of-range"],
  [{ blockLength: Number.NaN }, "not-finite"],
  [{ blocks: 3 }, "unknown-option"],
])("refuses %o: %s", (options, code) =>
  expect(() =>
    bootstrapDifference([1, 2, 3, 4, 5, 6, 7, 8], [1, 2, 3, 4, 5, 6, 7, 8], options as object),
  ).toThrow(expect.objectContaining({ code })),
);

it.each([
  [[1, 2, 3], "too-short"],
  [[1, 2, 3, Number.NaN], "not-finite"],
  ["1234", "wrong-type"],
])("refuses the values %o: %s", (values, code) =>
  expect(() => bootstrapDifference(values as number[], [1, 2, 3, 4])).toThrow(
    expect.objectContaining({ code }),
  ),
);
