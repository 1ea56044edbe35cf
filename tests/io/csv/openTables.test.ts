import { expect, it } from "vitest";
import { readCsv } from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { cop, fixtureBytes, force, markerOf, other } from "./fixtures.js";

const FRAME = { x: "forward", y: "up", z: "right" } as const;

/** Times, interpolated, at which a series crosses a level, upward or downward. */
function crossings(samples: readonly number[], level: number, rate: number, upward: boolean): number[] {
  return samples.flatMap((value, i) => {
    const before = samples[i - 1];
    if (before === undefined || before < level === value < level || value > level !== upward) return [];
    return [(i - 1 + (level - before) / (value - before)) / rate];
  });
}

it("open jump, 600 Hz (Duarte & Watanabe 2021): one number a line, named by number", () => {
  const jump = readCsv(fixtureBytes("jump-600hz.txt"), {
    header: 0,
    columns: { 1: "up" },
    units: { 1: "N" },
    sampleRate: 600,
  });
  const up = force(jump, "up");
  expect(up).toHaveLength(1200);
  expect([up[0], up.at(-1)]).toEqual([633.21, 639.5]);
  expect([up.indexOf(-7.15), Math.min(...up)]).toEqual([656, -7.15]);
  expect([up.indexOf(3632.84), Math.max(...up)]).toEqual([840, 3632.84]);
  const quiet = up.slice(0, 60);
  expect(quiet.reduce((sum, value) => sum + value, 0) / 60).toBeCloseTo(628.326333, 6);
  // "takeoff, 20 N falling, interpolated" and "landing, 20 N rising" of the check values.
  expect(crossings(up, 20, 600, false)[0]).toBeCloseTo(0.9048128, 7);
  expect(crossings(up, 20, 600, true)[0]).toBeCloseTo(1.3284353, 7);
});

it("open jump, 450 Hz (Duarte & Watanabe 2021): all samples, exact zeros, crossings", () => {
  const jump = readCsv(fixtureBytes("jump-450hz.txt"), { columns: { GRF: "up" } });
  const up = force(jump, "up");
  expect(jump.sampleRate).toBe(450);
  expect(jump.startTime).toBe(0);
  expect(up).toHaveLength(4500);
  expect(up.filter((value) => value === 0)).toHaveLength(1099);
  expect(Math.max(...up)).toBe(4696.75);
  expect(up.indexOf(4696.75) / 450).toBeCloseTo(5.7, 10);
  expect(crossings(up, 20, 450, true).slice(0, 2)).toEqual([
    expect.closeTo(1.3147253, 7),
    expect.closeTo(5.6401725, 7),
  ]);
  expect(crossings(up, 20, 450, false)[0]).toBeCloseTo(5.0902454, 7);
});

const odd = "markers-two-header-rows.txt";
const mapped = { "Mark* X": "marker:*:x", "Mark* Y": "marker:*:y" };

it("markers under a title, quoted names and a wrong row of units: the units stated count, with one caution", () => {
  const recording = readCsv(fixtureBytes(odd), {
    skip: 1,
    axes: FRAME,
    columns: mapped,
    units: { "Mark*": "m" },
  });
  expect(recording.origin.rows).toBe(106);
  expect(recording.markers?.markers).toHaveLength(8);
  expect(markerOf(recording, "01").forward[0]).toBe(0.4712906);
  expect(markerOf(recording, "05").forward[0]).toBe(0.0945);
  expect(markerOf(recording, "05").up[0]).toBe(0.2148415);
  expect(markerOf(recording, "05").right.every(Number.isNaN)).toBe(true);
  // 105 steps to 1.5015 s.
  expect(recording.sampleRate).toBeCloseTo(105 / 1.5015, 2);
  expect(recording.cautions.map(({ code, values }) => [code, values])).toEqual([
    ["option-over-file", { file: "cm", option: "m" }],
    ["marker-without-direction", { count: 8 }],
  ]);
  expect(recording.cautions[0]?.message).toContain("line 3");
  expect(recording.cautions[0]?.message).toContain("15 other columns");
});

