import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { powerFrequency, powerSpectralDensity } from "../../src/filters/index.js";
import { powerTransform } from "../../src/filters/spectrum/powerTransform.js";

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
const noise = Float64Array.from({ length: 3000 }, (_, i) => (((i * 7919) % 1009) - 504) / 300);

describe("powerTransform", () => {
  it("any length, a power of two or not, is the definition summed out, for two inputs at once", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 1, maxLength: 70 }),
        (values) => {
          const n = values.length;
          const power = new Float64Array(Math.floor(n / 2) + 1);
          const other = values.map((value, i) => 3 - value * (i % 4));
          powerTransform(n)(Float64Array.from(values), Float64Array.from(other), power);
          power.forEach((got, k) => {
            const wanted = [values, other].map((input) => {
              const turn = (i: number) => (2 * Math.PI * ((i * k) % n)) / n;
              const real = input.reduce((sum, value, i) => sum + value * Math.cos(turn(i)), 0);
              const imaginary = input.reduce((sum, value, i) => sum - value * Math.sin(turn(i)), 0);
              return real * real + imaginary * imaginary;
            }) as [number, number];
            expect(Math.abs(got - wanted[0] - wanted[1])).toBeLessThan(1e-8);
          });
        },
      ),
    ));
});

describe("powerSpectralDensity", () => {
  it("law (Parseval): the density of one rectangular segment integrates to the mean square", () =>
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 500 }), (count) => {
        const samples = noise.slice(0, count);
        const { density } = powerSpectralDensity(samples, 250, {
          segmentLength: count,
          window: "rectangular",
          detrend: "none",
        });
        const power = (density.reduce((sum, value) => sum + value, 0) * 250) / count;
        expect(power / (samples.reduce((sum, value) => sum + value * value, 0) / count)).toBeCloseTo(1, 9);
      }),
    ));
  it("scaled as spectrum a sine on a bin has half its squared amplitude there, whatever the window", () => {
    const sine = Float64Array.from({ length: 1000 }, (_, i) => 3 * Math.sin((2 * Math.PI * 20 * i) / 1000));
    for (const window of ["hann", "hamming", "blackman", "rectangular"] as const) {
      const { density, frequency } = powerSpectralDensity(sine, 1000, {
        segmentLength: 500,
        window,
        scaling: "spectrum",
      });
      expect(frequency[10]).toBe(20);
      expect(density[10]).toBeCloseTo(4.5, 9);
    }
  });
  it("law: an offset changes nothing once the line is taken out, however large", () => {
    // Whole numbers and a power of two of them, so that adding the offset and taking the mean round nothing.
    const whole = Float64Array.from({ length: 4096 }, (_, i) => ((i * 7919) % 1009) - 504);
    const options = { detrend: "linear", segmentLength: 4096 } as const;
    const plain = powerSpectralDensity(whole, 250, options);
    const lifted = powerSpectralDensity(
      whole.map((value) => value + 2 ** 40),
      250,
      options,
    );
    expect(lifted.density).toEqual(plain.density);
  });
  it("filling up with zeros changes the grid, not the density at common frequencies", () => {
    const plain = powerSpectralDensity(noise, 250, { segmentLength: 100 });
    const fine = powerSpectralDensity(noise, 250, { segmentLength: 100, transformLength: 400 });
    plain.density.forEach((value, k) => {
      // One-sided doubling leaves out half the rate; both grids hold it.
      expect(fine.density[4 * k]).toBeCloseTo(value, 12);
    });
  });
  it("says when there are fewer samples than a segment", () => {
    const { segmentLength, segments, cautions } = powerSpectralDensity(noise.slice(0, 100), 250);
    expect([segmentLength, segments]).toEqual([100, 1]);
    expect(cautions.map(({ code }) => code)).toEqual(["too-short"]);
    expect(powerSpectralDensity(noise, 250).cautions).toEqual([]);
  });
  it("refuses no samples, NaN and settings out of range", () => {
    const run = (options: object) => () => powerSpectralDensity(noise, 250, options);
    refuse("too-short", () => powerSpectralDensity(new Float64Array(0), 250));
    refuse("not-finite", () => powerSpectralDensity(Float64Array.of(1, Number.NaN), 250));
    refuse("out-of-range", () => powerSpectralDensity(noise, 0));
    refuse("out-of-range", run({ segmentLength: 0 }));
    refuse("out-of-range", run({ segmentLength: 10.5 }));
    refuse("out-of-range", run({ overlap: 1 }));
    refuse("out-of-range", run({ window: "kaiser" }), /"hann" or/);
    refuse("out-of-range", run({ detrend: "quadratic" }));
    refuse("out-of-range", run({ scaling: "amplitude" }));
    refuse("out-of-range", run({ segmentLength: 256, transformLength: 255 }));
    refuse("unknown-option", run({ nperseg: 256 }));
  });
});

describe("powerFrequency", () => {
  const spectrum = (density: number[]) => ({
    frequency: Float64Array.from(density, (_, k) => k),
    density: Float64Array.from(density),
    segments: 1,
    segmentLength: 2 * density.length,
    cautions: [],
  });
  it("rises with the share and lies within the frequencies", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.001, max: 9, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (density) => {
          const found = [0.01, 0.5, 0.95, 0.99, 1].map((share) => powerFrequency(spectrum(density), share));
          expect(found).toEqual([...found].sort((a, b) => a - b));
          expect(found[4]).toBeLessThanOrEqual(density.length - 1);
        },
      ),
    ));
  it("by hand: half of 1, 2, 1 lies below 0.5 Hz", () =>
    expect(powerFrequency(spectrum([1, 2, 1]), 0.5)).toBe(0.5));
  it("refuses a share outside 0 to 1 and a spectrum without power", () => {
    refuse("out-of-range", () => powerFrequency(spectrum([1]), 0));
    refuse("out-of-range", () => powerFrequency(spectrum([1]), 99));
    refuse("out-of-range", () => powerFrequency(spectrum([0, 0]), 0.5));
  });
});
