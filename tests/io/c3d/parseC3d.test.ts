import { expect, it } from "vitest";
import { type C3dFile, parseC3d } from "../../../src/io/index.js";
import expected from "../../fixtures/c3d/worked/expected.json" with { type: "json" }; // independent_writer.py
import { bytesOf, distance, parsed, patched, placeOf } from "./files.js";

const refusal = (code: string, message: RegExp) =>
  expect.objectContaining({ code, message: expect.stringMatching(message) });
const parameter = (file: C3dFile, group: string, name: string) =>
  file.groups.find((one) => one.name === group)?.parameters.find((one) => one.name === name);
const codes = (file: C3dFile) => file.cautions.map(({ code }) => code);
const column = (rows: readonly (readonly number[])[], k: number) => rows.map((row) => row[k] as number);

it.each(expected.files.map((file) => [file.file, file] as const))(
  "independent writer (independent_writer.py): %s holds what went in",
  (name, { processor, storage }) => {
    const file = parsed(`worked/${name}`);
    expect(["intel", "dec", "mips"].indexOf(file.processor) + 84).toBe(processor);
    expect(file.storage).toBe(storage);
    expect(file.frames).toBe(expected.frames);
    expect(file.frameRate).toBe(expected.pointRateHz);
    expect(file.analogue.sampleRate).toBe(expected.analogRateHz);
    expect(file.points.map((point) => point.name)).toEqual(expected.pointLabels);
    expect(file.points.map(({ description, unit }) => [description, unit])).toEqual([
      ["heel", "mm"],
      ["toe", "mm"],
      ["sacrum", "mm"],
    ]);
    for (const [k, point] of file.points.entries()) {
      const rows = expected.points.map((frame) =>
        (frame[k] as (number | null)[]).map((value) => value ?? Number.NaN),
      );
      expect([...point.x]).toEqual(column(rows, 0));
      expect([...point.y]).toEqual(column(rows, 1));
      expect([...point.z]).toEqual(column(rows, 2));
      expect([...point.residual]).toEqual(expected.residual.map((frame) => frame[k] ?? Number.NaN));
      expect([...point.cameras]).toEqual(rows.map(([x]) => (Number.isNaN(x) ? 0 : expected.cameraMask)));
    }
    expect(file.analogue.format).toBe(name.includes("unsigned") ? "unsigned" : "signed");
    expect(file.analogue.channels.map((channel) => channel.name)).toEqual(expected.analogLabels);
    for (const [k, { samples, scale, offset }] of file.analogue.channels.entries()) {
      expect(scale).toBe(Math.fround(expected.analogScale[k] as number));
      expect(offset).toBe(
        (name.includes("unsigned") ? expected.analogOffsetUnsigned : expected.analogOffset)[k],
      );
      // Scales are 32-bit numbers: 0.1 is 0.10000000149.
      for (const [i, value] of samples.entries()) {
        expect(Math.abs(value - (expected.analog[i]?.[k] as number))).toBeLessThanOrEqual(
          2e-8 * Math.abs(value),
        );
      }
    }
    expect(parameter(file, "FORCE_PLATFORM", "CORNERS")).toEqual({
      name: "CORNERS",
      description: "",
      locked: false,
      type: "float",
      dimensions: [3, 4, 1],
      data: expected.forcePlatform.corners.flat(),
    });
    expect(parameter(file, "POINT", "FRAMES")).toMatchObject({ locked: true, data: [6], dimensions: [] });
    expect(parameter(file, "EVENT", "LABELS")).toMatchObject({
      data: ["Foot Strike", "Foot Off"],
      dimensions: [11, 2],
    });
    expect(file.cautions).toEqual([]);
  },
);

it.each(expected.vaxFloatExamples.map(({ value, bytesHex }) => [value, bytesHex] as const))(
  "worked bytes: %d in the DEC form is %s",
  (value, hex) => {
    const bytes = bytesOf("worked/dec_float.c3d");
    const at = placeOf(bytes, 1, "RATE") + "RATE".length + 6;
    for (let k = 0; k < 4; k++) bytes[at + k] = Number.parseInt(hex.slice(2 * k, 2 * k + 2), 16);
    const file = parseC3d(bytes);
    expect(parameter(file, "POINT", "RATE")?.data[0]).toBe(Math.fround(value));
  },
);

it.each([
  ["00 00 00 00", 0],
  ["00 80 00 00", Number.NaN],
  ["ff 7f ff ff", (1 - 2 ** -24) * 2 ** 127],
  ["80 00 00 00", 2 ** -128],
  ["80 81 00 00", -(2 ** -126)],
])(
  "DEC form, ends of its range (exponent excess 128, mantissa from 0.5, by hand): %s is %d",
  (hex, value) => {
    const bytes = bytesOf("worked/dec_float.c3d");
    const at = placeOf(bytes, 2, "GEN_SCALE") + "GEN_SCALE".length + 6;
    hex.split(" ").forEach((byte, k) => {
      bytes[at + k] = Number.parseInt(byte, 16);
    });
    if (Number.isNaN(value)) {
      expect(() => parseC3d(bytes)).toThrow(refusal("unreadable-file", /GEN_SCALE/));
      return;
    }
    expect(parseC3d(bytes).analogue.generalScale).toBe(value);
  },
);

