import { expect, it } from "vitest";
import { readMotionBids } from "../../../src/io/index.js";
import { checkRecording } from "../../../src/recording/index.js";
import { isGaitKineticsError } from "../../../src/units/index.js";
import { bidsFuzzInput } from "./fuzz.js";

it("1500 sets of changed files are read or refused by the library's own error, in one line", () => {
  const codes = new Map<string, number>();
  for (let seed = 0; seed < 1500; seed++) {
    const { bytes, options } = bidsFuzzInput(seed);
    let code = "read";
    try {
      const recording = readMotionBids(bytes, options);
      expect(checkRecording(recording)).toBe(recording);
    } catch (caught) {
      if (!isGaitKineticsError(caught)) throw new Error(`seed ${seed}`, { cause: caught });
      expect(caught.message, `seed ${seed}`).not.toMatch(/[\r\n]/);
      expect(caught.message.length, `seed ${seed}`).toBeLessThan(1000);
      ({ code } = caught);
    }
    codes.set(code, (codes.get(code) ?? 0) + 1);
  }
  // The inputs reach beyond the first check: some are read, and the others are refused for many reasons.
  expect(codes.get("read")).toBeGreaterThan(100);
  expect([...codes.keys()]).toEqual(
    expect.arrayContaining([
      "unreadable-file",
      "missing-value",
      "wrong-type",
      "unknown-unit",
      "unknown-axes",
      "too-short",
    ]),
  );
});

it("the same seed makes the same input", () => expect(bidsFuzzInput(7)).toEqual(bidsFuzzInput(7)));
