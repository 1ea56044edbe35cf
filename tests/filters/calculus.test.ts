import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cumulativeIntegral,
  derivative,
  integral,
  integralBetween,
  savitzkyGolay,
  savitzkyGolayWeights,
  secondDerivative,
  timeNormalise,
  valueAt,
} from "../../src/filters/index.js";
import calculus from "../fixtures/filters/calculus.json" with { type: "json" };

const forty = Float64Array.from(calculus.input.slice(0, 40));
const expectClose = (got: ArrayLike<number>, wanted: readonly number[], relative = 1e-12) => {
  const scale = Math.max(...wanted.map(Math.abs));
  expect(got.length).toBe(wanted.length);
  wanted.forEach((value, i) => {
    expect(Math.abs((got[i] as number) - value)).toBeLessThanOrEqual(relative * scale);
  });
};
const refuse = (code: string, run: () => unknown) => expect(run).toThrow(expect.objectContaining({ code }));
const signal = fc
  .array(fc.double({ min: -2000, max: 2000, noNaN: true }), { minLength: 3, maxLength: 60 })
  .map((a) => Float64Array.from(a));
const part = fc.double({ min: 0, max: 1, noNaN: true });

describe("derivative", () => {
  it("exact for a parabola, ends included", () => {
    const parabola = Float64Array.from({ length: 9 }, (_, i) => i * i);
    expect([...derivative(parabola, 1)]).toEqual([0, 2, 4, 6, 8, 10, 12, 14, 16]);
  });
  it("second order: half the spacing leaves a quarter of the error, at the ends as between", () => {
    const errors = [100, 200].map((rate) => {
      const wave = Float64Array.from({ length: rate + 1 }, (_, i) => Math.sin((2 * i) / rate));
      return derivative(wave, rate).map((slope, i) => Math.abs(slope - 2 * Math.cos((2 * i) / rate)));
    }) as [Float64Array, Float64Array];
    for (const at of [0, 0.25, 1]) {
      const ratio = (errors[0][at * 100] as number) / (errors[1][at * 200] as number);
      expect(ratio).toBeGreaterThan(3.8);
      expect(ratio).toBeLessThan(4.2);
    }
  });
  it("refuses too few samples, a wrong rate, a wrong end order, NaN", () => {
    refuse("too-short", () => derivative(new Float64Array(2), 1000));
    refuse("too-short", () => derivative(new Float64Array(1), 1000, { endOrder: 1 }));
    refuse("out-of-range", () => derivative(forty, 0));
    refuse("out-of-range", () => derivative(forty, 1000, { endOrder: 3 as 2 }));
    refuse("not-finite", () => derivative(new Float64Array([0, Number.NaN, 1]), 1000));
  });
});

describe("secondDerivative", () => {
  it("exact for a cubic, ends included", () => {
    const cubic = Float64Array.from({ length: 9 }, (_, i) => i ** 3);
    expectClose(secondDerivative(cubic, 1), [0, 6, 12, 18, 24, 30, 36, 42, 48]);
  });
  it("end order 1 is the value of the neighbour", () => {
    const second = secondDerivative(forty, 1000, { endOrder: 1 });
    expect(second[0]).toBeCloseTo(second[1] as number, 6);
    expect(second[39]).toBeCloseTo(second[38] as number, 6);
  });
  it("second order: half the spacing leaves a quarter of the error, at the ends as between", () => {
    const errors = [100, 200].map((rate) => {
      const wave = Float64Array.from({ length: rate + 1 }, (_, i) => Math.sin((2 * i) / rate + 0.5));
      return secondDerivative(wave, rate).map((value, i) =>
        Math.abs(value + 4 * Math.sin((2 * i) / rate + 0.5)),
      );
    }) as [Float64Array, Float64Array];
    for (const at of [0, 0.25, 1]) {
      const ratio = (errors[0][at * 100] as number) / (errors[1][at * 200] as number);
      expect(ratio).toBeGreaterThan(3.7);
      expect(ratio).toBeLessThan(4.3);
    }
  });
  it("refuses too few samples, a wrong rate, a wrong end order, infinity", () => {
    refuse("too-short", () => secondDerivative(new Float64Array(3), 1000));
    refuse("too-short", () => secondDerivative(new Float64Array(2), 1000, { endOrder: 1 }));
    refuse("out-of-range", () => secondDerivative(forty, Number.MIN_VALUE * -1));
    refuse("out-of-range", () => secondDerivative(forty, 1000, { endOrder: 0 as 1 }));
    refuse("not-finite", () => secondDerivative(new Float64Array([0, 1, 2, Number.POSITIVE_INFINITY]), 1));
  });
});

