import { expect, it } from "vitest";
import { type ReadRecordingOptions, readC3d, readCsv, readRecording } from "../../../src/io/index.js";
import { fixtureBytes, refusal } from "./fixtures.js";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const start = (...bytes: number[]) => Uint8Array.from([...bytes, ...new Array<number>(600).fill(7)]);
const TABLE = "time [s],up [N]\n0,700\n0.001,701";

it("reads a table as readCsv does, with its options, in any encoding", () => {
  const options = { mass: 70, units: {}, decimal: "." } as const;
  const whole = readCsv(TABLE, options);
  expect(readRecording(bytesOf(TABLE), options)).toStrictEqual(whole);
  expect(readRecording(bytesOf(`\uFEFF${TABLE}`), options)).toStrictEqual(whole);
  const wide = Uint8Array.from({ length: 2 * TABLE.length + 2 }, (_, i) =>
    i < 2 ? [0xff, 0xfe][i]! : i % 2 ? 0 : TABLE.charCodeAt((i >> 1) - 1),
  );
  expect(readRecording(wide, options)).toStrictEqual(whole);
});

it("a table whose second letter is P is no C3D file", () => {
  const recording = readRecording(bytesOf("UP [N]\n700"), { sampleRate: 1 });
  expect(recording.origin.format).toBe("csv");
});

/** A header with 0x50 in its place and zeros in its reserved words. */
const c3dLike = () => {
  const bytes = new Uint8Array(1024);
  bytes.set([2, 0x50]);
  return bytes;
};

it("bytes with the mark of C3D go to its reader, whole or not", () => {
  for (const bytes of [c3dLike(), c3dLike().subarray(0, 100)]) {
    const { code, message } = refusal(() => readRecording(bytes));
    expect(code).toBe("unreadable-file");
    expect(message).not.toContain("looks like");
  }
});

it.each(["walk-pr-60.c3d", "walk-vi-60.c3d", "type-3-120.c3d"])(
  "the standard's sample file %s reads as readC3d does",
  (name) => {
    const bytes = fixtureBytes(`../c3d/standard/${name}`);
    const options = { axes: { x: "right", y: "forward", z: "up" }, mass: 70 } as const;
    const recording = readRecording(bytes, options);
    expect(recording).toStrictEqual(readC3d(bytes, options));
    expect(recording.platforms?.length).toBeGreaterThan(0);
  },
);

it.each<[string, Uint8Array, ReadRecordingOptions, string]>([
  [
    "a table's option for a C3D file",
    c3dLike(),
    { sampleRate: 1000, ignore: ["Time"] },
    "sampleRate, ignore",
  ],
  ["a C3D file's option for a table", bytesOf(TABLE), { lengthUnit: "mm" }, "lengthUnit"],
])("refuses %s", (_, bytes, options, names) => {
  const error = refusal(() => readRecording(bytes, options));
  expect(error).toMatchObject({ code: "unknown-option", argument: names.split(",")[0] });
  expect(error.message).toContain(names);
});

it("an option that says no more than the default is none", () => {
  const options = { lengthUnit: null, ignore: [], forceOn: "runner" } as const;
  expect(readRecording(bytesOf(TABLE), options).sampleRate).toBe(1000);
  expect(refusal(() => readRecording(c3dLike(), options)).code).toBe("unreadable-file");
  expect(refusal(() => readRecording(bytesOf(TABLE), { rate: 5 } as never)).code).toBe("unknown-option");
});

it.each<[string, Uint8Array]>([
  ["ZIP archive or a spreadsheet", start(0x50, 0x4b, 3, 4)],
  ["older spreadsheet", start(0xd0, 0xcf, 0x11, 0xe0)],
  ["gzip", start(0x1f, 0x8b, 8)],
  ["PDF", bytesOf("%PDF-1.7\n\0\0")],
  ["PNG", start(0x89, 0x50, 0x4e, 0x47)],
  ["JPEG", start(0xff, 0xd8, 0xff)],
  ["HDF5", start(0x89, 0x48, 0x44, 0x46)],
  ["SQLite", bytesOf("SQLite format 3\0")],
  ["JSON", bytesOf(' {"samples": [1, 2]}')],
  ["JSON", bytesOf("\uFEFF[1, 2]")],
  ["XML or HTML", bytesOf('<?xml version="1.0"?>')],
  ["XML or HTML", bytesOf("<!DOCTYPE html>")],
  ["RTF", bytesOf("{\\rtf1 x}")],
  ["binary", start(1, 2, 0, 3)],
])("refuses what looks like %s, by name", (name, bytes) => {
  const error = refusal(() => readRecording(bytes));
  expect(error).toMatchObject({ code: "unreadable-file", argument: "bytes" });
  expect(error.message).toContain(name);
});

it("a name in brackets is no JSON", () => {
  const recording = readRecording(bytesOf("[up] [N]\n1"), { sampleRate: 1, columns: { "[up]": "up" } });
  expect(recording.channels[0]?.direction).toBe("up");
  expect(readRecording(fixtureBytes("jump-450hz.txt"), { columns: { GRF: "up" } }).origin.rows).toBe(4500);
});

it.each<[string, unknown, unknown]>([
  ["a text", TABLE, {}],
  ["a buffer", new ArrayBuffer(8), {}],
  ["nothing", null, {}],
  ["options that are none", new Uint8Array(8), null],
])("refuses %s", (_, bytes, options) => {
  expect(refusal(() => readRecording(bytes as never, options as never)).code).toBe("wrong-type");
});

it("an empty file is an empty table", () => {
  expect(refusal(() => readRecording(new Uint8Array(0))).message).toContain("empty");
});
