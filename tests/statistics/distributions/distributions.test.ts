import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chiSquareProbability,
  chiSquareQuantile,
  fProbability,
  fQuantile,
  normalProbability,
  normalQuantile,
  studentTProbability,
} from "../../../src/statistics/index.js";
import fixture from "../../fixtures/statistics/distributions.json" with { type: "json" };

type Row = readonly number[];
const off = (value: number, exact: number) => (exact === 0 ? Math.abs(value) : Math.abs(value / exact - 1));
/** Largest relative difference over the rows, and how far SciPy itself is off where it is worst. */
function worst(rows: readonly Row[], of: (row: Row) => number, exact: number): number {
  return Math.max(...rows.map((row) => off(of(row), row[exact] as number)));
}
const at = (row: Row, place: number) => row[place] as number;

describe("F, degrees of freedom 0.5 to 10⁴, ratios 1e-6 to 500, tails to 1e-250", () => {
  const { rows } = fixture.f;
  const below = (row: Row) => fProbability(at(row, 0), at(row, 1), at(row, 2));
  const above = (row: Row) => fProbability(at(row, 0), at(row, 1), at(row, 2), "above");
  it("mpmath 1.3, 60 digits: both tails within 1e-12 relative", () => {
    expect(rows.length).toBeGreaterThan(200);
    expect(worst(rows, below, 4)).toBeLessThan(1e-12);
    expect(worst(rows, above, 6)).toBeLessThan(1e-12);
  });
  it("SciPy 1.17.1, stats.f: both tails within 1e-12 relative where SciPy agrees with mpmath that well", () => {
    const sure = rows.filter(
      (row) => off(at(row, 3), at(row, 4)) < 5e-13 && off(at(row, 5), at(row, 6)) < 5e-13,
    );
    expect(sure.length).toBeGreaterThan(0.7 * rows.length);
    expect(worst(sure, below, 3)).toBeLessThan(1e-12);
    expect(worst(sure, above, 5)).toBeLessThan(1e-12);
  });
  it("mpmath and SciPy: quantiles, p 1e-8 to 0.9999, within 1e-11 relative", () => {
    const quantile = (row: Row) => fQuantile(at(row, 0), at(row, 1), at(row, 2));
    expect(worst(fixture.fQuantile.rows, quantile, 4)).toBeLessThan(1e-11);
    const sure = fixture.fQuantile.rows.filter((row) => off(at(row, 3), at(row, 4)) < 1e-11);
    expect(sure.length).toBeGreaterThan(0.9 * fixture.fQuantile.rows.length);
    expect(worst(sure, quantile, 3)).toBeLessThan(2e-11);
  });
  it("closing law: with one upper degree of freedom it is Student's t squared", () => {
    for (const [t, df] of [
      [0.3, 4],
      [2.2, 10],
      [6, 33.3],
    ] as const)
      expect(off(fProbability(t * t, 1, df, "above"), 2 * studentTProbability(-t, df))).toBeLessThan(1e-13);
  });
});

describe("chi-square, degrees of freedom 0.5 to 10⁴, tails to 1e-250", () => {
  const { rows } = fixture.chiSquare;
  const below = (row: Row) => chiSquareProbability(at(row, 0), at(row, 1));
  const above = (row: Row) => chiSquareProbability(at(row, 0), at(row, 1), "above");
  it("mpmath 1.3, 60 digits: both tails within 1e-12 relative", () => {
    expect(worst(rows, below, 3)).toBeLessThan(1e-12);
    expect(worst(rows, above, 5)).toBeLessThan(1e-12);
  });
  it("SciPy 1.17.1, stats.chi2: both tails within 1e-11 relative where SciPy agrees with mpmath that well", () => {
    const sure = rows.filter(
      (row) => off(at(row, 2), at(row, 3)) < 1e-11 && off(at(row, 4), at(row, 5)) < 1e-11,
    );
    expect(sure.length).toBeGreaterThan(0.8 * rows.length);
    expect(worst(sure, below, 2)).toBeLessThan(2e-11);
    expect(worst(sure, above, 4)).toBeLessThan(2e-11);
  });
  it("mpmath: quantiles, p 1e-8 to 0.9999, within 1e-11 relative", () =>
    expect(
      worst(fixture.chiSquareQuantile.rows, (row) => chiSquareQuantile(at(row, 0), at(row, 1)), 3),
    ).toBeLessThan(1e-11));
  it("closed form: with two degrees of freedom the tail is e^(−x/2)", () => {
    for (const x of [0.01, 1, 7, 300])
      expect(off(chiSquareProbability(x, 2, "above"), Math.exp(-x / 2))).toBeLessThan(1e-13);
  });
});

