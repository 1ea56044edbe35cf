import { expect, it } from "vitest";
import { readCsv, readCsvStream } from "../../../src/io/index.js";
import { checkRecording } from "../../../src/recording/index.js";
import { isGaitKineticsError } from "../../../src/units/index.js";
import { csvFuzzInput } from "./fuzz.js";

/** What came of an input: a recording without its samples and their sum, or the refusal. */
function outcome(read: () => ReturnType<typeof readCsv>): unknown {
  try {
    return checkRecording(read());
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
    expect(caught.message.length).toBeLessThan(1500);
    return { code: caught.code, message: caught.message, where: caught.where };
  }
}

it("1500 seeded inputs are read whole or refused by the library's own error, each in less than a second", () => {
  const codes = new Map<string, number>();
  for (let seed = 0; seed < 1500; seed++) {
    const { bytes, options } = csvFuzzInput(seed);
    const start = performance.now();
    const result = outcome(() => readCsv(bytes, options)) as { code?: string };
    expect(performance.now() - start, `seed ${seed}`).toBeLessThan(1000);
    codes.set(result.code ?? "read", (codes.get(result.code ?? "read") ?? 0) + 1);
  }
  // The inputs are no noise alone: a good part is read, and refusals are of many kinds.
  expect(codes.get("read")).toBeGreaterThan(200);
  expect(codes.size).toBeGreaterThan(8);
});

it("300 of them come to the same in parts of any size", async () => {
  for (let seed = 0; seed < 300; seed++) {
    const { bytes, options } = csvFuzzInput(seed);
    const whole = outcome(() => readCsv(bytes, options));
    const size = 1 + (seed % 97);
    async function* parts() {
      for (let from = 0; from < bytes.length; from += size) yield bytes.subarray(from, from + size);
    }
    const streamed = await readCsvStream(parts(), options).then(
      (recording) => outcome(() => recording),
      (caught: unknown) =>
        outcome(() => {
          throw caught;
        }),
    );
    expect(streamed, `seed ${seed}`).toStrictEqual(whole);
  }
});
