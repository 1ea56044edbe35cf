import { describe, expect, it } from "vitest";
import { platformReaction, surfaceCentreOfPressure } from "../../src/force/index.js";
import type { Platform, PlatformType } from "../../src/recording/index.js";
import statics from "../fixtures/force/platforms.json" with { type: "json" };
import published from "../fixtures/force/publishedPlates.json" with { type: "json" };
import { codes, forceAt, LAB, near, vector } from "./checks.js";
import { platformOf, positionOf } from "./plates.js";

describe.each(statics.cases)("independent code: NumPy, force to channels by statics: $name", (plate) => {
  const platform = platformOf({
    type: plate.type as PlatformType,
    rows: plate.channels,
    corners: plate.corners,
    origin: plate.origin,
    axes: LAB,
    lengthUnit: plate.unit as "mm" | "m",
    ...(plate.calibrationMatrixRows && { calibration: plate.calibrationMatrixRows }),
  });
  const reaction = platformReaction(platform);
  it("force, centre of pressure and free moment come back to 1e-9", () => {
    let points = 0;
    plate.truthISB.forceN.forEach((force, i) => {
      near(forceAt(reaction, i), force, 2e-9);
      const point = surfaceCentreOfPressure(reaction, i);
      const cop = plate.truthISB.copM[i] as number[] | null;
      if (cop?.every((value) => value !== null) !== true) {
        expect(point).toBeNull();
        return;
      }
      points++;
      near(vector(point?.position), cop, 1e-9);
      // About the plate's z axis, which points down: the other sign of the moment about the vertical.
      near([-(point?.freeMoment ?? Number.NaN)], [plate.truthISB.freeMomentAboutYNm[i] as number], 1e-8);
    });
    expect(points).toBe(plate.truthISB.forceN.length - 1);
  });
  it("its channels are the runner's force on the plate: negated, and said", () => {
    expect(codes(reaction)).toEqual(["force-negated"]);
    expect(reaction.cautions[0]?.message).toContain("points down under load");
    expect(codes(platformReaction(platform, { forceOn: "platform" }))).toEqual([]);
    expect(forceAt(platformReaction(platform, { forceOn: "runner" }), 3)[1]).toBeCloseTo(-1000, 9);
  });
});

it("a calibration matrix read row by row lets the peak pass and the cross-talk turn (trap)", () => {
  const plate = statics.cases[1];
  const rows = plate?.calibrationMatrixRows as number[][];
  const parts = {
    type: 4,
    corners: plate?.corners as number[][],
    origin: plate?.origin as number[],
  } as const;
  const read = (calibration: number[][]) =>
    platformReaction(
      platformOf({ ...parts, rows: plate?.channels as number[][], axes: LAB, lengthUnit: "mm", calibration }),
    );
  const [right, wrong] = [read(rows), read(rows.map((_, i) => rows.map((row) => row[i] as number)))];
  expect(Math.abs(1 - (wrong.force.up[0] as number) / (right.force.up[0] as number))).toBeLessThan(0.01);
  const apart = wrong.force.forward.map((value, i) => Math.abs(value - (right.force.forward[i] as number)));
  expect(Math.max(...apart)).toBeGreaterThan(0.5);
});

