import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ratioInterval,
  type SeededRandom,
  SYMMETRY_REFERENCES,
  seededRandom,
  symmetryAngle,
  symmetryIndex,
  symmetryRatio,
} from "../../src/statistics/index.js";
import fixture from "../fixtures/statistics/symmetry.json" with { type: "json" }; // symmetry.py, SciPy 1.17.1

const code = (expected: string) => expect.objectContaining({ code: expected });

describe("published table: Int. J. Phys. Med. Rehabil. 2:201 (2014), table 1, to the two digits printed", () => {
  const { published } = fixture;
  const columns = [
    ["symmetryIndex", (a: number, b: number) => symmetryIndex(a, b)],
    ["percentOfSum", (a: number, b: number) => symmetryIndex(a, b, { of: "sum" })],
    ["percentOfHighest", (a: number, b: number) => symmetryIndex(a, b, { of: "larger" })],
    ["percentOfNonParetic", (a: number, b: number) => symmetryIndex(a, b, { of: "right" })],
    ["ratio", symmetryRatio],
    // The table's angle is positive where the paretic side is the larger: that side is put to the right here.
    ["symmetryAngle", (a: number, b: number) => symmetryAngle(b, a)],
  ] as const;
  it.each(columns)("%s of six pairs of step lengths", (column, index) => {
    expect(published[column]).toHaveLength(6);
    published[column].forEach((printed, k) => {
      const found = index(published.nonParetic[k] as number, published.paretic[k] as number);
      expect(Math.abs(found - printed)).toBeLessThanOrEqual(0.006);
    });
  });
});

describe("indices of two values", () => {
  it("NumPy: 1250 and 1180 are 5.76131687242798 % apart, 1.83337710619764 % of a right angle", () => {
    expect(symmetryIndex(1250, 1180)).toBeCloseTo(5.76131687242798, 12);
    expect(symmetryAngle(1250, 1180)).toBeCloseTo(1.83337710619764, 12);
  });
  it("law: near symmetry the index is π times the angle", () =>
    expect(symmetryIndex(1.001, 0.999) / symmetryAngle(1.001, 0.999)).toBeCloseTo(Math.PI, 5));
  it("one side at 0: the ends of the scales", () => {
    expect([symmetryIndex(3, 0), symmetryIndex(0, 3)]).toEqual([200, -200]);
    expect([symmetryAngle(3, 0), symmetryAngle(0, 3)]).toEqual([50, -50]);
    expect([symmetryIndex(3, 0, { of: "sum" }), symmetryIndex(0, 3, { of: "larger" })]).toEqual([100, -100]);
    expect(symmetryRatio(0, 3)).toBe(0);
  });
  const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
  it("property: exchanged sides exchange the sign, a common factor of either sign changes nothing", () =>
    fc.assert(
      fc.property(positive, positive, positive, (a, b, k) => {
        const near = (x: number, y: number) => expect(Math.abs(x - y)).toBeLessThan(1e-9 * (1 + Math.abs(y)));
        for (const of of ["mean", "sum", "larger"] as const) {
          near(symmetryIndex(b, a, { of }), -symmetryIndex(a, b, { of }));
        }
        near(symmetryAngle(b, a), -symmetryAngle(a, b));
        for (const of of SYMMETRY_REFERENCES)
          near(symmetryIndex(-k * a, -k * b, { of }), symmetryIndex(a, b, { of }));
        near(symmetryAngle(-k * a, -k * b), symmetryAngle(a, b));
      }),
    ));
  it("very large values do not overflow", () => expect(symmetryIndex(1.5e308, 1e308)).toBeCloseTo(40, 10));
  it.each([
    [() => symmetryIndex(1, -1), "out-of-range"],
    [() => symmetryIndex(0, 0), "out-of-range"],
    [() => symmetryIndex(0, 1, { of: "right" }), "out-of-range"],
    [() => symmetryIndex(1, 0, { of: "left" }), "out-of-range"],
    [() => symmetryIndex(1, 1, { of: "smaller" as never }), "out-of-range"],
    [() => symmetryIndex(1, 1, { by: "mean" } as never), "unknown-option"],
    [() => symmetryIndex(Number.NaN, 1), "not-finite"],
    [() => symmetryIndex("1" as never, 1), "wrong-type"],
    [() => symmetryAngle(-1, 1), "out-of-range"],
    [() => symmetryAngle(0, 0), "out-of-range"],
    [() => symmetryRatio(1, 0), "out-of-range"],
    [() => symmetryRatio(1, -1), "out-of-range"],
  ] as const)("refuses %o: %s", (call, expected) => expect(call).toThrow(code(expected)));
});

/** Pairs whose ratio of means is `q` in the long run, correlated from one to the next and with each other. */
function pairs(random: SeededRandom, n: number, rho: number, between: number, cv: number, q: number) {
  const both = (a: number) => between * a + Math.sqrt(1 - between * between) * random.normal();
  let a = random.normal();
  let b = both(a);
  const first: number[] = [];
  const second: number[] = [];
  for (let i = 0; i < n; i++) {
    first.push(q * (1 + cv * a));
    second.push(1 + cv * b);
    const e = random.normal();
    const step = Math.sqrt(1 - rho * rho);
    b = rho * b + step * both(e);
    a = rho * a + step * e;
  }
  return { first, second };
}

