import { describe, expect, it } from "vitest";
import { readMotionBids, writeMotionBids } from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { isGaitKineticsError } from "../../../src/units/index.js";
import { filesOf, LAB } from "./files.js";

const axes = { x: "forward", y: "left", z: "up" } as const;
const FZ = "Fz z MISC plate N";
const two = filesOf([FZ, "Fx x MISC plate N"], "700\t1\n701\t2\n");
const own = writeMotionBids({
  sampleRate: 100,
  startTime: 0,
  channels: [
    { name: "Fz", quantity: "force", direction: "up", unit: "N", samples: new Float64Array([1, 2]) },
  ],
  subject: {},
  origin: { format: "none" },
  cautions: [],
});
const withOwn = (fields: object) => ({
  ...own,
  sidecar: JSON.stringify({ TaskName: "run", SamplingFrequency: 100, GaitKinetics: fields }),
});

/** What reading throws. */
function refusal(read: () => Recording): { code: string; where: string | undefined; message: string } {
  try {
    read();
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
    return caught as never;
  }
  return expect.unreachable("it was read");
}

describe("refused, with the place and what is allowed", () => {
  it.each<[string, unknown, string, string | undefined, RegExp]>([
    [
      "a word in a cell",
      { ...two, motion: "700\t1\n701\thalf" },
      "unreadable-file",
      'row 2, column 2 ("Fx")',
      /motion, row 2, column 2 \("Fx"\): "half" is no number$/,
    ],
    [
      "a heading",
      { ...two, motion: "Fz\tFx\n700\t1" },
      "unreadable-file",
      'row 1, column 1 ("Fz")',
      /has no heading, its columns are named in channels.tsv/,
    ],
    [
      "a decimal comma",
      { ...two, motion: "700,5\t1" },
      "unreadable-file",
      'row 1, column 1 ("Fz")',
      /"700,5" is no number/,
    ],
    [
      "a number too large",
      { ...two, motion: "1e999\t1" },
      "unreadable-file",
      'row 1, column 1 ("Fz")',
      /larger than a number can be/,
    ],
    [
      "more columns than channels",
      { ...two, motion: "700\t1\t2" },
      "unreadable-file",
      "row 1",
      /has 3 columns, and channels.tsv lists 2 channels/,
    ],
    [
      "fewer columns in one row",
      { ...two, motion: "700\t1\n701\n" },
      "unreadable-file",
      "row 2",
      /has 1 column, and channels.tsv lists 2/,
    ],
    ["an empty row", { ...two, motion: "700\t1\n\n701\t2" }, "unreadable-file", "row 2", /row is empty/],
    ["no sample", { ...two, motion: "\n" }, "too-short", "motion", /holds no sample/],
    [
      "bytes that are no UTF-8",
      { ...two, motion: new Uint8Array([0x37, 0xff]) },
      "unreadable-file",
      "motion",
      /not in UTF-8/,
    ],
    ["no channels", { ...two, channels: "" }, "unreadable-file", "channels", /is empty|column .* missing/],
    [
      "a heading alone",
      { ...two, channels: "name\tcomponent\ttype\ttracked_point\tunits\n" },
      "unreadable-file",
      "channels",
      /lists no channel/,
    ],
    [
      "a required column missing",
      { ...two, channels: "name\ttype\ttracked_point\tunits\nFz\tMISC\tp\tN" },
      "unreadable-file",
      "line 1",
      /column component is missing/,
    ],
    [
      "a row of another width",
      { ...two, channels: `${two.channels}Fy\ty\n` },
      "unreadable-file",
      "line 4",
      /has 2 cells, and the heading 5/,
    ],
    [
      "two channels of one name",
      filesOf([FZ, FZ], "1\t2"),
      "unreadable-file",
      "line 3, name",
      /second channel is named "Fz"/,
    ],
    [
      "a channel without a name",
      filesOf(["n/a z MISC p N"], "1"),
      "unreadable-file",
      "line 2, name",
      /has no name/,
    ],
    [
      "a channel without a type",
      filesOf(["Fz z n/a p N"], "1"),
      "unreadable-file",
      "line 2, type",
      /has no type/,
    ],
    [
      "an open quote",
      { ...two, channels: `${two.channels}"Fy\ty\tMISC\tp\tN\n` },
      "unreadable-file",
      "line 4",
      /quote/,
    ],
    [
      "an unknown unit of a force",
      filesOf(["Fz z MISC p furlong"], "1"),
      "unknown-unit",
      'channel "Fz"',
      /"furlong" is no known unit/,
    ],
    [
      "2026-11-25: a channel called force in a unit that is none stopped the file without a way out",
      filesOf(["force_temperature n/a MISC plate degC", "EMG n/a MISC leg V"], "1\t2"),
      "unknown-unit",
      'channel "force_temperature"',
      /"degC" is no known unit.*keep it apart with columns: \{ "force_temperature": "other" \}$/,
    ],
    ["a position in newtons", filesOf(["h z POS heel N"], "1"), "unit-mismatch", "h", /position in "N"/],
    [
      "a position without a unit",
      filesOf(["h z POS heel n/a"], "1"),
      "unknown-unit",
      'channel "h"',
      /"n\/a" is no known unit/,
    ],
    [
      "two forces in one direction",
      filesOf([FZ, "force z MISC plate N"], "1\t2"),
      "conflict",
      "force",
      /both force up/,
    ],
    [
      "two times",
      filesOf(["t n/a LATENCY n/a s", "u n/a LATENCY n/a s"], "0\t0"),
      "conflict",
      "u",
      /both hold the time/,
    ],
    [
      "a centre of pressure above the ground",
      filesOf(["COPz z MISC p m"], "0.1"),
      "unreadable-file",
      "row 1, COPz",
      /must be 0 within 0.001/,
    ],
    ["no JSON", { ...two, sidecar: "{" }, "unreadable-file", "sidecar", /is no JSON/],
    ["JSON that is no object", { ...two, sidecar: "[1]" }, "unreadable-file", "sidecar", /no JSON object/],
    [
      "JSON of axes that is none",
      { ...two, channelsSidecar: "x" },
      "unreadable-file",
      "channelsSidecar",
      /is no JSON/,
    ],
    [
      "no rate",
      filesOf([FZ], "1", { TaskName: "run" }),
      "missing-value",
      "SamplingFrequency",
      /has no "SamplingFrequency"/,
    ],
    [
      "an inherited rate",
      { ...two, sidecar: '{"__proto__":{"SamplingFrequency":100}}' },
      "missing-value",
      "SamplingFrequency",
      /has no/,
    ],
    [
      "a negative rate",
      filesOf([FZ], "1", { SamplingFrequency: -100 }),
      "out-of-range",
      undefined,
      /SamplingFrequency is -100 Hz/,
    ],
    [
      "a rate in words",
      filesOf([FZ], "1", { SamplingFrequency: "100" }),
      "wrong-type",
      undefined,
      /SamplingFrequency is "100"/,
    ],
    ["no files", null, "wrong-type", undefined, /files are null/],
    [
      "a file missing",
      { motion: "1", sidecar: "{}" },
      "missing-value",
      "SamplingFrequency",
      /SamplingFrequency/,
    ],
    ["a file that is no text", { ...two, channels: 7 }, "wrong-type", undefined, /channels is number/],
    [
      "an event without a time",
      { ...two, events: "onset\tduration\nn/a\t0\n" },
      "unreadable-file",
      "line 2, onset",
      /the cell is empty/,
    ],
    [
      "an event of a third foot",
      { ...two, events: "onset\tduration\tside\n0\t0\tmiddle\n" },
      "out-of-range",
      undefined,
      /must be "left" or "right"/,
    ],
    [
      "events without onset",
      { ...two, events: "time\n0\n" },
      "unreadable-file",
      "line 1",
      /column onset, duration is missing/,
    ],
    [
      "markers that are none",
      { ...two, markers: two },
      "missing-channel",
      undefined,
      /no point with three coordinates/,
    ],
    ["markers twice", { ...LAB, markers: LAB }, "conflict", undefined, /both tracking systems hold markers/],
    [
      "markers whose file is broken",
      { ...two, markers: { ...LAB, motion: "x" } },
      "unreadable-file",
      "row 1",
      /markers.motion, row 1/,
    ],
    ["an own field that is none", withOwn([] as object), "unreadable-file", "GaitKinetics", /is no object/],
    [
      "an own start in words",
      withOwn({ startTime: "0" }),
      "unreadable-file",
      "GaitKinetics.startTime",
      /no finite number/,
    ],
    ["an own mass in newtons", withOwn({ mass: 700 }), "out-of-range", undefined, /mass is 700 kg/],
    [
      "platforms that are none",
      withOwn({ platforms: 3 }),
      "unreadable-file",
      "GaitKinetics.platforms",
      /is no list/,
    ],
    [
      "a platform that is none",
      withOwn({ platforms: [3] }),
      "unreadable-file",
      "GaitKinetics.platforms[0]",
      /is no object/,
    ],
    [
      "a platform of a column that is not there",
      withOwn({ platforms: [{ columns: ["Fq"] }] }),
      "unreadable-file",
      "GaitKinetics.platforms[0].columns",
      /names "Fq"/,
    ],
    [
      "a platform without corners",
      withOwn({ platforms: [{ name: "p", type: 3, origin: [0, 0, 0], columns: Array(8).fill("Fz") }] }),
      "wrong-type",
      undefined,
      /corners/,
    ],
  ])("%s", (_, files, code, where, message) => {
    const refused = refusal(() => readMotionBids(files as never, { axes }));
    expect(refused).toMatchObject({ code, where });
    expect(refused.message).toMatch(message);
  });

  it.each<[string, object, string, RegExp]>([
    ["a column that is not there", { columns: { Fq: "up" } }, "out-of-range", /names "Fq"/],
    [
      "a column stated in another word",
      { columns: { Fz: "down" } },
      "out-of-range",
      /columns\["Fz"\] is "down"; it must be "time"/,
    ],
    ["columns that are none", { columns: 3 }, "wrong-type", /columns is no object/],
    ["an unknown option", { mas: 70 }, "unknown-option", /"mas" is no option/],
    ["a mass in newtons", { mass: 700 }, "out-of-range", /weight in newtons/],
    ["a third surface", { surface: "sand" }, "out-of-range", /surface/],
    ["another body", { forceOn: "plate" }, "out-of-range", /forceOn/],
    ["axes that are none", { axes: { x: "north" } }, "unknown-axes", /no direction/],
  ])("%s", (_, options, code, message) => {
    const refused = refusal(() => readMotionBids(two, options));
    expect(refused.code).toBe(code);
    expect(refused.message).toMatch(message);
  });
});

it("does not allocate beyond the text, however many channels a table names", () => {
  const rows = Array.from({ length: 3000 }, (_, k) => `c${k} n/a MISC p V`);
  // 3000 channels of 100 000 rows would be 2.4 GB.
  const refused = refusal(() => readMotionBids(filesOf(rows, "\n".repeat(100_000))));
  expect(refused.code).toBe("too-short");
});
