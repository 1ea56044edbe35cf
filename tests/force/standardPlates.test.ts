import { describe, expect, it } from "vitest";
import { platformReaction, surfaceCentreOfPressure } from "../../src/force/index.js";
import standard from "../fixtures/force/standardPlates.json" with { type: "json" };
import { codes, forceAt, LAB, momentAt, near, vector } from "./checks.js";
import { platformOf } from "./plates.js";

describe("the standard's sample set 01: two plates of type 2, computed with NumPy", () => {
  const { walk } = standard;
  const read = (k: 0 | 1) => {
    const plate = walk.plates[k] as (typeof walk.plates)[number];
    const rows = plate.counts.map((row) =>
      row.map((count, c) => (count - walk.offset) * (plate.scale[c] as number) * walk.generalScale),
    );
    const platform = platformOf({
      type: 2,
      rows,
      corners: plate.cornersMm,
      origin: plate.originMm,
      axes: LAB,
      lengthUnit: "mm",
    });
    return platformReaction(platform, { unloaded: { from: 0, to: 10 } });
  };
  const row = (sample: number) => walk.samples.indexOf(sample);
  it.each([
    [1, 769, [-27.086, 11.0209, 776.569], [176.023, 743.9212, 0.8924], 3989.22],
    [0, 1271, [-5.1353, 31.0071, 749.5978], [183.2564, 1440.7886, 1.19], 3739.39],
  ] as const)("plate %i, sample %i", (k, sample, force, cop, freeMoment) => {
    const reaction = read(k);
    near(forceAt(reaction, row(sample)), [force[1], force[2], force[0]], 5e-5);
    const point = surfaceCentreOfPressure(reaction, row(sample));
    near(
      vector(point?.position).map((m) => 1000 * m),
      [cop[1], cop[2], cop[0]],
      5e-5,
    );
    near([1000 * (point?.freeMoment ?? Number.NaN)], [freeMoment], 5e-3);
    expect(codes(reaction)).toEqual([]);
  });
  it.each([
    [1, 904, 805.58],
    [0, 1244, 817.277],
  ] as const)("plate %i peaks at sample %i with %d N", (k, sample, peak) =>
    expect(read(k).force.up[row(sample)]).toBeCloseTo(peak, 2),
  );
});

describe("the standard's worked example of set 10, types 2 and 4, printed by its spreadsheet", () => {
  const CALIBRATION_BY_INPUT = [
    [
      1.52664500630158, 0.0139821909473984, 0.0455233809939026, -4.28428089647381, -5.49420983739313,
      2.85602363138438,
    ],
    [
      -0.00463659158593573, 1.53860992467671, -0.0185075680755063, 17.1596420926258, 5.66777227244169,
      -9.63893867354395,
    ],
    [
      8.94631457400585e-5, -0.00913466946846399, 5.98816362965777, 13.2329871542355, 13.2502634875098,
      -4.60949818259691,
    ],
    [
      -5.90651296782983e-6, 0.00229084382882334, -2.40358171114412e-5, 741.871292280707, -0.53939731545365,
      -0.597238764875148,
    ],
    [
      0.00225256740008017, -0.00114750998592398, 6.89593848158476e-5, -1.6820225499479, 739.630773102336,
      2.04163970800227,
    ],
    [
      -0.00178188554565851, -0.004845060957262, -0.00234190703480284, -3.25034382883766, -0.593823662966123,
      391.879168998305,
    ],
  ];
  // Moments come out in N mm; corrected = matrix × measured wants one row an output.
  const calibration = CALIBRATION_BY_INPUT.map((_, output) =>
    CALIBRATION_BY_INPUT.map((row) => (row[output] as number) * (output < 3 ? 1 : 1e-3)),
  );
  const scale = [1, 1, 0.122138172468624 / 0.12220625473777, 1, 1, 1].map((f) => -0.12220625473777 * f);
  const flat = [
    [0.2, 0.2, 0],
    [-0.2, 0.2, 0],
    [-0.2, -0.2, 0],
    [0.2, -0.2, 0],
  ];
  const outputs = (counts: readonly number[], matrix: number[][]) => {
    const rows = [counts.map((count, c) => (count - 2047) * (scale[c] as number))];
    const platform = platformOf({
      type: 4,
      rows,
      corners: flat,
      origin: [0, 0, 0],
      axes: { x: "forward", y: "right", z: "down" },
      lengthUnit: "m",
      calibration: matrix,
    });
    const reaction = platformReaction(platform, { forceOn: "runner" });
    const [f, u, r] = forceAt(reaction, 0) as [number, number, number];
    const [mf, mu, mr] = momentAt(reaction, 0).map((m) => 1000 * m) as [number, number, number];
    return [f, r, -u, mf, mr, -mu];
  };
  it.each([
    [
      [3000, 2047, 2047, 2047, 2047, 2047],
      [
        -177.796986813127, -1.62840176284055, -5.30176952523495, 498.958324240317, 639.86974704358,
        -332.61982571665,
      ],
    ],
    [
      [2047, 2047, 3000, 3000, 2047, 2047],
      [
        -0.00972541483773188, 0.796456780121237, -697.005544874704, -87940.5194396765, -1479.4803150113,
        606.090842816439,
      ],
    ],
    [
      [0, 2047, 2047, 2047, 2047, 4096],
      [
        382.34590402778, 4.71093805134016, 11.9743711215916, -257.851346752376, -1225.71686289313,
        -97412.3332695783,
      ],
    ],
    [
      [2047, 2047, 2047, 2047, 3000, 2047],
      [
        -0.262339767709309, 0.133641951464225, -0.00803118654443922, 195.892653431567, -86139.2938561651,
        -237.774588553646,
      ],
    ],
  ])("raw %j: all printed digits", (counts, printed) => {
    outputs(counts, calibration).forEach((value, k) => {
      expect(value / (printed[k] as number)).toBeCloseTo(1, 10);
    });
  });
  it("its transpose, as a file read row by row gives it, does not", () => {
    const wrong = outputs(
      [3000, 2047, 2047, 2047, 2047, 2047],
      CALIBRATION_BY_INPUT.map((row) => row.map((v, k) => (k < 3 ? v : v * 1e-3))),
    );
    expect(wrong[0]).toBeCloseTo(-177.796986813127, 9);
    expect(Math.abs((wrong[3] as number) - 498.958324240317)).toBeGreaterThan(400);
  });
});

