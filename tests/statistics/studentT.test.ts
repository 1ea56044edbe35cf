import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gammaRatio } from "../../src/statistics/gammaRatio.js";
import { studentTProbability, studentTQuantile } from "../../src/statistics/index.js";
import fixture from "../fixtures/statistics/studentT.json" with { type: "json" };

const off = (value: number, exact: number) => (exact === 0 ? Math.abs(value) : Math.abs(value / exact - 1));
/** SciPy itself is off by up to 6e-10 on seven rows next to the centre; it is held against only where it is right. */
const sure = (rows: number[][]) => rows.filter(([, , scipy = 0, mpmath = 0]) => off(scipy, mpmath) < 1e-11);

describe("probability, t from -1e6 to 8, degrees of freedom 0.5 to 1e6", () => {
  const rows = fixture.probability.rows;
  it("mpmath 1.3, 50 digits: within 1e-13 relative, down to 1e-250", () => {
    for (const [t = 0, df = 0, , exact = 0] of rows) {
      expect(off(studentTProbability(t, df), exact), `t ${t}, df ${df}`).toBeLessThan(1e-13);
    }
  });
  it("SciPy 1.17.1, stats.t.cdf: within 1e-10 relative", () => {
    expect(sure(rows).length).toBe(rows.length - 1);
    for (const [t = 0, df = 0, scipy = 0] of sure(rows)) {
      expect(off(studentTProbability(t, df), scipy), `t ${t}, df ${df}`).toBeLessThan(1e-10);
    }
  });
});

describe("quantile, p from 1e-12 to 0.9999, degrees of freedom 0.5 to 1e6", () => {
  const rows = fixture.quantile.rows;
  it("mpmath 1.3, 50 digits: within 1e-13 relative", () => {
    for (const [p = 0, df = 0, , exact = 0] of rows) {
      expect(off(studentTQuantile(p, df), exact), `p ${p}, df ${df}`).toBeLessThan(1e-13);
    }
  });
  it("SciPy 1.17.1, stats.t.ppf: within 1e-10 relative", () => {
    expect(sure(rows).length).toBe(rows.length - 6);
    for (const [p = 0, df = 0, scipy = 0] of sure(rows)) {
      expect(off(studentTQuantile(p, df), scipy), `p ${p}, df ${df}`).toBeLessThan(1e-10);
    }
  });
  it("NIST/SEMATECH e-Handbook 1.3.5.3: two-sided 5 % critical value at 326 degrees of freedom is 1.9673", () =>
    expect(studentTQuantile(0.975, 326)).toBeCloseTo(1.9673, 4));
});

it("closed forms: at 1 degree of freedom tan, at 2 algebraic", () => {
  for (const p of [0.001, 0.2, 0.5, 0.8, 0.999]) {
    expect(studentTQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 10);
    expect(studentTQuantile(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 10);
  }
});

it("property: the probability of the quantile is p, within 1e-12 relative", () =>
  fc.assert(
    fc.property(
      fc.double({ min: -27, max: -0.7, noNaN: true }),
      fc.double({ min: -0.7, max: 13.8, noNaN: true }),
      (logP, logDf) => {
        const p = Math.exp(logP);
        const df = Math.exp(logDf);
        expect(off(studentTProbability(studentTQuantile(p, df), df), p)).toBeLessThan(1e-12);
      },
    ),
    { numRuns: 500 },
  ));

it("property: the two tails mirror, and the probability rises with t, also where the two forms meet", () =>
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0.5, max: 1e4, noNaN: true }),
      (t, more, df) => {
        expect(studentTProbability(t, df) + studentTProbability(-t, df)).toBeCloseTo(1, 14);
        expect(studentTProbability(t + more, df) - studentTProbability(t, df)).toBeGreaterThan(-1e-15);
      },
    ),
  ));

it("mpmath 1.3: gamma ratio within 1e-15 relative", () => {
  for (const [x = 0, exact = 0] of fixture.gammaRatio.rows) {
    expect(off(gammaRatio(x), exact), `x ${x}`).toBeLessThan(1e-15);
  }
});

it.each([
  [0, 10, "out-of-range"],
  [1, 10, "out-of-range"],
  [Number.NaN, 10, "not-finite"],
  [0.5, 0, "out-of-range"],
  [0.5, Number.POSITIVE_INFINITY, "not-finite"],
  [1e-300, 0.5, "out-of-range"],
])("quantile refuses p %d, df %d: %s", (p, df, code) =>
  expect(() => studentTQuantile(p, df)).toThrow(expect.objectContaining({ code })),
);

it.each([
  [Number.POSITIVE_INFINITY, 10, "not-finite"],
  [1, -1, "out-of-range"],
])("probability refuses t %d, df %d: %s", (t, df, code) =>
  expect(() => studentTProbability(t, df)).toThrow(expect.objectContaining({ code })),
);