const SIX = ["pi", "pr-60", "si-60", "sr-60", "vi-60", "vr-60"];
it("standard sample set 01: one trial in six number formats gives the same numbers", () => {
  const [whole, ...others] = SIX.map((name) => parsed(`standard/walk-${name}.c3d`));
  expect(whole?.frames).toBe(450);
  const first = (values: Float64Array, length: number) => values.subarray(0, length);
  for (const file of others) {
    expect(file.frames).toBe(60);
    for (const [k, point] of file.points.entries()) {
      const same = whole?.points[k];
      for (const axis of ["x", "y", "z"] as const) {
        // Integers times a 32-bit scale against 32-bit numbers: 0.00011 mm at 2 m.
        expect(distance(point[axis], first(same?.[axis] as Float64Array, 60))).toBeLessThan(0.00011);
      }
      expect(point.residual).toEqual(first(same?.residual as Float64Array, 60));
      expect(point.cameras).toEqual(same?.cameras.subarray(0, 60));
    }
    for (const [k, { samples }] of file.analogue.channels.entries()) {
      expect(distance(samples, first(whole?.analogue.channels[k]?.samples as Float64Array, 240))).toBe(0);
    }
  }
});

it("standard sample set 01, check values by NumPy", () => {
  const file = parsed("standard/walk-pi.c3d");
  const place = file.points.findIndex(({ name }) => name === "PV1");
  for (const [k, frame, ...xyz] of [
    [0, 1, 248.58334, 226.83334, 37.41667],
    [0, 450, 324.58334, 2248, 33.75],
    [place, 226, 289.91669, 771.41669, 919.58337],
  ] as const) {
    const { x, y, z } = file.points[k] as C3dFile["points"][0];
    // The values are of the floating file: 0.0001 mm from the scaled integers.
    for (const [i, axis] of [x, y, z].entries()) {
      expect(Math.abs((axis[frame - 1] as number) - (xyz[i] as number))).toBeLessThan(0.00011);
    }
  }
  expect(file.points.reduce((sum, { x }) => sum + x.filter(Number.isNaN).length, 0)).toBe(226);
  expect(file.analogue.channels.slice(8, 14).map(({ samples }) => Number(samples[900]?.toFixed(3)))).toEqual([
    -10.608, 33.15, -836.248, 40892.401, 104271.199, -96.04,
  ]);
  expect(file.header.events.map(({ label, time }) => [label, Number(time.toFixed(2))])).toEqual([
    ["RIC", 2.72],
    ["RHS", 5.4],
    ["RTO", 7.32],
  ]);
  expect(parameter(file, "ANALOG", "LABELS")?.data).toHaveLength(32);
  expect(file.analogue.channels).toHaveLength(16);
  expect(file.cautions).toEqual([]);
});

it("standard sample set 10: raw numbers of the published sheet, DEC order, both plate types", () => {
  const two = parsed("standard/type-2.c3d");
  const four = parsed("standard/type-4.c3d");
  expect(two.processor).toBe("dec");
  for (const [sample, raw] of [
    [1196, [2690, 1952, 3071, 2265, 2193, 1979]],
    [1402, [2109, 2005, 2649, 2087, 1727, 2005]],
    [1644, [1085, 1954, 3122, 2144, 1173, 1996]],
  ] as const) {
    for (const file of [two, four]) {
      const counts = file.analogue.channels.map(({ samples, scale, offset }) =>
        Math.round((samples[sample] as number) / scale + offset),
      );
      expect(counts).toEqual(raw);
    }
  }
  expect(two.points.reduce((sum, { x }) => sum + x.filter(Number.isNaN).length, 0)).toBe(653);
  expect(parameter(four, "FORCE_PLATFORM", "CAL_MATRIX")?.dimensions).toEqual([6, 6, 1]);
  expect(codes(two)).toEqual(["group-missing"]);
});

it("standard sample set 15: a parameter list longer than its declared blocks is read up to the data", () => {
  const bytes = bytesOf("standard/type-3-120.c3d");
  expect(bytes[514]).toBe(3);
  const file = parseC3d(bytes);
  expect(parameter(file, "FORCE_PLATFORM", "CHANNEL")?.data).toEqual([3, 4, 5, 6, 7, 8, 9, 10]);
  expect(file.points[0]?.unit).toBe("mete");
  const { x, y, z } = file.points[0] as C3dFile["points"][0];
  expect([x[0], y[0], z[0]].map((value) => Number(value?.toFixed(6)))).toEqual([0.73045, 0.587067, 0.810717]);
  expect(file.analogue.channels.slice(2, 10).map(({ samples }) => Number(samples[860]?.toFixed(6)))).toEqual([
    -49.948532, 13.379753, -39.331627, 21.709364, 249.273972, 28.880533, -8.267164, 14.574438,
  ]);
});

