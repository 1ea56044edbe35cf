import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  abcInterval,
  blockBootstrap,
  bootstrapInterval,
  bootstrapReplicates,
  jackknife,
  mean,
  median,
  normalQuantile,
  quantile,
  resampleIndices,
  seededRandom,
  standardDeviation,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

const meanOf = (values: readonly number[]) => mean(values);

describe("NumPy 2.4.6 and SciPy 1.17.1, given resamples", () => {
  const {
    data,
    indices,
    replicates,
    jackknife: left,
    bca,
    percentile,
    largeSampleBca50000,
  } = scipy.bootstrapBca;
  it("replicates and percentile interval", () => {
    expect(bootstrapReplicates(data, meanOf, { indices })).toEqual(
      replicates.map((value) => expect.closeTo(value, 12)),
    );
    const { interval, resamples, seed } = bootstrapInterval(data, meanOf, { kind: "percentile", indices });
    expect(interval?.low).toBeCloseTo(percentile[0] as number, 12);
    expect(interval?.high).toBeCloseTo(percentile[1] as number, 12);
    expect([resamples, seed]).toEqual([200, null]);
  });
  it("jackknife, bias correction, acceleration and BCa interval", () => {
    expect(jackknife(data, meanOf).values).toEqual(left.map((value) => expect.closeTo(value, 12)));
    const { interval, correction } = bootstrapInterval(data, meanOf, { kind: "bca", indices });
    expect(correction?.bias).toBeCloseTo(bca.z0, 12);
    expect(correction?.acceleration).toBeCloseTo(bca.acceleration, 12);
    expect(interval?.low).toBeCloseTo(bca.interval[0] as number, 11);
    expect(interval?.high).toBeCloseTo(bca.interval[1] as number, 11);
  });
  it("SciPy's own BCa of 50 000 resamples: 20 000 of ours are within 3 % of its width", () => {
    const { interval } = bootstrapInterval(data, meanOf, { resamples: 20000, seed: 3 });
    const [low, high] = largeSampleBca50000 as [number, number];
    expect(Math.abs((interval?.low as number) - low)).toBeLessThan(0.03 * (high - low));
    expect(Math.abs((interval?.high as number) - high)).toBeLessThan(0.03 * (high - low));
  });
  it("difference of two means: replicates of both sides and their percentile interval", () => {
    const { a, b } = scipy.twoSample;
    const { indicesA, indicesB, replicates: printed, percentile95, theta } = scipy.bootstrapDifference;
    const first = bootstrapReplicates(a, meanOf, { indices: indicesA });
    const second = bootstrapReplicates(b, meanOf, { indices: indicesB });
    const differences = first.map((value, i) => value - (second[i] as number));
    expect(differences).toEqual(printed.map((value) => expect.closeTo(value, 13)));
    expect(quantile(differences, 0.025)).toBeCloseTo(percentile95[0] as number, 13);
    expect(quantile(differences, 0.975)).toBeCloseTo(percentile95[1] as number, 13);
    expect(mean(a) - mean(b)).toBeCloseTo(theta, 13);
  });
  it("moving blocks with given starts: the first 50 means, and the naive standard error", () => {
    const { series, blockLength, starts, replicates: printed, naiveSE } = scipy.blockBootstrap;
    const found = blockBootstrap(series, { blockLength, starts });
    expect(found.replicates).toEqual(printed.map((value) => expect.closeTo(value, 10)));
    expect(found.independentStandardError).toBeCloseTo(naiveSE, 12);
  });
  it("own blocks: the standard error of NumPy's 400 resamples within 8 %, twice the naive one", () => {
    const { series, blockLength, blockSE400, naiveSE } = scipy.blockBootstrap;
    const { standardError } = blockBootstrap(series, { blockLength, seed: 2 });
    expect(Math.abs(standardError / blockSE400 - 1)).toBeLessThan(0.08);
    expect(standardError / naiveSE).toBeGreaterThan(1.8);
  });
});

/** Pearson's correlation of pairs. */
function correlation(pairs: readonly (readonly [number, number])[]): number {
  const x = pairs.map(([a]) => a);
  const y = pairs.map(([, b]) => b);
  const [mx, my] = [mean(x), mean(y)];
  const sum = (f: (i: number) => number) => x.reduce((total, _, i) => total + f(i), 0);
  const dx = (i: number) => (x[i] as number) - mx;
  const dy = (i: number) => (y[i] as number) - my;
  return sum((i) => dx(i) * dy(i)) / Math.sqrt(sum((i) => dx(i) ** 2) * sum((i) => dy(i) ** 2));
}

