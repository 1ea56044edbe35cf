import { describe, expect, it } from "vitest";
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

it("2026-11-25: a counter under `time [s]` was read at 1 Hz, and contacts lasted 300 s; it is refused", () => {
  const error = refusal(() => read(counts));
  expect(error).toMatchObject({ code: "missing-value", argument: "sampleRate" });
  expect(error.message).toBe(
    'line 2, column 1 "time [s]" rises by 1 from row to row, from 1 to 120, and seems to count samples; state sampleRate, in Hz, and columns: { "time": "sample" }; where it is a time, as its heading says, state the rate of 1 Hz alone',
  );
  expect(read(counts, { sampleRate: 250, columns: { time: "sample" } }).sampleRate).toBe(250);
  expect(read(counts, { sampleRate: 1 }).cautions).toEqual([]);
  // Few rows may be anything.
  expect(read(counts.slice(0, 10)).sampleRate).toBe(1);
});

describe("2026-11-25: a gap was named at the first row off a grid that it had bent itself, with advice that hides it", () => {
  const even = Array.from({ length: 2000 }, (_, i) => (i / 1000).toFixed(3));
  const gap = even.filter((_, i) => i < 1498 || i > 1698);
  const all = "give each a row with its time and blank cells, or cut the file there and take one part";

  it("the row behind it is named, and what is missing", () => {
    const error = refusal(() => read(gap));
    expect(error).toMatchObject({ code: "uneven-time", where: 'line 1500, column 1 "time [s]"' });
    expect(error.message).toBe(
      `line 1500, column 1 "time [s]": time is 0.202 s after the row above, 202 sampling periods of 0.001 s: 201 rows are missing there; ${all}`,
    );
    expect(error.values).toMatchObject({ missing: 201, gaps: 1 });
  });
  it("so it is beside a stated rate, and with several gaps the longest", () => {
    expect(refusal(() => read(gap, { sampleRate: 1000 })).where).toContain("line 1500");
    const several = even.filter((_, i) => i % 20 !== 7 && (i < 900 || i > 904));
    const error = refusal(() => read(several));
    expect(error.message).toContain("line 857,");
    expect(error.message).toMatch(/5 rows are missing there, and at \d+ other places shorter or as long/);
  });
  it("leaving the time out is offered where no step is far off, and only there", () => {
    const drifting = Array.from({ length: 400 }, (_, i) => i / 100 + (i / 100) ** 2 / 20);
    expect(refusal(() => read(drifting)).message).toContain("or leave the time out with ignore");
    const torn = Array.from({ length: 40 }, (_, i) => i + ([0, 0.4, -0.4, 0.4][i % 4] as number));
    for (const times of [gap, torn]) {
      expect(refusal(() => read(times)).message).not.toContain("ignore");
    }
    expect(refusal(() => read(torn)).message).toContain("find out what the recorder did there");
  });
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
