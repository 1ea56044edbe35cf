import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  differenceInterval,
  effectiveNumberOf,
  effectiveNumbersOf,
  hedgesG,
  lagOneCorrelation,
  mean,
  meanInterval,
  type SeededRandom,
  seededRandom,
  studentTProbability,
} from "../../src/statistics/index.js";
import published from "../fixtures/statistics/published.json" with { type: "json" };
import fixture from "../fixtures/statistics/samples.json" with { type: "json" };

/** A published example knows of no order in time: its values are laid out so that r₁ ≤ 0 and the plain formula is left. */
function withoutCorrelation(values: readonly number[]): number[] {
  const ordered = [...values].sort((a, b) => a - b);
  const zigzag: number[] = [];
  while (ordered.length > 0) {
    zigzag.push(ordered.shift() as number);
    const last = ordered.pop();
    if (last !== undefined) zigzag.push(last);
  }
  expect(lagOneCorrelation(zigzag)).toBeLessThanOrEqual(0);
  return zigzag;
}

/** Any number of values with exactly the mean and standard deviation wanted, and r₁ ≤ 0. */
function withSummary(n: number, centre: number, sd: number): number[] {
  const half = Math.floor(n / 2);
  const signs = Array.from({ length: n }, (_, i) => (n % 2 === 1 && i === n - 1 ? 0 : i % 2 === 0 ? 1 : -1));
  const size = Math.sqrt((sd * sd * (n - 1)) / (2 * half));
  return signs.map((sign) => centre + sign * size);
}

const p = (t: number, df: number) => 2 * studentTProbability(-Math.abs(t), df);

describe("published two-sample examples, Welch", () => {
  const difference = (a: readonly number[], b: readonly number[]) => {
    const found = differenceInterval(withoutCorrelation(a), withoutCorrelation(b), 0.95);
    return { ...found, df: found.degreesOfFreedom ?? Number.NaN, t: found.difference / found.standardError };
  };
  it("Student 1908, sleep data, as printed by R: t -1.8608, df 17.776, p 0.07939, (-3.3654832, 0.2054832)", () => {
    const { t, df, interval } = difference(published.sleep.a, published.sleep.b);
    expect(t).toBeCloseTo(-1.8608, 4);
    expect(df).toBeCloseTo(17.776, 3);
    expect(p(t, df)).toBeCloseTo(0.07939, 5);
    expect(interval?.low).toBeCloseTo(-3.3654832, 7);
    expect(interval?.high).toBeCloseTo(0.2054832, 7);
  });
  it("real-statistics.com, unequal spreads: t 3.454842, df 9.83928, one-sided p 0.003162", () => {
    const { t, df } = difference(published.flavorWelch.a, published.flavorWelch.b);
    expect(t).toBeCloseTo(3.454842, 5);
    expect(df).toBeCloseTo(9.83928, 5);
    expect(p(t, df) / 2).toBeCloseTo(0.003162, 6);
  });
  it("Columbia W2024, placebo: t 3.4456, df 9.48, one-sided p 0.003391", () => {
    const { t, df } = difference(published.placebo.a, published.placebo.b);
    expect(t).toBeCloseTo(3.4456, 4);
    expect(df).toBeCloseTo(9.48, 2);
    expect(p(t, df) / 2).toBeCloseTo(0.003391, 6);
  });
  it("Becker, UCCS (7.5 and 2.725, SD 2.038 and 2.592, 40 each): t 9.16, df 73.89", () => {
    const { t, df } = difference(withSummary(40, 7.5, 2.038), withSummary(40, 2.725, 2.592));
    expect(t).toBeCloseTo(9.16, 2);
    expect(df).toBeCloseTo(73.89, 2);
  });
  it("NAG g07ca (25 and 21, SD 0.8185 and 4.208, 4 and 8): t 2.5922, df 7.9925, p 0.0320, (0.4410, 7.5590)", () => {
    const { t, df, interval } = difference(withSummary(4, 25, 0.8185), withSummary(8, 21, 4.208));
    expect(Math.abs(t - 2.5922)).toBeLessThan(3e-4);
    expect(Math.abs(df - 7.9925)).toBeLessThan(3e-4);
    expect(p(t, df)).toBeCloseTo(0.032, 4);
    expect(Math.abs((interval?.low ?? Number.NaN) - 0.441)).toBeLessThan(4e-4);
    expect(Math.abs((interval?.high ?? Number.NaN) - 7.559)).toBeLessThan(4e-4);
  });
  it("SciPy, ttest_ind on the summaries of NIST's AUTO83B (249 and 79 cars): t -12.94627, df 136.875", () => {
    const { t, df, interval } = difference(
      withSummary(249, 20.14458, 6.4147),
      withSummary(79, 30.48101, 6.10771),
    );
    expect(t).toBeCloseTo(-12.946267565658848, 9);
    expect(df).toBeCloseTo(136.8749900936937, 7);
    expect(interval?.low).toBeCloseTo(-11.915243780872187, 9);
    expect(interval?.high).toBeCloseTo(-8.757616219127813, 9);
  });
  it("SciPy, two samples of 28 and 24: t, df, p, 95 % interval", () => {
    const { a, b, welch } = published.twoSample;
    const { t, df, interval } = difference(a, b);
    expect(t).toBeCloseTo(welch.t, 10);
    expect(df).toBeCloseTo(welch.df, 9);
    expect(p(t, df)).toBeCloseTo(welch.p, 10);
    expect(interval?.low).toBeCloseTo(welch.ci95[0] as number, 10);
    expect(interval?.high).toBeCloseTo(welch.ci95[1] as number, 10);
  });
});

