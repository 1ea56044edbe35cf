import fc from "fast-check";
import { expect, it } from "vitest";
import { type ReadCsvOptions, readCsv, TIME_TOLERANCE } from "../../src/io/index.js";

const read = (times: readonly (number | string)[], options: ReadCsvOptions = {}) =>
  readCsv(`time [s],up [N]\n${times.map((time) => `${time},1`).join("\n")}`, options);
const stamps = (count: number, rate: number, decimals: number, start = 0) =>
  Array.from({ length: count }, (_, i) => (start + i / rate).toFixed(decimals));

it("stamps rounded to 1 ms at 300 Hz pass, and the rate is 300 Hz", () => {
  expect(read(stamps(9000, 300, 3)).sampleRate).toBe(300);
  expect(read(stamps(9000, 300, 3, 12.345)).sampleRate).toBe(300);
});

it("property: whole rates come back from stamps of four decimals, wherever the recording starts", () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 2000 }),
      fc.double({ min: 0, max: 1000, noNaN: true }),
      fc.integer({ min: 0, max: 1000 }),
      (rate, start, extra) => {
        expect(read(stamps(2 * rate + extra, rate, 4, start)).sampleRate).toBe(rate);
      },
    ),
    { numRuns: 40, seed: 20 },
  ));

it("a rate that is no whole number stays so", () => {
  expect(read(stamps(600, 59.94, 6)).sampleRate).toBeCloseTo(59.94, 4);
  expect(read([0, 0.4, 0.8]).sampleRate).toBe(2.5);
});

it("milliseconds are converted, and the first stamp is the start", () => {
  const recording = readCsv("time [ms],up [N]\n500,1\n502,2\n504,3");
  expect(recording.sampleRate).toBe(500);
  expect(recording.startTime).toBe(0.5);
});

it.each<[string, readonly number[], string]>([
  ["goes backwards", [0, 1, 2, 1.5, 4], "line 5"],
  ["stands still", [0, 1, 1, 2], "line 4"],
])("says where time %s", (way, times, where) => {
  expect(() => read(times)).toThrow(
    expect.objectContaining({
      code: "uneven-time",
      where: expect.stringContaining(where),
      message: expect.stringContaining(way),
    }),
  );
});

it.each<[string, readonly number[], string]>([
  ["with a sample missing", [0, 1, 2, 3, 5, 6, 7, 8], "line 6"],
  ["so short that it gives no rate", [0, 1e-320], "line 3"],
  ["with a pause", [0, 1, 2, 3, 40, 41, 42], "line"],
  ["of two rates", [0, 1, 2, 3, 4, 5, 5.6, 6.2, 6.8, 7.4, 8, 8.6], "line"],
])("refuses time %s", (_, times, where) => {
  expect(() => read(times)).toThrow(
    expect.objectContaining({ code: "uneven-time", where: expect.stringContaining(where) }),
  );
});

it("allows jitter up to the tolerance and no more", () => {
  const withJitter = (jitter: number) => Array.from({ length: 20 }, (_, i) => i + (i === 10 ? jitter : 0));
  expect(read(withJitter(0.99 * TIME_TOLERANCE)).sampleRate).toBe(1);
  expect(() => read(withJitter(1.01 * TIME_TOLERANCE))).toThrow(
    expect.objectContaining({ code: "uneven-time" }),
  );
});

it("a stated rate must fit the times", () => {
  expect(read(stamps(100, 100, 3), { sampleRate: 100 }).sampleRate).toBe(100);
  expect(() => read(stamps(100, 100, 3), { sampleRate: 120 })).toThrow(
    expect.objectContaining({
      code: "uneven-time",
      message: expect.stringContaining("stated rate of 120 Hz"),
    }),
  );
});

it("one row has no rate of its own", () => {
  expect(() => read([0])).toThrow(expect.objectContaining({ code: "too-short" }));
  expect(read([7], { sampleRate: 100 }).startTime).toBe(7);
});

it("without a time column the recording starts at 0", () => {
  expect(readCsv("up [N]\n1\n2", { sampleRate: 250 })).toMatchObject({ sampleRate: 250, startTime: 0 });
});