describe("a cover on the plate", () => {
  const corners = [
    [0.3, 0.2, 0],
    [-0.3, 0.2, 0],
    [-0.3, -0.2, 0],
    [0.3, -0.2, 0],
  ];
  const axes = { x: "forward", y: "right", z: "down" } as const;
  // A force of the runner (60, −30, 900) N, plate axes, through the point (0.1, 0.05) m on top of a cover of
  // 20 mm.
  const [o, d] = [-0.04, 0.02];
  const [fx, fy, fz, tz] = [60, -30, 900, 4];
  const r = [0.1, 0.05, o - d] as const;
  const moment = [r[1] * fz - r[2] * fy, r[2] * fx - r[0] * fz, r[0] * fy - r[1] * fx + tz];
  const six = platformOf({
    type: 2,
    rows: [[fx, fy, fz, ...moment]],
    corners,
    origin: [0, 0, o],
    axes,
    lengthUnit: "m",
  });
  // The same force states its centre of pressure on the bare plate farther along its line.
  const [px, py] = [0.1 + (d * fx) / fz, 0.05 + (d * fy) / fz];
  const press = platformOf({
    type: 1,
    rows: [[fx, fy, fz, px, py, tz]],
    corners,
    origin: [0, 0, 0],
    axes,
    lengthUnit: "m",
  });
  it.each([
    ["type 2", six],
    ["type 1", press],
  ] as const)("%s: the point on top of it comes back (by hand, statics)", (_, platform) => {
    const point = surfaceCentreOfPressure(platformReaction(platform, { coverThickness: d }), 0);
    near(vector(point?.position), [0.1, d, 0.05], 1e-12);
    near([point?.freeMoment ?? Number.NaN], [-tz], 1e-12);
    const bare = surfaceCentreOfPressure(platformReaction(platform), 0);
    near([bare?.x ?? 0, bare?.y ?? 0], [px, py], 1e-12);
  });
  it.each([
    { coverThickness: -0.01 },
    { coverThickness: 20 },
    { forceOn: "ground" as never },
    { originSign: "both" as never },
  ])("refuses %j", (options) =>
    expect(() => platformReaction(six, options)).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});

describe("plates that lie in odd ways", () => {
  const axes = { x: "forward", y: "right", z: "down" } as const;
  const tiltedBy = (degrees: number, height: number): Platform => {
    const [s, c] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
    const corner = (x: number, y: number) => [x * c, y, -(height + x * s)];
    return platformOf({
      type: 2,
      rows: [[0, 0, 800, 0.02 * 800, -0.1 * 800, 0]],
      corners: [corner(0.3, 0.2), corner(-0.3, 0.2), corner(-0.3, -0.2), corner(0.3, -0.2)],
      origin: [0, 0, -0.0001],
      axes,
      lengthUnit: "m",
    });
  };
  it("tilted by 10° and raised by 0.5 m: force turns with it, the point lies on the surface (by hand), and it is said", () => {
    const reaction = platformReaction(tiltedBy(10, 0.5));
    const [s, c] = [Math.sin(Math.PI / 18), Math.cos(Math.PI / 18)];
    near(forceAt(reaction, 0), [-800 * s, 800 * c, 0], 1e-9);
    const point = surfaceCentreOfPressure(reaction, 0);
    near(vector(point?.position), [0.1 * c, 0.5 + 0.1 * s, 0.02], 1e-12);
    expect(codes(reaction)).toEqual(["force-negated", "tilted-plate"]);
    expect(codes(platformReaction(tiltedBy(1, 0)))).toEqual(["force-negated"]);
  });
  it("corners the other way round let its z axis point up, which is said", () => {
    const { corners, ...platform } = tiltedBy(0, 0);
    const [c1, c2, c3, c4] = corners;
    expect(codes(platformReaction({ ...platform, corners: [c4, c3, c2, c1], origin: [0, 0, 0.04] }))).toEqual(
      ["plate-axes"],
    );
  });
  it("an origin of 0 0 0 is said", () => {
    expect(codes(platformReaction({ ...tiltedBy(0, 0), origin: [0, 0, 0] }))).toContain("origin-zero");
  });
  it("a mapping of the laboratory puts its corners where they are: a right-handed turn changes nothing on the plate", () => {
    const { cases } = statics;
    const plate = cases[0] as (typeof cases)[number];
    const read = (turned: typeof LAB | { x: "backward"; y: "right"; z: "up" }) =>
      platformReaction(
        platformOf({
          type: 2,
          rows: plate.channels,
          corners: plate.corners,
          origin: plate.origin,
          axes: turned,
          lengthUnit: "mm",
        }),
      );
    const [one, two] = [read(LAB), read({ x: "backward", y: "right", z: "up" })];
    const [a, b] = [surfaceCentreOfPressure(one, 0), surfaceCentreOfPressure(two, 0)];
    near([b?.x ?? 0, b?.y ?? 0, b?.freeMoment ?? 0], [a?.x ?? 1, a?.y ?? 1, a?.freeMoment ?? 1], 1e-12);
    expect(two.force.forward[0]).toBeCloseTo(-(one.force.right[0] as number), 12);
    expect(positionOf([1, 2, 3], LAB, 1)).toEqual({ right: 1, forward: 2, up: 3 });
  });
});

it.each([
  [{ unloaded: { from: 0, to: 9 } }, "out-of-range"],
  [{ unloaded: { from: -1, to: 1 } }, "out-of-range"],
  [{ floor: 3 } as never, "unknown-option"],
])("refuses the options %j", (options, code) => {
  const { inputs } = published["plate.type2.1"];
  const platform = platformOf({ type: 2, rows: inputs.channels, ...inputs, axes: LAB, lengthUnit: "mm" });
  expect(() => platformReaction(platform, options)).toThrow(expect.objectContaining({ code }));
});

it("refuses a gap with platform, channel and sample, but not in the centre of pressure of an unloaded plate", () => {
  const { inputs } = published["plate.type2.1"];
  const rows = inputs.channels.map((row) => [...row]);
  (rows[1] as number[])[4] = Number.NaN;
  const platform = platformOf({
    name: "Plate 1",
    type: 2,
    rows,
    corners: inputs.corners,
    origin: inputs.origin,
    axes: LAB,
    lengthUnit: "mm",
  });
  expect(() => platformReaction(platform)).toThrow(
    expect.objectContaining({ code: "gap", where: "Plate 1, channel 5, sample 1" }),
  );
  const flat = {
    corners: [
      [300, 200, 0],
      [-300, 200, 0],
      [-300, -200, 0],
      [300, -200, 0],
    ],
    origin: [0, 0, 0],
    axes: { x: "forward", y: "right", z: "down" },
    lengthUnit: "mm",
  } as const;
  const press = (force: number) =>
    platformOf({
      type: 1,
      rows: [
        [0, 0, 500, 10, 20, 0],
        [0, 0, force, Number.NaN, Number.NaN, Number.NaN],
      ],
      ...flat,
    });
  expect(platformReaction(press(5)).moment?.forward.every(Number.isFinite)).toBe(true);
  expect(() => platformReaction(press(500))).toThrow(expect.objectContaining({ code: "gap" }));
});