describe("savitzkyGolay", () => {
  const shape = fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 3 }))
    .map(([half, degree, derivative]) => ({
      window: 2 * half + 1,
      degree: Math.min(degree, 2 * half),
      derivative,
    }))
    .map((one) => ({ ...one, derivative: Math.min(one.derivative, one.degree) }));
  it("published table (Savitzky & Golay 1964): five points, quadratic: -3 12 17 12 -3 over 35", () =>
    expectClose(
      savitzkyGolayWeights({ window: 5, degree: 2 }),
      [-3, 12, 17, 12, -3].map((n) => n / 35),
      1e-15,
    ));
  it("gives a polynomial and its derivatives exactly, ends included", () =>
    fc.assert(
      fc.property(
        shape,
        fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 7, maxLength: 7 }),
        (one, coefficients) => {
          const used = coefficients.slice(0, one.degree + 1);
          const at = (x: number) =>
            used.reduce((sum, c, k) => {
              let factor = c;
              for (let d = 0; d < one.derivative; d++) factor *= k - d;
              return sum + (k < one.derivative ? 0 : factor * x ** (k - one.derivative));
            }, 0);
          const value = (x: number) => used.reduce((sum, c, k) => sum + c * x ** k, 0);
          const time = (i: number) => (i - 20) / 10;
          const samples = Float64Array.from({ length: 41 }, (_, i) => value(time(i)));
          const wanted = Array.from(samples, (_, i) => at(time(i)));
          const got = savitzkyGolay(samples, { ...one, sampleRate: 10 });
          wanted.forEach((w, i) => {
            expect(Math.abs((got[i] as number) - w)).toBeLessThan(
              1e-7 * Math.max(1, ...wanted.map(Math.abs)),
            );
          });
        },
      ),
    ));
  it("weights of the value sum to 1, those of a derivative to 0", () =>
    fc.assert(
      fc.property(shape, (one) => {
        const sum = savitzkyGolayWeights(one).reduce((total, weight) => total + weight, 0);
        expect(sum).toBeCloseTo(one.derivative === 0 ? 1 : 0, 10);
      }),
    ));
  it("error order: degree 2 leaves a quarter of the error of the first derivative at half the spacing", () => {
    const error = (rate: number) => {
      const wave = Float64Array.from({ length: 2 * rate + 1 }, (_, i) => Math.sin(i / rate));
      const slope = savitzkyGolay(wave, { window: 7, degree: 2, derivative: 1, sampleRate: rate });
      return Math.abs((slope[rate] as number) - Math.cos(1));
    };
    expect(error(100) / error(200)).toBeCloseTo(4, 1);
  });
  it("refuses windows and degrees that do not go together", () => {
    const run = (options: object) => () => savitzkyGolay(forty, { window: 7, degree: 2, ...options });
    refuse("out-of-range", run({ window: 6 }));
    refuse("out-of-range", run({ window: 1 }));
    refuse("out-of-range", run({ degree: 7 }));
    refuse("out-of-range", run({ degree: -1 }));
    refuse("out-of-range", run({ derivative: 3 }));
    refuse("out-of-range", run({ sampleRate: 0 }));
    refuse("too-short", run({ window: 41 }));
    refuse("unknown-option", run({ mode: "interp" }));
    refuse("wrong-type", () =>
      savitzkyGolay(forty, undefined as unknown as { window: number; degree: number }),
    );
    refuse("not-finite", () => savitzkyGolay(new Float64Array(9).fill(Number.NaN), { window: 7, degree: 2 }));
    refuse("out-of-range", () => savitzkyGolayWeights({ window: 7, degree: 2, position: 4 }));
  });
});

