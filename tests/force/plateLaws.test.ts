import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Position } from "../../src/recording/index.js";
import { at, closeTo, place, recordingOf, step } from "./loads.js";
import { type Load, platformUnder } from "./statics.js";

describe("laws of a plate (property tests)", () => {
  const load = step(600, 850, place(0.12, 0.03));
  const truth = toGroundReaction(recordingOf([platformUnder(load, at(0, 0))]));
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const placements = fc.record({
    centre: fc.record({ forward: number(-2, 2), up: fc.constant(0), right: number(-2, 2) }),
    yaw: number(-3, 3),
    origin: fc.tuple(number(0.05, 0.3), number(0.05, 0.3), number(-0.1, -0.01)),
    size: fc.tuple(number(0.3, 2), number(0.3, 2)),
  });
  it.each([1, 2, 3] as const)("wherever a plate of type %i lies, the ground reaction is the same", (type) =>
    fc.assert(
      fc.property(placements, (placement) => {
        const ground = toGroundReaction(recordingOf([platformUnder(load, placement, { type })]));
        for (const part of ["forward", "up", "right"] as const) {
          closeTo(ground.force[part], truth.force[part], 1e-8);
          // Type 1 states no moment below the floor of its centre of pressure, where it is made to vanish.
          const loaded = (samples: Float64Array | undefined) =>
            samples?.map((value, i) => (type === 1 && (truth.force.up[i] as number) < 41 ? 0 : value));
          closeTo(loaded(ground.moment?.[part]), loaded(truth.moment?.[part]), 1e-7);
        }
      }),
      { numRuns: 20, seed: 5 },
    ),
  );
  it("twice the force is twice the force and the moment; the point stays", () => {
    const double = toGroundReaction(
      recordingOf([platformUnder(step(600, 850, place(0.12, 0.03), 1500, 2), at(0, 0))]),
    );
    closeTo(
      double.force.up,
      truth.force.up.map((f) => 2 * f),
      1e-9,
    );
    closeTo(
      double.moment?.right,
      truth.moment?.right?.map((m) => 2 * m),
      1e-9,
    );
  });
  it("a mirrored load on a mirrored plate mirrors force and moment", () => {
    const mirror = ({ forward, up, right }: Position): Position => ({ forward, up, right: -right });
    const mirrored: Load = {
      force: load.force.map(mirror),
      point: load.point.map(mirror),
      freeMoment: load.freeMoment.map((t) => -t),
    };
    const { centre, origin, ...rest } = at(0.3, 0.2);
    const one = toGroundReaction(recordingOf([platformUnder(load, { centre, origin, ...rest })]));
    const two = toGroundReaction(
      recordingOf([
        platformUnder(mirrored, {
          ...rest,
          centre: mirror(centre),
          yaw: -rest.yaw,
          origin: [origin[0], -origin[1], origin[2]],
        }),
      ]),
    );
    closeTo(
      two.force.right,
      one.force.right?.map((f) => -f),
      1e-9,
    );
    closeTo(
      two.moment?.forward,
      one.moment?.forward?.map((m) => -m),
      1e-9,
    );
    closeTo(two.moment?.right, one.moment?.right, 1e-9);
    closeTo(
      two.moment?.up,
      one.moment?.up?.map((m) => -m),
      1e-9,
    );
  });
  it("a load shared by two plates sums up to the load on one", () => {
    const half = step(600, 850, place(0.12, 0.03), 1500, 0.5);
    const plates = [
      platformUnder(half, at(0, 0), { name: "one" }),
      platformUnder(half, at(0.8, 0.1), { name: "two" }),
    ];
    const sum = toGroundReaction(recordingOf(plates), { plates: "together" });
    for (const part of ["forward", "up", "right"] as const) {
      closeTo(sum.force[part], truth.force[part], 1e-9);
      closeTo(sum.moment?.[part], truth.moment?.[part], 1e-9);
    }
    expect(sum.plates).toBeUndefined();
    expect(sum.settings.plates?.map(({ name }) => name)).toEqual(["one", "two"]);
  });
});
