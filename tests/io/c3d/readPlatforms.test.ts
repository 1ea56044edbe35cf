import { describe, expect, it } from "vitest";
import { type C3dFile, c3dToRecording } from "../../../src/io/index.js";
import type { Platform } from "../../../src/recording/index.js";
import { changed, units } from "./changed.js";
import { parsed } from "./files.js";

const STEP = { axes: { x: "forward", y: "left", z: "up" } } as const;
const codes = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);
const digits = (values: readonly number[], places: number) =>
  values.map((value) => Number(value.toFixed(places)));
const plate = (file: C3dFile, options = {}, index = 0) =>
  c3dToRecording(file, { ...STEP, ...options }).platforms?.[index] as Platform;

const two = parsed("standard/type-2.c3d");
const four = parsed("standard/type-4.c3d");

describe("standard sample set 10, type 4", () => {
  it("the published rows: matrix × scaled channels", () => {
    const platform = plate(four);
    const { calibration = [], channels } = platform;
    expect(channels.map(({ unit }) => unit)).toEqual(["V", "V", "V", "V", "V", "V"]);
    // The sheet's rows 1 to 3 use the scale −0.12220625473777 (Fz −0.122138172468624) and full digits of the matrix; the
    // file's matrix is rounded to three decimals: 0.05 % of a force of 700 N, and cross-talk terms.
    const scales = [1, 1, 0, 1, 1, 1].map((own) => (own ? -0.12220625473777 : -0.122138172468624));
    const apply = (raw: readonly number[]) =>
      calibration.map((row) =>
        row.reduce((sum, factor, k) => sum + factor * ((raw[k] as number) - 2047) * (scales[k] as number), 0),
      );
    const one = apply([3000, 2047, 2047, 2047, 2047, 2047]);
    expect(Math.abs((one[0] as number) + 177.796986813127)).toBeLessThan(0.1);
    expect(Math.abs((one[1] as number) + 1.62840176284055)).toBeLessThan(0.1);
    expect(Math.abs((one[2] as number) + 5.30176952523495)).toBeLessThan(0.1);
    const three = apply([2047, 2047, 3000, 3000, 2047, 2047]);
    expect(Math.abs((three[2] as number) + 697.005544874704)).toBeLessThan(0.1);
    // N mm in the sheet, N m here.
    expect(Math.abs((three[3] as number) + 87.9405194396765)).toBeLessThan(0.1);
  });
  it.each([
    [1196, -60.1715, -9.9821, 376.337],
    [1402, -5.835, -4.8191, 220.3535],
    [1644, 89.7046, -11.193, 390.5162],
  ])("sample %d, force in the laboratory by NumPy: x %d, y %d, z %d N", (sample, x, y, z) => {
    const { calibration = [], channels, corners } = plate(four);
    const [fx, fy, fz] = calibration.map((row) =>
      row.reduce((sum, factor, k) => sum + factor * (channels[k]?.samples[sample] as number), 0),
    ) as [number, number, number];
    // Plate axes by the corners, in file axes: x forward, y left, z up.
    const [c1, c2, c3, c4] = corners.map(({ forward, up, right }) => [forward, -right, up]) as [
      number[],
      number[],
      number[],
      number[],
    ];
    const unit = (v: number[]) => v.map((value) => value / Math.hypot(...v));
    const cross = ([a = 0, b = 0, c = 0]: number[], [d = 0, e = 0, f = 0]: number[]) => [
      b * f - c * e,
      c * d - a * f,
      a * e - b * d,
    ];
    const sum = (plus: number[][], minus: number[][]) =>
      [0, 1, 2].map(
        (k) =>
          plus.reduce((all, v) => all + (v[k] as number), 0) -
          minus.reduce((all, v) => all + (v[k] as number), 0),
      );
    const ex = unit(sum([c1, c4], [c2, c3]));
    const ez = unit(cross(ex, sum([c1, c2], [c3, c4])));
    const ey = cross(ez, ex);
    const lab = [0, 1, 2].map(
      (k) => fx * (ex[k] as number) + fy * (ey[k] as number) + fz * (ez[k] as number),
    );
    expect(digits(lab, 4)).toEqual([x, y, z]);
  });
  it("moment rows are told by the load to be N mm/V, with a caution", () => {
    const recording = c3dToRecording(four, STEP);
    expect(codes(recording)).toEqual(["group-missing", "unit-deduced", "moment-unit-deduced"]);
    expect(recording.platforms?.[0]?.calibration?.[3]?.[3]).toBeCloseTo(0.741871, 5);
    expect(recording.platforms?.[0]?.calibration?.[0]?.[0]).toBeCloseTo(1.527, 5);
  });
  it("moment rows in N m/V are told as well", () => {
    const cal = four.groups
      .find(({ name }) => name === "FORCE_PLATFORM")
      ?.parameters.find(({ name }) => name === "CAL_MATRIX");
    const metres = ((cal?.data ?? []) as number[]).map((value, k) => (k % 6 < 3 ? value : value / 1000));
    const file = changed(four, { "FORCE_PLATFORM:CAL_MATRIX": { data: metres } });
    expect(plate(file).calibration?.[3]?.[3]).toBeCloseTo(0.741871, 5);
  });
  it("without a load the unit of POINT:UNITS decides", () => {
    const silent = {
      ...four,
      analogue: {
        ...four.analogue,
        channels: four.analogue.channels.map((one) => ({ ...one, samples: one.samples.map(() => 0) })),
      },
    };
    expect(plate(silent).calibration?.[3]?.[3]).toBeCloseTo(0.741871, 5);
  });
  it("without a matrix the platform is left out, its channels stay", () => {
    const recording = c3dToRecording(changed(four, { "FORCE_PLATFORM:CAL_MATRIX": null }), STEP);
    expect(recording.platforms).toBeUndefined();
    expect(recording.channels).toHaveLength(6);
    expect(codes(recording)).toContain("platform-incomplete");
  });
});
describe("units", () => {
  const small = parsed("worked/intel_float.c3d");
  it("of forces and moments are read as files write them", () => {
    const named = (force: string, moment: string, forces = 1, moments = 0.001) => {
      const file = {
        ...two,
        analogue: {
          ...two.analogue,
          channels: two.analogue.channels.map((one, k) => ({ ...one, unit: k < 3 ? force : moment })),
        },
      };
      const { channels } = plate(file);
      expect(
        (channels[2]?.samples[1644] as number) / (two.analogue.channels[2]?.samples[1644] as number),
      ).toBeCloseTo(forces, 12);
      expect(
        (channels[3]?.samples[1644] as number) / (two.analogue.channels[3]?.samples[1644] as number),
      ).toBeCloseTo(moments, 12);
    };
    named("N", "N.mm");
    named("nt", "ntmm");
    named("Newtons", "N*m", 1, 1);
    named("kN", "Newton-meters", 1000, 1);
  });
  const blank = (file: C3dFile) => ({
    ...file,
    analogue: { ...file.analogue, channels: file.analogue.channels.map((one) => ({ ...one, unit: "" })) },
  });
  it("that are missing are told by the load, with a caution", () => {
    const recording = c3dToRecording(blank(two), STEP);
    expect(codes(recording)).toEqual(["group-missing", "unit-deduced", "unit-deduced"]);
    expect(recording.platforms?.[0]?.channels[3]?.samples).toEqual(plate(two).channels[3]?.samples);
    const unloaded = {
      ...blank(two),
      analogue: {
        ...two.analogue,
        channels: two.analogue.channels.map((one) => ({
          ...one,
          unit: "",
          samples: one.samples.map(() => 1),
        })),
      },
    };
    expect(plate(unloaded).channels[3]?.samples[0]).toBe(0.001);
  });
  it("of volts where a force belongs leave the platform out; an option states the right one", () => {
    const volts = {
      ...two,
      analogue: {
        ...two.analogue,
        channels: two.analogue.channels.map((one, k) => (k === 2 ? { ...one, unit: "V" } : one)),
      },
    };
    expect(c3dToRecording(volts, STEP).platforms).toBeUndefined();
    expect(plate(volts, { units: { FZ1: "N" } }).channels[2]?.samples).toEqual(
      plate(two).channels[2]?.samples,
    );
  });
  it("of length: mm, cm, m, cut names; a blank one by the plates, else by the markers, else refused", () => {
    const corner = (unit: string, options = {}) =>
      plate(changed(two, { "POINT:UNITS": units(unit) }), options).corners[0].forward;
    expect(["mm", "mill", "MM "].map((unit) => corner(unit))).toEqual([0.464, 0.464, 0.464]);
    expect(corner("")).toBe(0.464);
    expect(corner("mm", { lengthUnit: "cm" })).toBeCloseTo(4.64, 12);
    const bare = changed(small, { "POINT:UNITS": units("?"), "FORCE_PLATFORM:CORNERS": null });
    const recording = c3dToRecording(bare, STEP);
    expect(codes(recording)).toEqual(["unit-deduced", "platform-incomplete"]);
    expect(recording.markers?.markers[0]?.forward[0]).toBe(0.1);
    const tiny = {
      ...bare,
      points: bare.points.map((point) => ({
        ...point,
        x: point.x.map(() => 0),
        y: point.y.map(() => 0),
        z: point.z.map(() => 100),
      })),
    };
    expect(() => c3dToRecording(tiny, STEP)).toThrow(
      expect.objectContaining({ code: "unknown-unit", argument: "lengthUnit" }),
    );
    expect(codes(c3dToRecording(two, { ...STEP, lengthUnit: "mm" }))).toEqual(["group-missing"]);
    expect(codes(c3dToRecording(two, { ...STEP, lengthUnit: "cm" }))).toContain("option-over-file");
  });
});