describe("cumulativeIntegral", () => {
  it("second order: half the spacing leaves a quarter of the error", () => {
    const [coarse, fine] = [100, 200].map((rate) => {
      const wave = Float64Array.from({ length: rate + 1 }, (_, i) => Math.exp(i / rate));
      return (cumulativeIntegral(wave, rate)[rate] as number) - (Math.E - 1);
    }) as [number, number];
    expect(coarse / fine).toBeCloseTo(4, 3);
  });
  it("Simpson's rule: half the spacing leaves a sixteenth of the error, and a cubic is exact", () => {
    const errors = [20, 40].map((rate) => {
      const wave = Float64Array.from({ length: rate + 1 }, (_, i) => Math.exp(i / rate));
      const whole = integral(wave, rate, { rule: "simpson" });
      expect(cumulativeIntegral(wave, rate, { rule: "simpson" })[rate]).toBe(whole);
      return whole - (Math.E - 1);
    }) as [number, number];
    expect(errors[0] / errors[1]).toBeCloseTo(16, 1);
    const cubic = Float64Array.from({ length: 7 }, (_, i) => i ** 3);
    expect(integral(cubic, 1, { rule: "simpson" })).toBeCloseTo(6 ** 4 / 4, 10);
  });
  it("refuses too few samples for Simpson's rule, and an unknown rule", () => {
    refuse("too-short", () => cumulativeIntegral(new Float64Array(2), 1, { rule: "simpson" }));
    refuse("too-short", () => integral(new Float64Array(0), 1, { rule: "simpson" }));
    refuse("out-of-range", () => integral(forty, 1000, { rule: "boole" as "simpson" }));
    refuse("not-finite", () => integral(new Float64Array([1, Number.NaN]), 1));
    expect(integral(new Float64Array(0), 1)).toBe(0);
  });
  it("undoes the derivative of a straight line", () => {
    const line = Float64Array.from({ length: 50 }, (_, i) => 7 * i);
    expectClose(cumulativeIntegral(derivative(line, 100), 100), [...line]);
  });
  it("gives nothing for nothing and refuses NaN and a wrong rate", () => {
    expect(cumulativeIntegral(new Float64Array(0), 1)).toHaveLength(0);
    refuse("not-finite", () => cumulativeIntegral(new Float64Array([Number.NaN]), 1));
    refuse("out-of-range", () => cumulativeIntegral(forty, -1));
  });
});

describe("valueAt", () => {
  it("gives samples at their times and the line between them, up to both ends", () => {
    const samples = new Float64Array([5, 7, 3]);
    expect([0, 0.1, 0.2].map((time) => valueAt(samples, 10, time))).toEqual([5, 7, 3]);
    expect(valueAt(samples, 10, 0.15)).toBeCloseTo(5, 12);
  });
  it("takes a time that rounding put behind the last sample", () => {
    const samples = Float64Array.from({ length: 3_600_001 }, (_, i) => i);
    expect(valueAt(samples, 1000, 3600 + 1e-12)).toBe(3_600_000);
  });
  it.each([-0.001, 0.201, Number.POSITIVE_INFINITY, Number.NaN])("refuses the time %d", (time) =>
    expect(() => valueAt(new Float64Array([5, 7, 3]), 10, time)).toThrow(/time is/),
  );
  it("refuses no samples, a gap and a wrong rate", () => {
    refuse("out-of-range", () => valueAt(new Float64Array(0), 10, 0));
    refuse("not-finite", () => valueAt(new Float64Array([1, Number.NaN]), 10, 0.05));
    refuse("out-of-range", () => valueAt(forty, 0, 0));
  });
});