describe("Efron & Tibshirani 1993, Table 3.1, fifteen law schools", () => {
  const { inputs, expected, tolerance, recomputed } = worked["bootstrap.law"];
  const pairs = inputs.lsat.map((score, i) => [score, inputs.gpa[i] as number] as const);
  it("correlation 0.776; jackknife standard error, bias and acceleration, same formula", () => {
    const found = jackknife(pairs, correlation);
    expect(Math.abs(found.estimate - expected.correlation)).toBeLessThan(tolerance.correlation);
    expect(found.standardError).toBeCloseTo(recomputed.jackknifeSe, 12);
    expect(found.bias).toBeCloseTo(recomputed.jackknifeBias, 12);
    expect(found.acceleration).toBeCloseTo(recomputed.acceleration, 12);
  });
  it("normal 0.52 to 1.05, percentile 0.45 to 0.96; BCa of 400 000 replicates within 0.02", () => {
    const of = (kind: "normal" | "percentile" | "bca") =>
      bootstrapInterval(pairs, correlation, { kind, resamples: 20000, seed: 11 });
    for (const [kind, printed, allowed] of [
      ["normal", expected.normalInterval, tolerance.normalInterval],
      ["percentile", expected.percentileInterval, tolerance.percentileInterval],
      ["bca", recomputed.bca95, 0.02],
    ] as const) {
      const { interval } = of(kind);
      expect(Math.abs((interval?.low as number) - (printed[0] as number)), kind).toBeLessThan(allowed);
      expect(Math.abs((interval?.high as number) - (printed[1] as number)), kind).toBeLessThan(allowed);
    }
    expect(Math.abs(of("normal").standardError / recomputed.bootstrapSe - 1)).toBeLessThan(0.03);
  });
});

describe("Efron & Tibshirani 1993, pp. 180 to 186, spatial test, variance of 26 children, 90 %", () => {
  const { inputs, expected, tolerance, recomputed } = worked["bootstrap.spatial"];
  const variance = (values: readonly number[]) => {
    const m = mean(values);
    return values.reduce((sum, x) => sum + (x - m) ** 2, 0) / values.length;
  };
  it("acceleration 0.061, exact by the jackknife", () => {
    const { acceleration, estimate } = jackknife(inputs.a, variance);
    expect(acceleration.toFixed(3)).toBe(expected.acceleration.toFixed(3));
    expect(acceleration).toBeCloseTo(recomputed.acceleration, 12);
    expect(estimate).toBeCloseTo(recomputed.theta, 10);
  });
  it("ABC 116.7 to 260.9, without random numbers", () => {
    const weighted = (p: Float64Array) => {
      const m = inputs.a.reduce((sum, x, i) => sum + (p[i] as number) * x, 0);
      return inputs.a.reduce((sum, x, i) => sum + (p[i] as number) * (x - m) ** 2, 0);
    };
    const { interval, estimate, acceleration } = abcInterval(26, weighted, 0.9);
    expect(interval.low.toFixed(1)).toBe((expected.abc[0] as number).toFixed(1));
    expect(interval.high.toFixed(1)).toBe((expected.abc[1] as number).toFixed(1));
    expect(interval.low).toBeCloseTo(recomputed.abc[0] as number, 3);
    expect(interval.high).toBeCloseTo(recomputed.abc[1] as number, 3);
    expect(estimate).toBeCloseTo(recomputed.theta, 8);
    expect(acceleration).toBeCloseTo(expected.acceleration, 2);
  });
  it("percentile and BCa of 100 000 resamples within the book's tolerance", () => {
    for (const [kind, printed, allowed] of [
      ["percentile", expected.percentile, tolerance.percentileRel],
      ["bca", expected.bca, tolerance.bcaRel],
    ] as const) {
      const { interval } = bootstrapInterval(inputs.a, variance, {
        kind,
        resamples: 100000,
        seed: 4,
        level: 0.9,
      });
      expect(Math.abs((interval?.low as number) / (printed[0] as number) - 1), kind).toBeLessThan(allowed);
      expect(Math.abs((interval?.high as number) / (printed[1] as number) - 1), kind).toBeLessThan(allowed);
    }
  });
});