const small = bytesOf("worked/intel_integer.c3d");

it("texts are UTF-8 where they are that, else Latin-1", () => {
  const labels = (...bytes: number[]) =>
    patched(small, 2, "LABELS", (data) => {
      for (const [k, byte] of bytes.entries()) data.setUint8(k, byte);
    });
  const utf = parseC3d(labels(0xc3, 0xa9, 0x20));
  expect([utf.analogue.channels[0]?.name, utf.encoding]).toEqual(["é", "utf-8"]);
  const latin = parseC3d(labels(0xe9, 0x74, 0xe9));
  expect([latin.analogue.channels[0]?.name, latin.encoding]).toEqual(["été", "latin-1"]);
});

it("header and parameters that differ: the parameters count, and a caution names both", () => {
  const bytes = patched(small, 1, "RATE", (data) => data.setFloat32(0, 200, true));
  const changed = patched(bytes, 2, "RATE", (data) => data.setFloat32(0, 800, true));
  const file = parseC3d(changed);
  expect([file.frameRate, file.analogue.sampleRate]).toEqual([200, 800]);
  expect(file.cautions).toEqual([
    expect.objectContaining({
      code: "header-disagrees",
      where: "POINT:RATE",
      values: { header: 250, parameters: 200 },
    }),
  ]);
});

it("a file too short for its parameters is read by its header, with a caution", () => {
  const bytes = patched(small, 1, "USED", (data) => data.setUint16(0, 300, true));
  const file = parseC3d(bytes);
  expect(file.points).toHaveLength(3);
  expect(file.cautions.map(({ message }) => message)).toEqual([
    expect.stringContaining("the header counted"),
  ]);
});

it("rates that are no multiple of each other: the header's samples in a frame count, with a caution", () => {
  const file = parseC3d(patched(small, 2, "RATE", (data) => data.setFloat32(0, 990, true)));
  expect(file.analogue.samplesPerFrame).toBe(4);
  expect(codes(file)).toContain("header-disagrees");
});

it("frames are counted by POINT:FRAMES, never by the header's frame numbers", () => {
  const bytes = small.slice();
  new DataView(bytes.buffer).setUint16(6, 41, true);
  new DataView(bytes.buffer).setUint16(8, 90, true);
  const file = parseC3d(bytes);
  expect([file.frames, file.firstFrame]).toEqual([6, 41]);
  expect(codes(file)).toEqual(["header-disagrees"]);
});

it("16-bit samples without FORMAT are found to be unsigned at the baseline, with a caution", () => {
  const unsigned = bytesOf("worked/intel_integer_unsigned.c3d");
  // Its name is taken away: no parameter FORMAT any more.
  const at = placeOf(unsigned, 2, "FORMAT");
  unsigned[at + 2] = "X".charCodeAt(0);
  const file = parseC3d(unsigned);
  expect(file.analogue.format).toBe("unsigned");
  expect(codes(file)).toEqual(["analogue-format-missing"]);
  expect(file.analogue.channels.map(({ samples }) => samples)).toEqual(
    parsed("worked/intel_integer_unsigned.c3d").analogue.channels.map(({ samples }) => samples),
  );
  const signed = small.slice();
  signed[placeOf(signed, 2, "FORMAT") + 2] = "X".charCodeAt(0);
  expect(parseC3d(signed).analogue.format).toBe("signed");
  expect(parseC3d(signed).cautions).toEqual([]);
});

it("reads bytes that lie anywhere in their buffer", () => {
  const wide = new Uint8Array(small.length + 3);
  wide.set(small, 3);
  expect(parseC3d(wide.subarray(3))).toEqual(parseC3d(small));
});

it("a processor mark that is wrong can be overruled", () => {
  const bytes = small.slice();
  bytes[515] = 0;
  expect(() => parseC3d(bytes)).toThrow(refusal("unreadable-file", /the processor is 0/));
  expect(parseC3d(bytes, { processor: "intel" })).toEqual(parseC3d(small));
});

it("refuses what is no bytes, an unknown processor, an unknown option", () => {
  expect(() => parseC3d("C3D" as never)).toThrow(refusal("wrong-type", /string/));
  expect(() => parseC3d(small, { processor: "arm" as never })).toThrow(refusal("out-of-range", /arm/));
  expect(() => parseC3d(small, { order: "intel" } as never)).toThrow(refusal("unknown-option", /order/));
});