describe("integralBetween", () => {
  it("NumPy's trapezoid over the whole", () =>
    expect(integralBetween(forty, 1000, 0, 0.039)).toBeCloseTo(calculus.trapezoid, 12));
  it("by hand: a line from +1 to -3 over one second has 1/8 above zero and 9/8 below", () => {
    const line = new Float64Array([1, -3]);
    const area = (p: "all" | "positive" | "negative" | "absolute") =>
      integralBetween(line, 1, 0, 1, { part: p });
    expect(area("positive")).toBeCloseTo(1 / 8, 15);
    expect(area("negative")).toBeCloseTo(-9 / 8, 15);
    expect(area("absolute")).toBeCloseTo(10 / 8, 15);
    expect(area("all")).toBeCloseTo(-1, 15);
    expect(integralBetween(line, 1, 0.25, 0.5, { part: "all" })).toBeCloseTo(-1 / 8, 15);
    expect(integralBetween(line, 1, 0.125, 0.375, { part: "positive" })).toBeCloseTo(1 / 32, 15);
  });
  it("law: adjoining stretches add up, part by part", () =>
    fc.assert(
      fc.property(
        signal,
        part,
        part,
        part,
        fc.constantFrom("all", "positive", "negative", "absolute" as const),
        (x, a, b, c, which) => {
          const [from, middle, to] = [a, b, c]
            .sort((p, q) => p - q)
            .map((p) => (p * (x.length - 1)) / 100) as [number, number, number];
          const area = (p: number, q: number) => integralBetween(x, 100, p, q, { part: which });
          expect(area(from, middle) + area(middle, to)).toBeCloseTo(area(from, to), 8);
        },
      ),
    ));
  it("law: positive and negative make the whole, and the mirrored signal changes their places", () =>
    fc.assert(
      fc.property(signal, part, part, (x, a, b) => {
        const [from, to] = [a, b].sort((p, q) => p - q).map((p) => (p * (x.length - 1)) / 100) as [
          number,
          number,
        ];
        const area = (y: Float64Array, p: "all" | "positive" | "negative" | "absolute") =>
          integralBetween(y, 100, from, to, { part: p });
        const mirrored = x.map((value) => -value);
        expect(area(x, "positive") + area(x, "negative")).toBeCloseTo(area(x, "all"), 9);
        expect(area(x, "positive") - area(x, "negative")).toBeCloseTo(area(x, "absolute"), 9);
        expect(area(mirrored, "positive")).toBeCloseTo(-area(x, "negative"), 9);
        expect(area(x, "positive")).toBeGreaterThanOrEqual(0);
        expect(area(x, "negative")).toBeLessThanOrEqual(0);
      }),
    ));
  it("agrees with a fine sum over the interpolated curve", () => {
    const fine = Array.from({ length: 100_001 }, (_, i) =>
      valueAt(forty, 1000, 0.00123 + (i * 0.03) / 100_000),
    );
    const sum = fine.reduce(
      (total, value, i) => total + Math.max(value, 0) * (i === 0 || i === 100_000 ? 0.5 : 1),
      0,
    );
    expect(integralBetween(forty, 1000, 0.00123, 0.03123, { part: "positive" })).toBeCloseTo(
      (sum * 0.03) / 100_000,
      8,
    );
  });
  it("is nothing over nothing, and refuses what it cannot integrate", () => {
    expect(integralBetween(forty, 1000, 0.0105, 0.0105)).toBe(0);
    refuse("out-of-range", () => integralBetween(forty, 1000, 0.02, 0.01));
    refuse("out-of-range", () => integralBetween(forty, 1000, 0, 0.04));
    refuse("out-of-range", () => integralBetween(forty, 1000, -0.01, 0.01));
    refuse("out-of-range", () => integralBetween(forty, 1000, 0, 0.01, { part: "upper" as "all" }));
    refuse("not-finite", () => integralBetween(new Float64Array([0, 1, Number.NaN, 1, 0]), 1, 0, 4));
    refuse("not-finite", () =>
      integralBetween(new Float64Array([0, 1, Number.POSITIVE_INFINITY, 1, 0]), 1, 0, 4, {
        part: "negative",
      }),
    );
  });
});

describe("timeNormalise", () => {
  it("ends exactly on the ends, and has 101 points unless told otherwise", () => {
    const curve = timeNormalise(forty, 1000, 0.0035, 0.0301);
    expect(curve).toHaveLength(101);
    expect(curve[0]).toBe(valueAt(forty, 1000, 0.0035));
    expect(curve[100]).toBe(valueAt(forty, 1000, 0.0301));
    expect(timeNormalise(forty, 1000, 0, 0.039, 40)).toEqual(forty);
  });
  it("refuses fewer than 2 points and a stretch that does not rise", () => {
    refuse("out-of-range", () => timeNormalise(forty, 1000, 0, 0.03, 1));
    refuse("out-of-range", () => timeNormalise(forty, 1000, 0.03, 0.03));
    refuse("out-of-range", () => timeNormalise(forty, 1000, 0, 1));
  });
});