describe("the standard's sample set 10: one step as type 2 and as type 4, computed with NumPy", () => {
  const axes = { x: "forward", y: "left", z: "up" } as const;
  const read = (set: typeof standard.type4 | typeof standard.type2, type: 2 | 4, oz: number) => {
    const rows = set.counts.map((row) =>
      row.map((count, c) => (count - (set.offset[c] as number)) * (set.scale[c] as number)),
    );
    const stored = standard.type4.calibrationAsStored;
    const calibration = Array.from({ length: 6 }, (_, i) =>
      Array.from({ length: 6 }, (_, j) => (stored[i + 6 * j] as number) * (i < 3 ? 1 : 1e-3)),
    );
    const [ox, oy] = set.originMm as [number, number, number];
    const platform = platformOf({
      type,
      rows,
      corners: set.cornersMm,
      origin: [ox, oy, oz],
      axes,
      lengthUnit: "mm",
      ...(type === 4 && { calibration }),
    });
    return platformReaction(platform, { originSign: "stored" });
  };
  it.each([
    [2, 0, [-56.983, -9.5187, 378.9588], [224.9604, 234.3497], [213.7084, 232.6802], 128.5496],
    [4, 0, [-60.1715, -9.9821, 376.337], [220.5242, 227.8495], [208.5584, 226.0745], -334.285],
    [2, 1, [-5.5547, -4.366, 222.7989], [287.7079, 248.7157], [285.8624, 247.4602], 514.4415],
    [4, 1, [-5.835, -4.8191, 220.3535], [298.1563, 245.0637], [296.1947, 243.6376], 516.0351],
    [2, 2, [84.941, -9.395, 397.8813], [306.9289, 246.4993], [322.9645, 244.9424], 1001.5796],
    [4, 2, [89.7046, -11.193, 390.5162], [323.1514, 241.5326], [340.4036, 239.597], 1424.6167],
  ] as const)("type %i, sample %i", (type, row, force, stored, negated, freeMoment) => {
    for (const [oz, cop] of [
      [37.5, stored],
      [-37.5, negated],
    ] as const) {
      const reaction = read(type === 2 ? standard.type2 : standard.type4, type, oz);
      near(forceAt(reaction, row), [force[0], force[2], -force[1]], 5.1e-5);
      const point = surfaceCentreOfPressure(reaction, row);
      near([1000 * (point?.position.forward ?? 0), -1000 * (point?.position.right ?? 0)], cop, 5.1e-5);
      near([1000 * (point?.freeMoment ?? 0)], [freeMoment], 5.1e-5);
    }
  });
});

describe("the standard's sample set 15: eight channels without the sensors' places", () => {
  const { eight } = standard;
  const platform = platformOf({
    type: 3,
    rows: [eight.values],
    corners: eight.cornersM,
    origin: eight.originM,
    axes: LAB,
    lengthUnit: "m",
  });
  const reaction = platformReaction(platform);
  it("force alone, turned since it is the force on the platform, computed with NumPy to 6 decimals", () => {
    // Plate x along lab +y, plate y along lab +x, plate z down.
    near(forceAt(reaction, 0), [36.568779, 284.461779, 17.622263], 1e-6);
    expect(codes(reaction)).toEqual(["force-negated", "no-moment"]);
    expect(reaction.moment).toBeNull();
    expect(surfaceCentreOfPressure(reaction, 0)).toBeNull();
  });
});