describe("laws", () => {
  const list = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 3, maxLength: 15 });
  it("the jackknife of a mean: no bias, standard error s/√n", () =>
    fc.assert(
      fc.property(list, (values) => {
        const { bias, standardError } = jackknife(values, meanOf);
        expect(bias).toBeCloseTo(0, 9);
        expect(standardError).toBeCloseTo(standardDeviation(values) / Math.sqrt(values.length), 9);
      }),
    ));
  it("ABC of a mean: standard error by divisor n, symmetric data without correction", () => {
    const values = [1, 2, 3, 4, 5];
    const { standardError, acceleration, biasCorrection, interval } = abcInterval(5, (p) =>
      values.reduce((sum, x, i) => sum + (p[i] as number) * x, 0),
    );
    expect(standardError).toBeCloseTo(Math.sqrt(2 / 5), 8);
    expect(acceleration).toBeCloseTo(0, 8);
    expect(biasCorrection).toBeCloseTo(0, 6);
    expect(interval.high).toBeCloseTo(3 + normalQuantile(0.975) * Math.sqrt(0.4), 5);
  });
  it("another unit and zero move every interval with them", () => {
    const { data } = scipy.bootstrapBca;
    for (const kind of ["percentile", "normal", "bca"] as const) {
      const one = bootstrapInterval(data, meanOf, { kind, resamples: 500 }).interval;
      const other = bootstrapInterval(
        data.map((x) => 4 * x - 1),
        meanOf,
        { kind, resamples: 500 },
      ).interval;
      expect(other?.low).toBeCloseTo(4 * (one?.low as number) - 1, 9);
      expect(other?.high).toBeCloseTo(4 * (one?.high as number) - 1, 9);
    }
  });
  it("the same seed gives the same bytes, another seed others", () => {
    const { data } = scipy.bootstrapBca;
    const of = (seed: number) => JSON.stringify(bootstrapInterval(data, meanOf, { seed, resamples: 300 }));
    expect(of(5)).toBe(of(5));
    expect(of(5)).not.toBe(of(6));
  });
  it("places are drawn evenly: 60 000 of ten, each 10 % within four standard errors", () => {
    const counts = new Array<number>(10).fill(0);
    for (const row of resampleIndices(10, 6000, 8))
      for (const place of row) counts[place] = (counts[place] as number) + 1;
    const allowed = 4 * Math.sqrt(0.1 * 0.9 * 60000);
    for (const count of counts) expect(Math.abs(count - 6000)).toBeLessThan(allowed);
  });
  it("blocks of one are the plain bootstrap: standard error s/√n × √((n − 1)/n) within 4 %", () => {
    const random = seededRandom(6);
    const values = Array.from({ length: 60 }, () => random.normal());
    const { standardError, independentStandardError } = blockBootstrap(values, { blockLength: 1 });
    expect(Math.abs(standardError / (independentStandardError * Math.sqrt(59 / 60)) - 1)).toBeLessThan(0.04);
  });
  it("a block as long as the series gives the series' own mean, and a last block is cut", () => {
    expect(new Set(blockBootstrap([1, 2, 6], { blockLength: 3, resamples: 5 }).replicates)).toEqual(
      new Set([3]),
    );
    expect(
      blockBootstrap([1, 2, 3, 4, 5], {
        blockLength: 3,
        starts: [
          [0, 2],
          [2, 0],
        ],
      }).replicates,
    ).toEqual([(1 + 2 + 3 + 3 + 4) / 5, (3 + 4 + 5 + 1 + 2) / 5]);
  });
});

it("BCa has no interval where all replicates are on one side, and says so with null", () => {
  const { interval, correction } = bootstrapInterval([1, 2, 3], (x) => Math.max(...x), {
    indices: [
      [0, 0, 0],
      [1, 1, 1],
    ],
  });
  expect(interval).toBeNull();
  expect(correction).toBeUndefined();
});

it("takes any statistic of records: a median of a field", () =>
  expect(
    bootstrapInterval(
      [{ force: 1 }, { force: 5 }, { force: 9 }],
      (runners) => median(runners.map(({ force }) => force)),
      {
        kind: "percentile",
        indices: [
          [0, 0, 0],
          [1, 1, 1],
          [2, 2, 2],
        ],
        level: 0.5,
      },
    ).interval,
  ).toEqual({ low: 3, high: 7, level: 0.5 }));

it.each([
  ["too-short", () => bootstrapInterval([1], meanOf)],
  ["too-short", () => bootstrapReplicates([1, 2], meanOf, { indices: [] })],
  ["too-short", () => bootstrapReplicates([1, 2], meanOf, { indices: [[]] })],
  ["out-of-range", () => bootstrapReplicates([1, 2], meanOf, { indices: [[0, 2]] })],
  ["out-of-range", () => bootstrapInterval([1, 2], meanOf, { kind: "basic" as "normal" })],
  ["out-of-range", () => bootstrapInterval([1, 2], meanOf, { resamples: 0 })],
  ["out-of-range", () => bootstrapInterval([1, 2], meanOf, { seed: -1 })],
  ["not-finite", () => bootstrapInterval([1, 2], () => Number.NaN)],
  ["wrong-type", () => bootstrapInterval([1, 2], () => "a" as unknown as number)],
  ["wrong-type", () => bootstrapInterval(3 as unknown as number[], meanOf)],
  ["unknown-option", () => bootstrapInterval([1, 2], meanOf, { replicates: 5 } as object)],
  ["out-of-range", () => abcInterval(5, () => 1)],
  ["out-of-range", () => blockBootstrap([1, 2, 3], { blockLength: 4 })],
  ["out-of-range", () => blockBootstrap([1, 2, 3, 4], { blockLength: 2, starts: [[0, 3]] })],
  ["too-short", () => blockBootstrap([1, 2, 3, 4], { blockLength: 2, starts: [[0]] })],
] as const)("refuses with %s, case %#", (code, call) =>
  expect(call).toThrow(expect.objectContaining({ code })),
);
