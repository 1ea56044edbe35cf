import { expect, it } from "vitest";
import { readCsv, writeCsv } from "../../src/io/index.js";
import pythonTable from "../fixtures/io/python-table.json" with { type: "json" };
import { cop, fixture, force, freeMoment, TREADMILL_RUN } from "./fixtures.js";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const text = fixture("treadmill-run/forces-2.5ms.txt");

it("open treadmill run (Fukuchi, Fukuchi & Duarte 2017): means, extremes and first row by NumPy", () => {
  const run = readCsv(text, TREADMILL_RUN);
  expect(run.sampleRate).toBe(300);
  expect(run.origin).toEqual({ format: "csv", rows: 9000 });
  expect(run.cautions).toEqual([]);
  const published = {
    forward: { mean: 0.613234, least: -265.73, most: 197.53, first: 35.02 },
    up: { mean: 757.190618, least: -32.35, most: 1731.87, first: 1613.01 },
    right: { mean: -0.14587, least: -240.55, most: 218.66, first: 37.23 },
  };
  for (const direction of ["forward", "up", "right"] as const) {
    const samples = force(run, direction);
    expect(samples).toHaveLength(9000);
    expect(sum(samples) / 9000).toBeCloseTo(published[direction].mean, 6);
    expect(Math.min(...samples)).toBe(published[direction].least);
    expect(Math.max(...samples)).toBe(published[direction].most);
    expect(samples[0]).toBe(published[direction].first);
  }
  expect(cop(run, "forward")[0]).toBeCloseTo(2.14233, 12);
  expect(cop(run, "right")[0]).toBeCloseTo(0.93422, 12);
  expect(freeMoment(run)[0]).toBeCloseTo(6.89013, 12);
});

it("the height of its centre of pressure, 0 throughout, is dropped, and refused where it is not 0", () => {
  expect(readCsv(text, TREADMILL_RUN).channels.map(({ name }) => name)).toEqual([
    "Fx",
    "Fy",
    "Fz",
    "COPx",
    "COPz",
    "Ty",
  ]);
  const raised = text.replace("\t2126.36\t0\t", "\t2126.36\t1.5\t");
  expect(() => readCsv(raised, TREADMILL_RUN)).toThrow(
    expect.objectContaining({ code: "unreadable-file", where: 'line 3, column 6 "COPy"' }),
  );
});

it("its columns without axes, units or rate are refused, each with the way to state them", () => {
  const { axes, units, sampleRate, ...rest } = TREADMILL_RUN;
  expect(() => readCsv(text, { ...rest, units, sampleRate })).toThrow(
    expect.objectContaining({ code: "unknown-axes", message: expect.stringContaining('axes: { x: "right"') }),
  );
  expect(() => readCsv(text, { ...rest, axes, sampleRate })).toThrow(
    expect.objectContaining({
      code: "unknown-unit",
      message: expect.stringContaining('units: { "Fx": "N" }'),
    }),
  );
  expect(() => readCsv(text, { ...rest, axes, units })).toThrow(
    expect.objectContaining({ code: "missing-value", argument: "sampleRate" }),
  );
  expect(() => readCsv(text, { ...rest, axes, units, sampleRate, ignore: [] })).toThrow(
    expect.objectContaining({ code: "unknown-unit", message: expect.stringContaining('ignore: ["Time"]') }),
  );
});

it("it comes back from the library's own format to the last bit", () => {
  const run = readCsv(text, TREADMILL_RUN);
  const back = readCsv(writeCsv(run));
  expect(back.channels.map(({ samples }) => samples)).toEqual(run.channels.map(({ samples }) => samples));
});

it("open walking step (Duarte & Watanabe 2021): rate from times of three decimals, unknown names ignored, My named", () => {
  const walk = readCsv(fixture("io/walk-one-plate.txt"), {
    axes: { x: "forward", y: "up", z: "right" },
    units: { Time: "s", Fx: "N", Fy: "N", Fz: "N", COPx: "mm", COPz: "mm", My: "N mm" },
    columns: { My: "Ty" },
    ignore: ["*"],
  });
  expect(walk.sampleRate).toBe(150);
  const up = force(walk, "up");
  expect(up).toHaveLength(159);
  expect(Math.max(...up)).toBe(737.38);
  expect(sum(up) / 159).toBeCloseTo(306.8835849056602, 10);
  expect(cop(walk, "forward")[50]).toBeCloseTo(0.37787, 12);
  expect(freeMoment(walk)[50]).toBeCloseTo(-0.82847, 12);
});

it("open jump (Duarte & Watanabe 2021): units in brackets without a blank, a name of its own, a start in mid file", () => {
  const jump = readCsv(fixture("io/jump-450hz-part.txt"), { columns: { GRF: "up" } });
  expect(jump.sampleRate).toBe(450);
  expect(jump.startTime).toBe(1.2222222222222223);
  const up = force(jump, "up");
  expect(up).toHaveLength(300);
  expect(Math.max(...up)).toBe(688.19);
  expect(sum(up) / 300).toBeCloseTo(417.39916666666676, 10);
});

it.each(["python-quoted-crlf.csv", "python-tab.txt", "python-semicolon-decimal-comma.csv"])(
  "independent writer, Python's csv module: %s holds the same numbers",
  (name) => {
    const recording = readCsv(fixture(`io/${name}`));
    expect(recording.sampleRate).toBe(500);
    // The table was written with some −0, which are read as 0.
    const written = pythonTable.rows.map((row) => row.slice(1).map((cell) => (cell ?? Number.NaN) + 0));
    const columns = [
      force(recording, "forward"),
      force(recording, "up"),
      force(recording, "right"),
      cop(recording, "forward"),
      cop(recording, "right"),
      freeMoment(recording),
    ];
    expect(written.map((_, i) => columns.map((column) => column[i]))).toEqual(written);
    expect(recording.cautions).toEqual([]);
  },
);

it("comment lines before a byte order marked, quoted table are read, and a comment with commas is a comment", () => {
  const recording = readCsv(fixture("io/python-quoted-crlf.csv"));
  expect(recording.subject).toEqual({ mass: 61.5 });
  expect(recording.firstFoot).toBe("right");
});