describe("published pooled t: NIST e-Handbook 1.3.5.3, the distribution alone", () => {
  it("t -12.62059 with 326 degrees of freedom: p below 1e-28, as SciPy 5.273218e-30", () =>
    expect(p(-12.62058500044476, 326) / 5.273218316047391e-30).toBeCloseTo(1, 9));
  it("NAG g07ca pooled: t 1.8403, df 10, p 0.0955", () =>
    expect(Math.abs(p(1.8403, 10) - 0.0955)).toBeLessThan(1e-4));
  it("real-statistics.com pooled: t 2.176768, df 18, one-sided p 0.021526", () =>
    expect(p(2.176768, 18) / 2).toBeCloseTo(0.021526, 6));
  it("Lakens 2017, TOSTER: t -2.6874 with 182 degrees of freedom, one-sided p 0.004", () =>
    expect(p(-2.6873748542638283, 182) / 2).toBeCloseTo(0.004, 3));
});

describe("published mean intervals", () => {
  it("University of Minnesota 3011, example 16.1: (21.52709, 29.80625)", () => {
    const { interval } = meanInterval(withoutCorrelation(published.mean), 0.95);
    expect(interval?.low).toBeCloseTo(21.52709, 5);
    expect(interval?.high).toBeCloseTo(29.80625, 5);
  });
  it("Boston University BS704, paired pressures, second less first: (-12.4, 1.8)", () => {
    const { a, b } = published.pressure;
    const { interval } = meanInterval(
      withoutCorrelation(a.map((value, i) => value - (b[i] as number))),
      0.95,
    );
    expect(interval?.low).toBeCloseTo(-12.4, 1);
    expect(interval?.high).toBeCloseTo(1.8, 1);
  });
  it("real-statistics.com, paired weights: t 6.6896995, p 1.028e-5", () => {
    const { a, b } = published.weight;
    const {
      mean: centre,
      sd,
      n,
    } = meanInterval(withoutCorrelation(a.map((value, i) => value - (b[i] as number))), 0.95);
    const t = centre / ((sd ?? Number.NaN) / Math.sqrt(n));
    expect(t).toBeCloseTo(6.6896995, 7);
    expect(p(t, n - 1)).toBeCloseTo(1.028e-5, 8);
  });
});

describe("with the effective number, SciPy and NumPy from the same formula", () => {
  it("99 % interval of a mean", () => {
    for (const { values, interval99 } of fixture.series) {
      const { interval } = meanInterval(values, 0.99);
      expect(interval?.low).toBeCloseTo(interval99[0] as number, 9);
      expect(interval?.high).toBeCloseTo(interval99[1] as number, 9);
    }
  });
  it("99 % interval of a difference, t and p by ttest_ind_from_stats", () => {
    for (const { first, second, ...scipy } of fixture.pairs) {
      const a = fixture.series[first]?.values ?? [];
      const b = fixture.series[second]?.values ?? [];
      const { difference, standardError, degreesOfFreedom, interval } = differenceInterval(a, b, 0.99);
      expect(difference).toBeCloseTo(scipy.difference, 10);
      expect(difference / standardError).toBeCloseTo(scipy.t, 9);
      expect(degreesOfFreedom).toBeCloseTo(scipy.df, 9);
      expect(p(difference / standardError, degreesOfFreedom ?? Number.NaN)).toBeCloseTo(scipy.p, 10);
      expect(interval?.low).toBeCloseTo(scipy.interval99[0] as number, 9);
      expect(interval?.high).toBeCloseTo(scipy.interval99[1] as number, 9);
    }
  });
});