describe("Fieller's interval", () => {
  it.each(fixture.cases)(
    "SciPy, by root finding in place of the closed form: $low to $high",
    ({ first, second, level, correctBias, ratio, degreesOfFreedom, low, high }) => {
      const found = ratioInterval(first, second, level, { correctBias });
      expect(found.n).toBe(first.length);
      expect(found.ratio).toBeCloseTo(ratio, 12);
      expect(found.degreesOfFreedom).toBeCloseTo(degreesOfFreedom, 9);
      expect(found.interval?.low).toBeCloseTo(low, 10);
      expect(found.interval?.high).toBeCloseTo(high, 10);
    },
  );
  it("law: the interval of the inverse ratio is the inverse of the interval", () => {
    const { first, second } = pairs(seededRandom(3), 30, 0.3, 0.2, 0.2, 1.4);
    const there = ratioInterval(first, second, 0.95);
    const back = ratioInterval(second, first, 0.95);
    expect((there.interval?.low ?? 0) * (back.interval?.high ?? 0)).toBeCloseTo(1, 12);
    expect((there.interval?.high ?? 0) * (back.interval?.low ?? 0)).toBeCloseTo(1, 12);
  });
  it("what moves both of a pair alike cancels: a drift of a third leaves a ratio of fixed shares without width", () => {
    const second = Array.from({ length: 20 }, (_, i) => 1 + i / 60);
    const { ratio, interval } = ratioInterval(
      second.map((value) => 1.25 * value),
      second,
      0.95,
    );
    expect(ratio).toBeCloseTo(1.25, 14);
    expect((interval?.high ?? 1) - (interval?.low ?? 0)).toBeLessThan(1e-12);
  });
  it("no interval where the second mean is not told from 0; no ratio where it is 0", () => {
    const swing = [5, -4, 5, -4, 5, -4];
    const found = ratioInterval([1, 2, 1, 2, 1, 2], swing, 0.95);
    expect(found.degreesOfFreedom).toBeGreaterThan(1);
    expect(found.interval).toBeNull();
    expect(ratioInterval([1, 2], [1, -1], 0.95)).toEqual({
      n: 2,
      ratio: null,
      degreesOfFreedom: null,
      interval: null,
    });
  });
  it("no interval where the pairs are worth fewer than two", () => {
    const wave = Array.from({ length: 60 }, (_, i) => 1 + 0.1 * Math.sin((2 * Math.PI * i) / 60));
    expect(
      ratioInterval(
        wave,
        wave.map(() => 1),
        0.95,
      ),
    ).toMatchObject({ degreesOfFreedom: null, interval: null });
  });
  it("a shared factor and another unit change nothing", () => {
    const { first, second } = pairs(seededRandom(4), 25, 0.2, 0, 0.1, 1);
    const plain = ratioInterval(first, second, 0.95);
    const scaled = ratioInterval(
      first.map((value) => 1e-200 * value),
      second.map((value) => 1e-200 * value),
      0.95,
    );
    expect(scaled.interval?.low).toBeCloseTo(plain.interval?.low ?? 0, 10);
    expect(scaled.interval?.high).toBeCloseTo(plain.interval?.high ?? 0, 10);
  });
  // The last number was measured with 10 000 other trials; three standard errors of a share in 2000 are 1.6 in 100.
  it.each([
    [20, 0, -0.5, 0.05, 1, 96.5],
    [20, 0, 0.5, 0.3, 1.6, 96.3],
    [40, 0.3, -0.5, 0.1, 1.1, 93.8],
    [40, 0.3, 0.5, 0.1, 1.1, 94],
    [40, 0.6, 0, 0.05, 1, 93.7],
    [80, 0.6, 0.5, 0.1, 1.1, 94.4],
  ])(
    "measured, 2000 trials of %d strides, correlation %d in time and %d between the sides, spread %d, ratio %d: %d in 100 of the 95 %% intervals cover",
    (n, rho, between, cv, q, covering) => {
      const random = seededRandom(5);
      let covered = 0;
      let told = 0;
      for (let k = 0; k < 2000; k++) {
        const { first, second } = pairs(random, n, rho, between, cv, q);
        const { interval } = ratioInterval(first, second, 0.95, { correctBias: true });
        if (interval === null) continue;
        told++;
        if (interval.low <= q && q <= interval.high) covered++;
      }
      expect(told).toBeGreaterThan(1980);
      expect(Math.abs((100 * covered) / told - covering)).toBeLessThan(1.6);
    },
  );
  it.each([
    [() => ratioInterval([1], [1], 0.95), "too-short"],
    [() => ratioInterval([1, 2], [1, 2, 3], 0.95), "unequal-lengths"],
    [() => ratioInterval([1, 2], [1, 2], 1), "out-of-range"],
    [() => ratioInterval([1, Number.NaN], [1, 2], 0.95), "not-finite"],
    [() => ratioInterval([1, 2], ["1", 2] as never, 0.95), "wrong-type"],
    [() => ratioInterval([1, 2], [1, 2], 0.95, { shared: true } as never), "unknown-option"],
  ] as const)("refuses %o: %s", (call, expected) => expect(call).toThrow(code(expected)));
});
