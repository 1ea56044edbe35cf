import { describe, expect, it } from "vitest";
import { platformReaction, surfaceCentreOfPressure } from "../../src/force/index.js";
import published from "../fixtures/force/publishedPlates.json" with { type: "json" };
import { codes, forceAt, LAB, momentAt, near, vector } from "./checks.js";
import { platformOf } from "./plates.js";

describe("published: two plates of type 2 (public test recording), printed to 3 decimals", () => {
  it.each(["plate.type2.1", "plate.type2.2"] as const)("%s", (id) => {
    const { inputs, expected, tolerance } = published[id];
    const platform = platformOf({ type: 2, rows: inputs.channels, ...inputs, axes: LAB, lengthUnit: "mm" });
    const reaction = platformReaction(platform);
    const moment = reaction.moment as NonNullable<typeof reaction.moment>;
    expected.samples.forEach((sample, i) => {
      const { force, freeMoment, cop } = sample;
      const lab = (v: readonly number[]) => [v[1], v[2], v[0]] as number[];
      near(forceAt(reaction, i), lab(force), tolerance.abs);
      near(
        momentAt({ ...reaction, moment }, i).map((m) => m * 1000),
        lab(sample.moment),
        tolerance.abs,
      );
      // Most samples are unloaded: they test the arithmetic behind a floor of nearly nothing, where force is
      // up.
      const point = surfaceCentreOfPressure(reaction, i, { floor: 1e-6 });
      if ((force[2] as number) < 0) {
        expect(point).toBeNull();
        return;
      }
      near(
        vector(point?.position).map((m) => m * 1000),
        lab(cop),
        id === "plate.type2.1" ? 0.002 : 0.0025,
      );
      near([-1000 * (point?.freeMoment ?? Number.NaN)], [freeMoment[2] as number], tolerance.abs);
    });
    expect(codes(reaction)).toContain("origin-negated");
    expect(codes(reaction)).not.toContain("force-negated");
  });
  it("the origin as stored moves the centre of pressure by 2 o_z F_x / F_z and 2 o_x", () => {
    const { inputs } = published["plate.type2.1"];
    const platform = platformOf({ type: 2, rows: inputs.channels, ...inputs, axes: LAB, lengthUnit: "mm" });
    const [auto, stored] = [platformReaction(platform), platformReaction(platform, { originSign: "stored" })];
    expect(codes(stored)).toEqual([]);
    const [one, two] = [surfaceCentreOfPressure(auto, 1), surfaceCentreOfPressure(stored, 1)];
    const [ox, , oz] = platform.origin;
    const share = (inputs.channels[1]?.[0] as number) / (inputs.channels[1]?.[2] as number);
    expect((two?.x ?? 0) - (one?.x ?? 0)).toBeCloseTo(2 * (oz * share - ox), 9);
    const negated = platformReaction({ ...platform, origin: [-ox, -platform.origin[1], -oz] });
    expect(vector(surfaceCentreOfPressure(negated, 1)?.position)).toEqual(vector(one?.position));
  });
});

describe("published: a plate of type 3 whose corners are 5 mm out of plane", () => {
  const { inputs, expected, tolerance, recomputed } = published["plate.type3"];
  const lab = (v: readonly number[]) => [v[1], v[2], v[0]] as number[];
  const read = (corners: readonly (readonly number[])[]) =>
    platformReaction(
      platformOf({
        type: 3,
        rows: [inputs.channels],
        corners,
        origin: inputs.origin,
        axes: LAB,
        lengthUnit: "mm",
      }),
    );
  it("axes from all four corners: as recomputed with NumPy, 1e-9", () => {
    const reaction = read(inputs.corners);
    near(forceAt(reaction, 0), lab(recomputed.fourCorners.force), 1e-9);
    near(
      momentAt(reaction, 0).map((m) => 1000 * m),
      lab(recomputed.fourCorners.moment),
      1e-8,
    );
    near(
      vector(surfaceCentreOfPressure(reaction, 0)?.position).map((m) => 1000 * m),
      lab(recomputed.fourCorners.cop),
      1e-9,
    );
    expect(codes(reaction)).toEqual([]);
  });
  it("the printed centre of pressure, with a maker's correction of 0.44 mm, within 0.5 mm", () => {
    near(
      vector(surfaceCentreOfPressure(read(inputs.corners), 0)?.position).map((m) => 1000 * m),
      lab(expected.cop),
      tolerance.cop,
    );
  });
  it("with a plate flat along the axes of the source, from corners 1-2 and 1-4: printed force and moment, 12 digits", () => {
    const [c1, c2, , c4] = inputs.corners as [number[], number[], number[], number[]];
    const minus = (a: number[], b: number[]) => a.map((v, k) => v - (b[k] as number));
    const times = (a: number[], f: number) => a.map((v) => v * f);
    const dot = (a: number[], b: number[]) => a.reduce((s, v, k) => s + v * (b[k] as number), 0);
    const unit = (a: number[]) => times(a, 1 / Math.sqrt(dot(a, a)));
    const x = unit(minus(c1, c2));
    const along = minus(c1, c4);
    const y = unit(minus(along, times(x, dot(along, x))));
    const corner = (i: number, j: number) => times(x, 200 * i).map((v, k) => v + 300 * j * (y[k] as number));
    const reaction = read([corner(1, 1), corner(-1, 1), corner(-1, -1), corner(1, -1)]);
    near(forceAt(reaction, 0), lab(expected.force), tolerance.force);
    near(
      momentAt(reaction, 0).map((m) => 1000 * m),
      lab(expected.moment),
      tolerance.moment,
    );
  });
});

it("published: a plate of type 1, 7 digits (the moment printed there has the wrong sign)", () => {
  const { inputs, expected, tolerance } = published["plate.type1"];
  const parts = { corners: inputs.corners, origin: [0, 0, 0], lengthUnit: "m", type: 1 } as const;
  const axes = { x: "forward", y: "up", z: "right" } as const;
  // The printed step is 4 N: scaled up, so that it lies above the floor. Force and free moment scale, the
  // point stays.
  const row = inputs.channels.map((value, k) => (k === 3 || k === 4 ? value : 100 * value));
  const reaction = platformReaction(platformOf({ ...parts, rows: [row], axes }));
  // The recording holds a force that points down: negated, as it must.
  near(
    forceAt(reaction, 0),
    expected.force.map((value) => -100 * value),
    100 * tolerance.abs,
  );
  const point = surfaceCentreOfPressure(reaction, 0);
  near(vector(point?.position), expected.cop, tolerance.abs);
  const { z } = reaction.frame;
  near(
    vector(z).map((part) => (part * (point?.freeMoment ?? Number.NaN)) / -100),
    expected.freeMoment,
    tolerance.abs,
  );
});
