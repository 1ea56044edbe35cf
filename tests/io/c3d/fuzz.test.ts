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

it("what is read of 500 of them can be written and reads back with the same numbers, or is refused", () => {
  let written = 0;
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
      for (const [k, { x }] of file.points.entries())
        expect(back.points[k]?.x.map(Number.isNaN as never)).toEqual(x.map(Number.isNaN as never));
    });
  }
  expect(written).toBeGreaterThan(100);
});
