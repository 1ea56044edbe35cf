import { describe, expect, it } from "vitest";
import {
  cutoffFromSampleRate,
  lowPass,
  residualAnalysis,
  whitenessAnalysis,
} from "../../src/filters/index.js";
import fixture from "../fixtures/filters/cutoffs.json" with { type: "json" };

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
const marker = Float64Array.from(fixture.cases[0]?.input ?? []);
const white = Float64Array.from({ length: 500 }, (_, i) => (((i * 7919 + 13 * i * i) % 1009) - 504) / 300);
/** Noise that was filtered before it was recorded, on a slow wave. */
const coloured = lowPass(white, { cutoff: 5, sampleRate: 100 }).map((value, i) => value + Math.sin(i / 40));

describe("residualAnalysis", () => {
  it("finds the noise that was put in, within 10 %, and a cutoff where the residual is the noise", () => {
    for (const { input, sampleRate, noise, fitRange } of fixture.cases) {
      const found = residualAnalysis(Float64Array.from(input), sampleRate, {
        fitRange: fitRange as [number, number],
      });
      expect(Math.abs(found.noise / noise - 1)).toBeLessThan(0.1);
      expect(found.cautions).toEqual([]);
      const next = found.cutoffs.findIndex((cutoff) => cutoff >= (found.cutoff as number));
      expect(found.residuals[next]).toBeLessThanOrEqual(found.noise);
      expect(found.residuals[next - 1]).toBeGreaterThan(found.noise);
    }
  });
  it("is plain data", () => {
    const found = residualAnalysis(marker, 100);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(found.fitRange).toEqual([10.5, 20]);
  });
  it("scales: twice the signal has twice the noise and the same cutoff", () => {
    const [one, two] = [marker, marker.map((value) => 2 * value)].map((x) => residualAnalysis(x, 100));
    expect((two?.noise as number) / (one?.noise as number)).toBeCloseTo(2, 10);
    expect(two?.cutoff).toBeCloseTo(one?.cutoff as number, 8);
  });
  it("warns where the line is not straight: a range that still holds signal", () => {
    const { cautions } = residualAnalysis(marker, 100, {
      cutoffs: [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4],
      fitRange: [0.5, 4],
    });
    expect(cautions.map(({ code }) => code)).toContain("weak-evidence");
  });
  it("warns where the cutoff lies within the range of the noise, or is the lowest tried", () => {
    const within = residualAnalysis(marker, 100, { fitRange: [3, 20] });
    expect(within.cutoff as number).toBeGreaterThan(3);
    expect(within.cautions.map(({ message }) => message).join()).toMatch(/within the range/);
    const lowest = residualAnalysis(marker, 100, { cutoffs: [9, 12, 14, 16, 18, 20], fitRange: [12, 20] });
    expect(lowest.cautions.map(({ message }) => message).join()).toMatch(/lowest cutoff/);
  });
  it("refuses cutoffs that do not rise, a range with too few, NaN", () => {
    refuse("out-of-range", () => residualAnalysis(marker, 100, { cutoffs: [5, 4, 6] }), /cutoffs\[1\]/);
    refuse("out-of-range", () => residualAnalysis(marker, 100, { cutoffs: [5, 20, 50] }), /cutoffs\[2\]/);
    refuse("wrong-type", () => residualAnalysis(marker, 100, { cutoffs: [5] }));
    refuse("out-of-range", () => residualAnalysis(marker, 100, { fitRange: [19.9, 20] }), /at least 3/);
    refuse("out-of-range", () => residualAnalysis(marker, 100, { order: 3 }), /even/);
    refuse("too-short", () => residualAnalysis(new Float64Array(5), 100));
    refuse("not-finite", () => residualAnalysis(Float64Array.of(1, Number.NaN), 100));
    refuse("unknown-option", () => residualAnalysis(marker, 100, { range: [1, 2] } as object));
  });
});

describe("whitenessAnalysis", () => {
  it("chooses a cutoff whose residual is white by its own measure, on signals with white noise", () => {
    for (const { input, sampleRate } of fixture.cases) {
      const found = whitenessAnalysis(Float64Array.from(input), sampleRate);
      expect(found.cautions).toEqual([]);
      expect(Math.min(...found.deviations)).toBeLessThan(found.whiteLevel);
      expect(found.deviations[found.cutoffs.indexOf(found.cutoff)]).toBe(Math.min(...found.deviations));
    }
  });
  it("warns where there is no white noise to find, and where the best is the last tried", () => {
    expect(whitenessAnalysis(white, 100).cautions).toEqual([]);
    const messages = whitenessAnalysis(coloured, 100).cautions.map(({ message }) => message);
    expect(messages).toEqual([
      "no cutoff leaves a residual like white noise",
      "the best cutoff is the highest tried",
    ]);
  });
  it("refuses a signal without any change, too many lags, NaN", () => {
    refuse("out-of-range", () => whitenessAnalysis(new Float64Array(100), 100), /takes nothing out/);
    refuse("out-of-range", () => whitenessAnalysis(marker, 100, { lags: 0 }));
    refuse("out-of-range", () => whitenessAnalysis(marker, 100, { lags: 400 }));
    refuse("not-finite", () => whitenessAnalysis(Float64Array.of(1, Number.NaN), 100));
    refuse("unknown-option", () => whitenessAnalysis(marker, 100, { lag: 3 } as object));
  });
});

describe("cutoffFromSampleRate", () => {
  it.each([
    [50, 3.475],
    [100, 6.8],
    [240, 15.312],
    [1000, 41],
  ])("Yu et al. 1999 (coefficients from memory): %i Hz gives %d Hz, with a caution", (rate, wanted) => {
    const { cutoff, cautions } = cutoffFromSampleRate(rate);
    expect(cutoff).toBeCloseTo(wanted, 10);
    expect(cautions.map(({ code }) => code)).toEqual(["weak-evidence"]);
  });
  it("refuses rates at which the parabola turns down", () => {
    refuse("out-of-range", () => cutoffFromSampleRate(1184), /turns down/);
    refuse("out-of-range", () => cutoffFromSampleRate(0));
  });
});