describe("normal", () => {
  it("mpmath 1.3, 60 digits: tails down to z −37 within 1e-12 relative", () =>
    expect(worst(fixture.normal.rows, (row) => normalProbability(at(row, 0)), 2)).toBeLessThan(1e-12));
  it("mpmath: quantiles from p 1e-300, within 1e-13, relative or absolute", () => {
    for (const [p = 0, scipy = 0, exact = 0] of fixture.normalQuantile.rows) {
      const error = Math.abs(normalQuantile(p) - exact) / Math.max(1, Math.abs(exact));
      expect(error, `p ${p}`).toBeLessThan(1e-13);
      expect(Math.abs(normalQuantile(p) - scipy), `p ${p}`).toBeLessThan(1e-12);
    }
  });
  it("symmetry: below −z is above z", () => {
    for (const z of [0, 0.4, 1.96, 5])
      expect(normalProbability(z)).toBeCloseTo(1 - normalProbability(-z), 15);
    expect(normalQuantile(0.5)).toBe(0);
  });
});

describe("properties", () => {
  const df = fc.double({ min: -0.7, max: 9.2, noNaN: true }).map(Math.exp);
  const p = fc.double({ min: -18, max: -0.01, noNaN: true }).map(Math.exp);
  it("the probability of the F quantile is p", () =>
    fc.assert(
      fc.property(p, df, df, (share, df1, df2) => {
        let f = 0;
        try {
          f = fQuantile(share, df1, df2);
        } catch (error) {
          expect(error).toMatchObject({ code: "out-of-range" });
          return;
        }
        expect(off(fProbability(f, df1, df2), share)).toBeLessThan(1e-10);
      }),
    ));
  it("both F tails add up to one, and exchanging the degrees of freedom turns the ratio over", () =>
    fc.assert(
      fc.property(fc.double({ min: -4, max: 4, noNaN: true }), df, df, (u, df1, df2) => {
        const f = Math.exp(u);
        expect(fProbability(f, df1, df2) + fProbability(f, df1, df2, "above")).toBeCloseTo(1, 12);
        expect(off(fProbability(1 / f, df2, df1), fProbability(f, df1, df2, "above"))).toBeLessThan(1e-9);
      }),
    ));
  it("the probability of the chi-square quantile is p", () =>
    fc.assert(
      fc.property(p, df, (share, nu) => {
        expect(off(chiSquareProbability(chiSquareQuantile(share, nu), nu), share)).toBeLessThan(1e-10);
      }),
    ));
});

it("2026-11-25: the normal probability of 1e155 and −1e160 was NaN", () => {
  for (const z of [1e155, 1e160, 1e308]) {
    expect(normalProbability(z)).toBe(1);
    expect(normalProbability(-z)).toBe(0);
  }
  expect(chiSquareProbability(1e308, 2, "above")).toBe(0);
});

it("2026-11-25: F with 1e308 degrees of freedom was NaN, with 1e15 of both 0 in place of a half", () => {
  // SciPy 1.17.1: stats.f.sf(1, 2, 1e8), stats.f.sf(1.0001, 1e8, 1e8), stats.chi2.sf(1.0001e8, 1e8).
  expect(fProbability(1, 2, 1e8, "above") / 0.3678794448502367).toBeCloseTo(1, 12);
  expect(fProbability(1.0001, 1e8, 1e8, "above") / 0.30854634030436584).toBeCloseTo(1, 10);
  expect(chiSquareProbability(1.0001e8, 1e8, "above") / 0.239742737661237).toBeCloseTo(1, 10);
  const beyond = expect.objectContaining({ code: "out-of-range" });
  for (const df of [1.1e8, 1e308]) {
    expect(() => fProbability(1, 2, df)).toThrow(beyond);
    expect(() => fQuantile(0.9, df, df)).toThrow(beyond);
    expect(() => chiSquareProbability(df, df)).toThrow(beyond);
    expect(() => chiSquareQuantile(0.9, df)).toThrow(beyond);
  }
  expect(() => studentTProbability(-1, 1e308)).toThrow(beyond);
});

it.each([
  ["a negative ratio", () => fProbability(-1, 1, 1)],
  ["no degrees of freedom", () => fProbability(1, 0, 1)],
  ["another tail", () => fProbability(1, 1, 1, "upper" as "above")],
  ["p 1", () => fQuantile(1, 1, 1)],
  ["p 0", () => normalQuantile(0)],
  ["a negative chi-square", () => chiSquareProbability(-1, 2)],
  ["an F quantile beyond the range of numbers", () => fQuantile(1e-320, 0.1, 1)],
  ["a chi-square quantile below the smallest number", () => chiSquareQuantile(1e-320, 0.1)],
])("refuses %s", (_, call) => expect(call).toThrow(expect.objectContaining({ code: "out-of-range" })));
