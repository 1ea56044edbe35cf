import { expect, it } from "vitest";
import { parseC3d, readC3d, writeC3d } from "../../../src/io/index.js";
import { checkRecording } from "../../../src/recording/index.js";
import { isGaitKineticsError } from "../../../src/units/index.js";
import { c3dFuzzInput } from "./fuzz.js";

/** What came of it: `read`, or the code of the refusal, whose sentence is one line. */
function outcome(act: () => void): string {
  try {
    act();
    return "read";
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
    expect(caught.message.length).toBeLessThan(1500);
    return caught.code;
  }
}

it("1500 seeded inputs are read whole or refused by the library's own error, each in less than a second", () => {
  const codes = new Map<string, number>();
  for (let seed = 0; seed < 1500; seed++) {
    const { bytes, options } = c3dFuzzInput(seed);
    const start = performance.now();
    const result = outcome(() => checkRecording(readC3d(bytes, options)));
    expect(performance.now() - start, `seed ${seed}`).toBeLessThan(1000);
    codes.set(result, (codes.get(result) ?? 0) + 1);
  }
  // The inputs are no noise alone: a good part is read, and refusals are of several kinds.
  expect(codes.get("read")).toBeGreaterThan(300);
  expect(codes.get("unreadable-file")).toBeGreaterThan(300);
  expect([...codes.keys()]).toEqual(expect.arrayContaining(["unknown-axes", "conflict"]));
});

/** Largest distance of numbers that went through 32 bits, in units of what those bits hold; infinite where only one is NaN. */
function roundings(one: Float64Array, two: Float64Array | undefined, offset = 0): number {
  if (one.length !== two?.length) return Number.POSITIVE_INFINITY;
  let largest = 0;
  for (const [i, a] of one.entries()) {
    const b = two[i] as number;
    if (Object.is(a, b) || a === b) continue;
    // A stored number is value ÷ scale + offset: 24 bits of that sum; below 2^-120 the DEC form has no more numbers.
    const size = Math.abs(a - b) / (2 ** -23 * (Math.abs(a) + Math.abs(offset)) + 2 ** -120);
    if (!(size <= largest)) largest = Number.isNaN(size) ? Number.POSITIVE_INFINITY : size;
  }
  return largest;
}

// 2026-11-25: only the counts and the gaps of x were compared, so that wrong numbers would have passed.
it("what is read of 500 of them can be written and reads back with the same numbers, or is refused", () => {
  let written = 0;
  let numbers = 0;
  for (let seed = 0; seed < 500; seed++) {
    const { bytes } = c3dFuzzInput(seed);
    outcome(() => {
      const file = parseC3d(bytes);
      const back = parseC3d(writeC3d(file, { storage: "float" }));
      written++;
      expect(
        [back.frames, back.firstFrame, back.points.length, back.analogue.channels.length],
        `seed ${seed}`,
      ).toEqual([file.frames, file.firstFrame, file.points.length, file.analogue.channels.length]);
      for (const [k, point] of file.points.entries()) {
        for (const axis of ["x", "y", "z"] as const) {
          const distance = roundings(point[axis], back.points[k]?.[axis]);
          expect(distance, `seed ${seed}, point ${k + 1}, ${axis}`).toBeLessThanOrEqual(1);
          numbers += point[axis].length;
        }
      }
      for (const [k, { samples, scale, offset }] of file.analogue.channels.entries()) {
        const shift = offset * scale * file.analogue.generalScale;
        const distance = roundings(samples, back.analogue.channels[k]?.samples, shift);
        expect(distance, `seed ${seed}, channel ${k + 1}`).toBeLessThanOrEqual(2);
        numbers += samples.length;
      }
    });
  }
  expect(written).toBeGreaterThan(100);
  expect(numbers).toBeGreaterThan(10_000);
});