describe("too little to go by", () => {
  it("one value: no spread, no interval", () =>
    expect(meanInterval([4], 0.95)).toEqual({ n: 1, mean: 4, sd: null, interval: null }));
  it("one slow wave of 20 values is worth fewer than two independent ones: no interval", () => {
    const wave = Array.from({ length: 20 }, (_, i) => Math.sin((2 * Math.PI * (i + 1)) / 21));
    expect(effectiveNumberOf(wave)).toBeLessThan(2);
    expect(meanInterval(wave, 0.95).interval).toBeNull();
    const { interval, degreesOfFreedom } = differenceInterval([1, 2, 1, 2], wave, 0.95);
    expect(interval).toBeNull();
    expect(degreesOfFreedom).toBeNull();
  });
  it("no spread on either side: an interval of no width", () =>
    expect(differenceInterval([2, 2, 2], [1, 1], 0.95).interval).toEqual({ low: 1, high: 1, level: 0.95 }));
});

describe("properties", () => {
  const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 4, maxLength: 30 });
  it("swapping the samples turns the interval round", () =>
    fc.assert(
      fc.property(values, values, (a, b) => {
        const one = differenceInterval(a, b, 0.95).interval;
        const other = differenceInterval(b, a, 0.95).interval;
        expect(one === null).toBe(other === null);
        if (one === null || other === null) return;
        expect(one.low).toBeCloseTo(-other.high, 8);
        expect(one.high).toBeCloseTo(-other.low, 8);
      }),
    ));
  it("a higher level holds a lower one", () =>
    fc.assert(
      fc.property(values, values, (a, b) => {
        const inner = differenceInterval(a, b, 0.95).interval;
        const outer = differenceInterval(a, b, 0.99).interval;
        if (inner === null || outer === null) return;
        expect(outer.low).toBeLessThanOrEqual(inner.low);
        expect(outer.high).toBeGreaterThanOrEqual(inner.high);
      }),
    ));
  it("g is minus itself the other way round, and free of unit and offset", () =>
    fc.assert(
      fc.property(values, values, (a, b) => {
        const g = hedgesG(a, b);
        if (g === null) return;
        expect(hedgesG(b, a)).toBeCloseTo(-g, 8);
        const other = (list: number[]) => list.map((value) => 3 * value + 5);
        if (Math.abs(g) < 1e3) expect(hedgesG(other(a), other(b))).toBeCloseTo(g, 6);
      }),
    ));
});

it("measured: 95 % intervals of a mean of 200 correlated values (r 0.5) cover it in 92 to 97 of 100 series", () => {
  const random = seededRandom(11);
  let covered = 0;
  for (let trial = 0; trial < 1000; trial++) {
    let x = random.normal();
    const series = Array.from({ length: 200 }, () => {
      x = 0.5 * x + Math.sqrt(0.75) * random.normal();
      return x;
    });
    const { interval } = meanInterval(series, 0.95);
    if (interval !== null && interval.low <= 0 && interval.high >= 0) covered++;
  }
  expect(covered).toBeGreaterThan(920);
  expect(covered).toBeLessThan(970);
});