describe("platforms", () => {
  it.each([0, 5, 6, 7, 11])("of type %d are named and their channels kept", (type) => {
    const recording = c3dToRecording(changed(two, { "FORCE_PLATFORM:TYPE": { data: [type] } }), STEP);
    expect(recording.platforms).toBeUndefined();
    expect(recording.channels.map(({ name, quantity }) => [name, quantity])).toEqual(
      ["FX1", "FY1", "FZ1", "MX1", "MY1", "MZ1"].map((name) => [name, "other"]),
    );
    expect(codes(recording)).toContain("platform-type-unsupported");
    expect(recording.cautions.find(({ code }) => code === "platform-type-unsupported")?.message).toContain(
      `of type ${type}`,
    );
  });
  it("that name channels the file lacks, or have no surface, are left out with a caution", () => {
    const incomplete = (changes: Parameters<typeof changed>[1]) => {
      const recording = c3dToRecording(changed(two, changes), STEP);
      expect(recording.platforms).toBeUndefined();
      expect(recording.channels).toHaveLength(6);
      expect(codes(recording)).toContain("platform-incomplete");
    };
    incomplete({ "FORCE_PLATFORM:CHANNEL": { data: [1, 2, 3, 4, 5, 9] } });
    incomplete({ "FORCE_PLATFORM:CHANNEL": { data: [0, 0, 0, 0, 0, 0] } });
    incomplete({ "FORCE_PLATFORM:CORNERS": { data: new Array(12).fill(0) } });
    incomplete({ "FORCE_PLATFORM:CORNERS": { data: [1, 2] } });
  });
  it("of type 1 have their centre of pressure in the unit of length where no other is stated", () => {
    const file = changed(two, { "FORCE_PLATFORM:TYPE": { data: [1] } });
    const platform = plate(file);
    expect(platform.channels.map(({ unit }) => unit)).toEqual(["N", "N", "N", "m", "m", "N m"]);
    expect(
      (platform.channels[3]?.samples[1644] as number) / (two.analogue.channels[3]?.samples[1644] as number),
    ).toBeCloseTo(0.001, 12);
  });
  it.each<[readonly number[], Platform["zero"]]>([
    [[1, 10], { from: 0, to: 200 }],
    [[11, 11], { from: 200, to: 220 }],
    [[190, 500], { from: 3780, to: 3980 }],
    [[0, 0], undefined],
    [[1, 0], undefined],
    [[500, 600], undefined],
  ])("ZERO %j of frames with 20 samples each is %j", (data, zero) =>
    expect(plate(changed(two, { "FORCE_PLATFORM:ZERO": { data } })).zero).toEqual(zero),
  );
});
