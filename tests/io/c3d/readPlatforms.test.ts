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
    const metres = cal.map((value, k) => (k % 6 < 3 ? value : value / 1000));
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

const cal = four.groups
  .find(({ name }) => name === "FORCE_PLATFORM")
  ?.parameters.find(({ name }) => name === "CAL_MATRIX")?.data as readonly number[];

describe("2026-11-25: a matrix of another size was read as one of 6 × 6", () => {
  /** The 6 × 6 numbers, by columns, at the beginning of each of two larger matrices, −999 around them. */
  const within = (rows: number, columns: number) => ({
    data: Array.from({ length: rows * columns * 2 }, (_, at) => {
      const [row, column] = [at % rows, Math.floor(at / rows) % columns];
      return row < 6 && column < 6 ? (cal[row + 6 * column] as number) : -999;
    }),
    dimensions: [rows, columns, 2],
  });
  it.each([
    [8, 8],
    [6, 8],
    [8, 6],
  ])(
    "the 6 × 6 at the beginning of %i × %i, as files with platforms of several types have, is the matrix",
    (rows, columns) => {
      const file = changed(four, { "FORCE_PLATFORM:CAL_MATRIX": within(rows, columns) });
      expect(plate(file).calibration).toEqual(plate(four).calibration);
    },
  );
  it("the second platform has the second matrix", () => {
    const twice = Object.fromEntries(
      ["CHANNEL", "CORNERS", "ORIGIN", "TYPE"].map((name) => {
        const own = four.groups
          .find((group) => group.name === "FORCE_PLATFORM")
          ?.parameters.find((one) => one.name === name) as { readonly data: readonly number[] };
        return [`FORCE_PLATFORM:${name}`, { data: [...own.data, ...own.data] }];
      }),
    );
    const matrix = within(8, 8);
    matrix.data.fill(-999, 0, 64);
    const file = changed(four, {
      ...twice,
      "FORCE_PLATFORM:USED": { data: [2] },
      "FORCE_PLATFORM:CAL_MATRIX": matrix,
    });
    expect(plate(file, {}, 1).calibration).toEqual(plate(four).calibration);
  });
  it.each([[[6, 5, 1]], [[4, 9, 1]], [[36]], [[]]])(
    "of dimensions %j there is none: it is said",
    (dimensions) => {
      const recording = c3dToRecording(
        changed(four, { "FORCE_PLATFORM:CAL_MATRIX": { data: cal.slice(0, 36), dimensions } }),
        STEP,
      );
      expect(recording.platforms).toBeUndefined();
      const caution = recording.cautions.find(({ code }) => code === "platform-incomplete");
      expect(caution?.message).toContain(
        `CAL_MATRIX of dimensions ${dimensions.join(" × ") || "none"}; type 4 needs`,
      );
    },
  );
  it("with fewer matrices than platforms, that is said", () => {
    const file = changed(four, {
      "FORCE_PLATFORM:CAL_MATRIX": { data: cal.slice(0, 30), dimensions: [6, 6, 1] },
    });
    const { cautions } = c3dToRecording(file, STEP);
    expect(cautions.map(({ message }) => message).join()).toContain("is not among the matrices of");
  });
});

describe("2026-11-25: a wrong unit of moments put the load a thousand times too far or too near, without a word", () => {
  /** The type 2 file, whose moments are N mm, with other units, scaled samples and parameters. */
  const stated = (unit: string, factor: number, changes: Parameters<typeof changed>[1] = {}) =>
    changed(
      {
        ...two,
        analogue: {
          ...two.analogue,
          channels: two.analogue.channels.map((one, k) =>
            k < 3 ? one : { ...one, unit, samples: one.samples.map((value) => value * factor) },
          ),
        },
      },
      changes,
    );
  const doubts = (file: C3dFile, options = {}) =>
    c3dToRecording(file, { ...STEP, ...options }).cautions.filter(({ code }) => code.endsWith("-doubtful"));
  it("the file as it is, and a plate that nobody loads, raise no doubt", () => {
    expect(doubts(two)).toEqual([]);
    expect(doubts(four)).toEqual([]);
    const channels = two.analogue.channels.map((one) => ({
      ...one,
      samples: one.samples.map((x) => x / 1e3),
    }));
    expect(doubts({ ...stated("Nm", 1), analogue: { ...two.analogue, channels } })).toEqual([]);
  });
  it("N m on moments in N mm", () => {
    const [caution, ...more] = doubts(stated("Nm", 1));
    expect(more).toEqual([]);
    expect(caution?.code).toBe("moment-unit-doubtful");
    expect(caution?.message).toMatch(/lie \d{5,6} mm from the transducer.*units: \{ "MX1": "N mm" \}/);
    const units = { MX1: "N mm", MY1: "N mm", MZ1: "N mm" };
    expect(doubts(stated("Nm", 1), { units })).toEqual([]);
  });
  it("N mm on moments in N m", () => {
    const [caution] = doubts(stated("Nmm", 0.001));
    expect(caution?.code).toBe("moment-unit-doubtful");
    expect(caution?.message).toMatch(/lie 0\.\d+ mm from the transducer.*units: \{ "MX1": "N m" \}/);
  });
  it("no moments at all count as in the middle only of a transducer that lies below the surface", () => {
    expect(doubts(stated("Nmm", 0))).toHaveLength(1);
    expect(doubts(stated("Nmm", 0, { "FORCE_PLATFORM:ORIGIN": { data: [0, 0, 0] } }))).toEqual([]);
  });
  it("a matrix of type 4 that fits neither unit", () => {
    const data = cal.map((value, k) => (k % 6 < 3 ? value : value * 1000));
    const [caution] = doubts(changed(four, { "FORCE_PLATFORM:CAL_MATRIX": { data } }));
    expect(caution).toMatchObject({ code: "moment-unit-doubtful" });
    expect(caution?.message).toContain("check its CAL_MATRIX");
  });
  it("a centre of pressure (type 1) in metres that holds millimetres", () => {
    const metres = changed(stated("m", 1), { "FORCE_PLATFORM:TYPE": { data: [1] } });
    const [caution] = doubts(metres);
    expect(caution?.code).toBe("centre-of-pressure-doubtful");
    expect(caution?.message).toContain("check the unit of its centre of pressure");
  });
  it("sensors (type 3) whose spacings are in millimetres leave the platform out, as before", () => {
    const three = parsed("standard/type-3-120.c3d");
    const spaced = (...data: number[]) =>
      c3dToRecording(changed(three, { "FORCE_PLATFORM:ORIGIN": { data, dimensions: [3, 1] } }), STEP);
    expect(codes(spaced(0.12, 0.2, -0.05))).toEqual([]);
    expect(codes(spaced(120, 200, -50))).toEqual(["platform-incomplete"]);
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
          channels: two.analogue.channels.map((one, k) => ({
            ...one,
            unit: k < 3 ? force : moment,
            // Forces of the same size, whatever the unit.
            samples: k < 3 ? one.samples.map((value) => value / forces) : one.samples,
          })),
        },
      };
      const { channels } = plate(file);
      expect(
        (channels[2]?.samples[1644] as number) / (file.analogue.channels[2]?.samples[1644] as number),
      ).toBeCloseTo(forces, 9);
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