describe("the correlation freed of its bias", () => {
  const series = (random: SeededRandom, n: number, r: number) => {
    let x = random.normal();
    return Array.from({ length: n }, () => {
      const here = x;
      x = r * x + Math.sqrt(1 - r * r) * random.normal();
      return here;
    });
  };
  it.each([0, 0.3, 0.6])(
    "measured: r₁ of 4000 series of 30 falls short of %d by about (1 + 4 r)/30, and corrected by less than 0.03",
    (r) => {
      const random = seededRandom(100 * r);
      const found = mean(Array.from({ length: 4000 }, () => lagOneCorrelation(series(random, 30, r))));
      expect(Math.abs(found - (r - (1 + 4 * r) / 30))).toBeLessThan(0.02);
      expect(Math.abs((30 * found + 1) / 26 - r)).toBeLessThan(0.03);
    },
  );
  it("measured: 99 % intervals of differences, 30 and 30 values, r 0.3: 1.4 to 2.1 in 100 leave out zero as it is, 0.7 to 1.3 corrected", () => {
    const random = seededRandom(31);
    let plain = 0;
    let corrected = 0;
    const pairs = 6000;
    for (let pair = 0; pair < pairs; pair++) {
      const a = series(random, 30, 0.3);
      const b = series(random, 30, 0.3);
      const outside = (interval: { low: number; high: number } | null) =>
        interval !== null && (interval.low > 0 || interval.high < 0);
      if (outside(differenceInterval(a, b, 0.99).interval)) plain++;
      if (outside(differenceInterval(a, b, 0.99, { correctBias: true }).interval)) corrected++;
    }
    expect(plain / pairs).toBeGreaterThan(0.013);
    expect(plain / pairs).toBeLessThan(0.021);
    expect(corrected / pairs).toBeGreaterThan(0.007);
    expect(corrected / pairs).toBeLessThan(0.013);
  });
  it("shared, by hand: both series keep the smaller share nₑ / n; unshared, each its own", () => {
    const slow = [1, 2, 3, 4, 5, 6, 7, 8];
    const alternating = [4, 6, 4, 6, 4, 6];
    const [n1, n2] = effectiveNumbersOf(slow, alternating);
    expect([n1, n2]).toEqual([effectiveNumberOf(slow), 6]);
    expect(effectiveNumbersOf(slow, alternating, { shared: true })).toEqual([n1, (6 * n1) / 8]);
    expect(effectiveNumbersOf(alternating, slow, { shared: true })).toEqual([(6 * n1) / 8, n1]);
    expect(() => effectiveNumbersOf(slow, [1], { shared: true })).toThrow(
      expect.objectContaining({ code: "too-short" }),
    );
    expect(() => effectiveNumbersOf(slow, slow, { share: true } as never)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
  });
  it("by hand: of 40 values, 40 (1 − c)/(1 + c) with c = (40 r₁ + 1)/36", () => {
    const values = series(seededRandom(4), 40, 0.4);
    const c = (40 * lagOneCorrelation(values) + 1) / 36;
    expect(c).toBeGreaterThan(0.1);
    expect(effectiveNumberOf(values, { correctBias: true })).toBeCloseTo((40 * (1 - c)) / (1 + c), 10);
  });
  it("property: never more than as it is, and 2 or more where that is", () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 2, maxLength: 40 }),
        (values) => {
          const plain = effectiveNumberOf(values);
          const corrected = effectiveNumberOf(values, { correctBias: true });
          expect(corrected).toBeLessThanOrEqual(plain + 1e-9);
          expect(corrected).toBeGreaterThanOrEqual(Math.min(2, plain));
        },
      ),
    ));
  it("refuses an unknown option", () =>
    expect(() => differenceInterval([1, 2], [1, 2], 0.95, { bias: true } as object)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    ));
});

describe("Hedges' g", () => {
  it("Becker, UCCS: d 2.05 from means and SDs of 40 each", () => {
    const g = hedgesG(withSummary(40, 7.5, 2.038), withSummary(40, 2.725, 2.592)) ?? Number.NaN;
    expect(g / (1 - 3 / (4 * 78 - 1))).toBeCloseTo(2.05, 2);
  });
  it("SciPy's gamma function: d 0.5130 becomes g 0.5053 on samples of 28 and 24", () => {
    const { a, b, effect } = published.twoSample;
    expect(hedgesG(a, b)).toBeCloseTo(effect.g, 12);
    expect((hedgesG(a, b) ?? Number.NaN) / effect.cohenD).toBeCloseTo(effect.J, 12);
  });
  it("none without spread", () => expect(hedgesG([1, 1], [2, 2])).toBeNull());
});

it.each([
  ["an empty list", () => meanInterval([], 0.95), "too-short"],
  ["level 1", () => meanInterval([1, 2], 1), "out-of-range"],
  ["level 95", () => differenceInterval([1, 2], [1, 2], 95), "out-of-range"],
  ["one value against two", () => differenceInterval([1], [1, 2], 0.95), "too-short"],
  ["one value for g", () => hedgesG([1, 2], [1]), "too-short"],
  ["NaN in the second", () => differenceInterval([1, 2], [1, Number.NaN], 0.95), "not-finite"],
])("refuses %s", (_, call, code) => expect(call).toThrow(expect.objectContaining({ code })));
