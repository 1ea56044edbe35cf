import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { halfSineAgreement } from "../../src/models/index.js";

const over = (force: (x: number) => number, count = 20_001): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => force(i / (count - 1)));
const agreement = (force: (x: number) => number): number =>
  halfSineAgreement(over(force), 20_000, 0, 1) as number;

describe("definition by hand (half sine with the peak (π/2) × mean force: Morin et al. 2005, J Appl Biomech 21:167)", () => {
  it("a triangle: R² = 1 − 12 (1/3 + π²/32 − 2/π) = 0.9383", () => {
    const exact = 1 - 12 * (1 / 3 + Math.PI ** 2 / 32 - 2 / Math.PI);
    expect(exact).toBeCloseTo(0.9383, 4);
    // A sum over samples counts the two end samples whole: 1e-5 at 20 001 of them.
    expect(agreement((x) => 1 - Math.abs(2 * x - 1))).toBeCloseTo(exact, 4);
  });
  it("a parabola 4x(1 − x): its mean 2/3, its variance 4/45", () => {
    // ∫(4x − 4x² − (π/3) sin πx)² = 8/15 + π²/18 − (2π/3)(16/π³)
    const exact = 1 - (45 / 4) * (8 / 15 + Math.PI ** 2 / 18 - 32 / (3 * Math.PI ** 2));
    expect(exact).toBeCloseTo(0.99, 3);
    expect(agreement((x) => 4 * x * (1 - x))).toBeCloseTo(exact, 4);
  });
  it("is below 0 where a constant fits better: two peaks with a deep trough between", () => {
    expect(agreement((x) => Math.sin(3 * Math.PI * x) ** 2)).toBeLessThan(0);
  });
});

it("property: 1 for any half sine, wherever between samples it begins and ends", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 100, max: 3000, noNaN: true }),
      fc.double({ min: 0.1, max: 0.4, noNaN: true }),
      fc.double({ min: 0, max: 0.1, noNaN: true }),
      (peak, duration, start) => {
        const samples = Float64Array.from({ length: 600 }, (_, i) => {
          const x = (i / 1000 - start) / duration;
          return x >= 0 && x <= 1 ? peak * Math.sin(Math.PI * x) : 0;
        });
        expect(halfSineAgreement(samples, 1000, start, start + duration)).toBeCloseTo(1, 4);
      },
    ),
  ));

it("property: neither scale nor rate of the force matters", () =>
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (k) => {
      const triangle = (x: number): number => k * (1 - Math.abs(2 * x - 1));
      expect(agreement(triangle)).toBeCloseTo(
        agreement((x) => triangle(x) / k),
        10,
      );
    }),
  ));

it("is null where the force does not change, or no two samples lie in contact", () => {
  expect(halfSineAgreement(new Float64Array(10).fill(5), 10, 0, 0.9)).toBeNull();
  expect(halfSineAgreement(Float64Array.of(0, 5, 0), 10, 0.05, 0.15)).toBeNull();
  expect(halfSineAgreement(Float64Array.of(0, 5, 0), 10, 0.11, 0.15)).toBeNull();
});

it("refuses a span that does not rise", () =>
  expect(() => halfSineAgreement(new Float64Array(10), 10, 0.5, 0.5)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  ));
