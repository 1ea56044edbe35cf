import { expect, it } from "vitest";
import { type ReadCsvOptions, readCsv } from "../../../src/io/index.js";
import { refusal } from "./fixtures.js";

const read = (times: readonly (number | string)[], options: ReadCsvOptions = {}, name = "time [s]") =>
  readCsv(`${name},up [N]\n${times.map((time) => `${time},1`).join("\n")}`, options);
const stamps = (count: number, rate: number, decimals: number) =>
  Array.from({ length: count }, (_, i) => (i / rate).toFixed(decimals));
const codes = (times: readonly (number | string)[], options: ReadCsvOptions) =>
  read(times, options).cautions.map(({ code }) => code);

it("a stated rate counts before stamps that are too coarse to tell samples apart, with a caution", () => {
  const times = stamps(300, 1000, 2);
  expect(refusal(() => read(times)).code).toBe("uneven-time");
  const recording = read(times, { sampleRate: 1000 });
  expect(recording.sampleRate).toBe(1000);
  expect(recording.cautions).toEqual([
    expect.objectContaining({ code: "coarse-time", values: { digit: 0.01 } }),
  ]);
});

it("stamps that add up a rounded step drift from the stated rate, and are said to", () => {
  const times = Array.from({ length: 900 }, (_, i) => (i * 0.0143).toFixed(4));
  expect(codes(times, { sampleRate: 70 })).toEqual(["rate-over-time"]);
  expect(codes(times.slice(0, 100), { sampleRate: 70 })).toEqual([]);
});

it.each<[string, readonly (number | string)[], number]>([
  ["another rate", stamps(300, 100, 4), 105],
  ["a sample missing", stamps(300, 100, 4).filter((_, i) => i !== 50), 100],
  ["a long pause in coarse stamps", [...stamps(300, 1000, 2), "5.00"], 1000],
  ["coarse stamps of another rate", stamps(300, 900, 2), 1000],
  ["a step back", ["0", "0.01", "0.005", "0.03"], 100],
])("refuses %s beside a stated rate", (_, times, sampleRate) => {
  expect(refusal(() => read(times, { sampleRate }))).toMatchObject({ code: "uneven-time", argument: "time" });
});

const counts = Array.from({ length: 120 }, (_, i) => i + 1);

it("a counter is refused as a time where the caller alone says that it is one", () => {
  const error = refusal(() => read(counts, { units: { Time: "s" } }, "Time"));
  expect(error).toMatchObject({ code: "missing-value", argument: "sampleRate" });
  expect(error.message).toContain("seems to count samples");
});

it("a counter that the file itself calls seconds passes, with a caution", () => {
  const recording = read(counts);
  expect(recording.sampleRate).toBe(1);
  expect(recording.cautions.map(({ code }) => code)).toEqual(["time-counts-samples"]);
  expect(read(counts, { sampleRate: 1 }).cautions).toEqual([]);
});

it("milliseconds that rise by 1 are no counter", () => {
  const recording = read(counts, {}, "time [ms]");
  expect(recording.sampleRate).toBe(1000);
  expect(recording.cautions).toEqual([]);
});

it("a counter stated as one is checked and gives neither time nor rate", () => {
  const options = { columns: { Frame: "sample" } };
  const recording = read(counts, { ...options, sampleRate: 250 }, "Frame");
  expect(recording).toMatchObject({ sampleRate: 250, startTime: 0 });
  expect(refusal(() => read(counts, options, "Frame")).code).toBe("missing-value");
  for (const odd of [
    [1, 2, 4],
    [1, 2, 2],
    [1.5, 2.5],
    [0, "", 2],
  ]) {
    expect(refusal(() => read(odd, { ...options, sampleRate: 250 }, "Frame"))).toMatchObject({
      code: "uneven-time",
      where: expect.stringContaining('column 1 "Frame"'),
    });
  }
  const both = readCsv("sample,time [s],up [N]\n7,0.5,1\n8,0.6,1");
  expect(both).toMatchObject({ startTime: 0.5, sampleRate: 10 });
});
