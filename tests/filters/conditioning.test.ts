import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { detrend, fillGaps, removeOffset } from "../../src/filters/index.js";

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
const wave = Float64Array.from({ length: 200 }, (_, i) => 100 * Math.sin(i / 12));
const holed = (...runs: [number, number][]) => {
  const samples = wave.slice();
  for (const [from, to] of runs) samples.fill(Number.NaN, from, to);
  return samples;
};
const distance = (a: Float64Array, b: Float64Array) =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number))));

describe("fillGaps", () => {
  it("fills short gaps near to the truth and says which", () => {
    const { samples, filled, left, cautions } = fillGaps(holed([50, 55], [120, 121]), 100);
    expect(distance(samples, wave)).toBeLessThan(0.03);
    expect(filled).toEqual([
      { from: 50, to: 55, duration: 0.05 },
      { from: 120, to: 121, duration: 0.01 },
    ]);
    expect(left).toEqual([]);
    expect(cautions).toEqual([]);
  });
  it("leaves long gaps and those at the ends as they are, with a caution each", () => {
    const given = holed([0, 3], [50, 61], [150, 160], [195, 200]);
    const { samples, filled, left, cautions } = fillGaps(given, 100);
    expect(filled).toEqual([{ from: 150, to: 160, duration: 0.1 }]);
    expect(left.map(({ from, to }) => [from, to])).toEqual([
      [0, 3],
      [50, 61],
      [195, 200],
    ]);
    expect(cautions.map(({ code, where }) => [code, where])).toEqual([
      ["gap", "sample 0"],
      ["gap", "sample 50"],
      ["gap", "sample 195"],
    ]);
    expect(cautions[1]?.message).toMatch(/11 samples, 0.11 s.*more than 0.1 s/);
    for (const { from, to } of left) expect(samples.slice(from, to).every(Number.isNaN)).toBe(true);
    expect(given).toEqual(holed([0, 3], [50, 61], [150, 160], [195, 200]));
  });
  it("changes no known sample, and leaves none missing that it says it filled", () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(199), fc.integer({ min: 1, max: 12 })), { maxLength: 6 }),
        fc.constantFrom("linear", "cubic", "pchip" as const),
        (runs, method) => {
          const given = holed(...runs.map(([from, length]): [number, number] => [from, from + length]));
          const { samples, filled, left } = fillGaps(given, 100, { method });
          const missing = new Set(
            [...filled, ...left].flatMap(({ from, to }) =>
              Array.from({ length: to - from }, (_, i) => from + i),
            ),
          );
          given.forEach((value, i) => {
            expect(missing.has(i)).toBe(Number.isNaN(value));
            if (!Number.isNaN(value)) expect(samples[i]).toBe(value);
          });
          for (const { from, to } of filled)
            expect(samples.slice(from, to).every(Number.isFinite)).toBe(true);
          for (const { from, to } of left) expect(samples.slice(from, to).every(Number.isNaN)).toBe(true);
        },
      ),
    ));
  it("a signal of gaps only, or without any, comes back as it is", () => {
    expect(fillGaps(new Float64Array(5).fill(Number.NaN), 100).filled).toEqual([]);
    expect(fillGaps(wave, 100).samples).toEqual(wave);
    expect(fillGaps(new Float64Array(0), 100).samples).toHaveLength(0);
  });
  it("two known samples are enough for a line whatever the method", () =>
    expect([...fillGaps(Float64Array.of(1, Number.NaN, 3), 100, { method: "pchip" }).samples]).toEqual([
      1, 2, 3,
    ]));
  it("refuses infinity, also right behind a gap, and wrong settings", () => {
    refuse(
      "not-finite",
      () => fillGaps(Float64Array.of(1, Number.NaN, Number.POSITIVE_INFINITY, 2), 100),
      /Infinity at sample 2/,
    );
    refuse("out-of-range", () => fillGaps(wave, 0));
    refuse("out-of-range", () => fillGaps(wave, 100, { longest: -1 }));
    refuse("out-of-range", () => fillGaps(wave, 100, { method: "spline" as "cubic" }));
    refuse("wrong-type", () => fillGaps([1, 2] as unknown as Float64Array, 100));
    refuse("unknown-option", () => fillGaps(wave, 100, { maximum: 1 } as object));
  });
});

describe("detrend", () => {
  it("takes out a line altogether and leaves no line in anything", () =>
    fc.assert(
      fc.property(
        fc.double({ min: -100, max: 100, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        (offset, slope) => {
          const line = wave.map((_, i) => offset + slope * i);
          expect(Math.max(...detrend(line).map(Math.abs))).toBeLessThan(1e-9);
          const added = detrend(wave.map((value, i) => value + (line[i] as number)));
          expect(distance(added, detrend(wave))).toBeLessThan(1e-9);
        },
      ),
    ));
  it("constant leaves a mean of zero; one sample becomes zero, none stays none", () => {
    const level = detrend(wave, { type: "constant" });
    expect(level.reduce((sum, value) => sum + value, 0)).toBeCloseTo(0, 9);
    expect([...detrend(Float64Array.of(5))]).toEqual([0]);
    expect(detrend(new Float64Array(0))).toHaveLength(0);
  });
  it("refuses NaN and an unknown type", () => {
    refuse("not-finite", () => detrend(Float64Array.of(1, Number.NaN)));
    refuse("out-of-range", () => detrend(wave, { type: "quadratic" as "linear" }));
  });
});

describe("removeOffset", () => {
  it("subtracts the mean of a stretch, both ends included, and says what it was", () => {
    const samples = Float64Array.of(3, 5, 700, 800);
    const { samples: level, offset } = removeOffset(samples, 100, 0, 0.01);
    expect(offset).toBe(4);
    expect([...level]).toEqual([-1, 1, 696, 796]);
    expect([...samples]).toEqual([3, 5, 700, 800]);
  });
  it("takes samples within the stretch only, also where rounding moves its ends", () => {
    expect(removeOffset(Float64Array.of(3, 5, 700), 1000, 0.0004, 0.0016).offset).toBe(5);
    const many = Float64Array.from({ length: 1000 }, (_, i) => i);
    expect(removeOffset(many, 1000, 0.3, 0.3).offset).toBe(300);
    expect(removeOffset(many, 1000, 0.1 + 0.2, 0.3).offset).toBe(300);
  });
  it("refuses stretches outside the samples or without one, and NaN", () => {
    refuse("out-of-range", () => removeOffset(wave, 100, 0, 2), /to is 2 s/);
    refuse("out-of-range", () => removeOffset(wave, 100, -1, 1), /from is -1 s/);
    refuse("out-of-range", () => removeOffset(wave, 100, 0.004, 0.006), /no sample lies/);
    refuse("out-of-range", () => removeOffset(wave, 100, 1, 0.5), /no sample lies/);
    refuse("not-finite", () => removeOffset(Float64Array.of(1, Number.NaN), 100, 0, 0.01));
  });
});