it("the same with both rows of names joined, the units left out, and as other channels", () => {
  const { channels, origin } = readCsv(fixtureBytes(odd), {
    header: 2,
    unitRow: "skip",
    columns: { "wn95b Time": "time", "*": "other:*" },
    units: { "wn95b Time": "s" },
    verticalForce: "optional",
  });
  expect(origin.rows).toBe(106);
  expect(channels).toHaveLength(16);
  expect(channels[0]).toMatchObject({ name: "Shoulder Mark01 X", quantity: "other", unit: "" });
  expect(channels[0]?.samples[0]).toBe(0.4712906);
  expect(channels[8]?.samples[0]).toBe(0.0945);
});

it("byte order mark, CRLF, a title between blank cells, commas at the end of the header alone", () => {
  const recording = readCsv(fixtureBytes("bom-blank-cells.csv"), {
    header: 2,
    axes: { x: "forward", y: "up" },
    columns: { t: "time", "massa A x": "marker:A:x", "massa A y": "marker:A:y" },
    units: { t: "s", "massa A *": "m" },
  });
  const { forward, up } = markerOf(recording, "A");
  expect(forward).toHaveLength(138);
  expect([recording.startTime, forward[0], up[0]]).toEqual([0, 0.949, -1.044]);
  expect([forward.at(-1), up.at(-1)]).toEqual([-0.04926, -1.785]);
  // The last of 138 times is 1.141 s.
  expect(recording.sampleRate).toBeCloseTo(137 / 1.141, 0);
});

it("a long table: columns of codes left out, a row of nan is a gap", () => {
  const recording = readCsv(fixtureBytes("long-table-nan.txt"), {
    ignore: ["Subject", "Condition", "Trial"],
    columns: { "Col *": "other:*" },
    verticalForce: "optional",
    sampleRate: 1,
  });
  expect(recording.origin.rows).toBe(12);
  expect(recording.channels.map(({ samples }) => samples[0])).toEqual([-0.497574, -0.26922, 0.673953]);
  for (const { samples } of recording.channels) {
    expect([...samples].flatMap((value, i) => (Number.isNaN(value) ? [i] : []))).toEqual([4]);
  }
});

it("units in parentheses, with and without a blank, 18 digits", () => {
  const recording = readCsv(fixtureBytes("units-in-header.csv"), {
    axes: FRAME,
    columns: { "*_X": "marker:*:x", "*_Y": "marker:*:y", "*_Z": "marker:*:z" },
  });
  expect(recording.sampleRate).toBe(100);
  expect(recording.markers?.markers.map(({ name }) => name)).toEqual(["m1", "m2", "m3"]);
  const { forward, up, right } = markerOf(recording, "m2");
  expect(forward).toHaveLength(300);
  expect(forward[0]).toBe(0.1338082836649087);
  expect(up[0]).toBe(Number("7.725424859373683506e-02"));
  expect(right[0]).toBe(Number("-4.755282581475767656e-01"));
  expect(recording.cautions).toEqual([]);
});

it("eight channels in volts, no line end at the end of the file", () => {
  const recording = readCsv(fixtureBytes("eight-channel-plate-volts.txt"), {
    columns: { "Channel *": "other:*" },
    units: { "Channel *": "V" },
    verticalForce: "optional",
  });
  expect(recording.sampleRate).toBe(100);
  expect(recording.channels.map(({ samples }) => samples[0])).toEqual([
    -0.045707, -0.07582, 0.099988, -0.207852, 0.745766, 0.018508, 0.698777, 0.236609,
  ]);
  expect(recording.channels.every(({ samples, unit }) => samples.length === 400 && unit === "V")).toBe(true);
});

it("tabs in spite of the name, units in brackets", () => {
  const recording = readCsv(fixtureBytes("tab-table-named-csv.csv"), {
    axes: FRAME,
    columns: { x: "marker:P:x", y: "marker:P:y", z: "marker:P:z" },
  });
  const { forward, up, right } = markerOf(recording, "P");
  expect(forward).toHaveLength(10);
  expect([forward[3], up[3], right[3]]).toEqual([4, 16, 0]);
  expect([forward[9], up[9], right[9]]).toEqual([10, 100, 0]);
  expect(recording.sampleRate).toBe(1);
});

const WALK = {
  axes: FRAME,
  units: { Time: "s", Fx: "N", Fy: "N", Fz: "N", My: "N mm", "*": "mm" },
  columns: { My: "Ty", "*x": "marker:*:x", "*y": "marker:*:y", "*z": "marker:*:z" },
  sampleRate: 150,
};

it.each([
  ["walk-d.txt", 10, 159, 737.38, [0.0695684, 0.6637807], [277.5, 508.82], [112.84135, 1471.87219]],
  ["walk-n-part.txt", 1, 182, 773.44, [0.064119, 0.7155747], [303.61, 530.14], [194.82722, 1629.91614]],
] as const)(
  "open walking step %s (Duarte & Watanabe 2021): plate and markers, the rate stated against rounded times",
  (name, count, rows, peak, [initialContact, toeOff], copEnds, heelEnds) => {
    const walk = readCsv(fixtureBytes(name), WALK);
    expect(walk.sampleRate).toBe(150);
    expect(walk.markers?.markers).toHaveLength(count);
    const up = force(walk, "up");
    expect(up).toHaveLength(rows);
    expect(Math.max(...up)).toBe(peak);
    expect(crossings(up, 20, 150, true)[0]).toBeCloseTo(initialContact, 7);
    expect(crossings(up, 20, 150, false)[0]).toBeCloseTo(toeOff, 7);
    const loaded = cop(walk, "forward").filter((_, i) => (up[i] as number) > 20);
    expect([loaded[0], loaded.at(-1)]).toEqual(copEnds.map((mm) => expect.closeTo(mm / 1000, 10)));
    const { forward } = markerOf(walk, "CA");
    expect([forward[0], forward.at(-1)]).toEqual(heelEnds.map((mm) => expect.closeTo(mm / 1000, 10)));
    expect(walk.cautions).toEqual([]);
  },
);

it("open treadmill run (Fukuchi, Fukuchi & Duarte 2017): 32 markers by three patterns, row 1", () => {
  const run: Recording = readCsv(fixtureBytes("treadmill-markers-part.txt"), {
    axes: FRAME,
    units: { Time: "s", "*": "mm" },
    columns: { "*X": "marker:*:x", "*Y": "marker:*:y", "*Z": "marker:*:z" },
    sampleRate: 150,
  });
  expect(run.channels).toEqual([]);
  expect(run.markers).toMatchObject({ sampleRate: 150, startTime: 0 });
  expect(run.markers?.markers).toHaveLength(32);
  // The right hip's marker lies at 1089.93 mm, the left one's at 873.04 mm.
  expect(markerOf(run, "R.ASIS").right[0]).toBeCloseTo(1.08993, 10);
  expect(markerOf(run, "L.ASIS").right[0]).toBeCloseTo(0.873038, 10);
  expect(run.cautions).toEqual([]);
});

it("its forces: the counter of samples is stated, checked and not used; unstated it is named", () => {
  const options = {
    axes: FRAME,
    units: { "F*": "N", "COP*": "mm", Ty: "N mm" },
  };
  const bytes = fixtureBytes("../treadmill-run/forces-2.5ms.txt");
  const run = readCsv(bytes, { ...options, columns: { Time: "sample" }, sampleRate: 300 });
  expect(run.sampleRate).toBe(300);
  expect(run.startTime).toBe(0);
  expect(force(run, "up").slice(0, 1)).toEqual([1613.01]);
  const unstated = { ...options, units: { ...options.units, Time: "s" } };
  expect(() => readCsv(bytes, unstated)).toThrow(
    expect.objectContaining({
      code: "missing-value",
      message: expect.stringContaining('{ "Time": "sample" }'),
    }),
  );
  expect(() => readCsv(bytes, { ...unstated, sampleRate: 300 })).toThrow(
    expect.objectContaining({ code: "uneven-time", message: expect.stringContaining('"sample"') }),
  );
});

it("other is a channel of its own, whatever it measures", () => {
  const recording = readCsv("up [N],EMG\n1,2", { sampleRate: 1, columns: { EMG: "other:muscle" } });
  expect(other(recording, "muscle")).toEqual([2]);
});
