import type { Platform, PlatformType, Position } from "../../src/recording/index.js";

/**
 * Force of the ground on the runner, its point on the ground, and the free moment about the vertical, by
 * sample.
 */
export interface Load {
  readonly force: readonly Position[];
  readonly point: readonly Position[];
  readonly freeMoment: readonly number[];
}

/** Where a plate lies and how its transducer is built in. */
export interface Placement {
  readonly centre: Position;
  /** Turn of the plate's x axis about the vertical, from forward to the left, radians. */
  readonly yaw: number;
  readonly origin: readonly [number, number, number];
  readonly size: readonly [number, number];
}

type Triple = readonly [number, number, number];

const dot = (a: Triple, b: Triple) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const triple = ({ forward, up, right }: Position): Triple => [forward, up, right];

/**
 * What a plate's channels hold under a load: the runner's force on the plate along its axes, z down. By hand,
 * statics.
 */
export function platformUnder(
  load: Load,
  { centre, yaw, origin, size }: Placement,
  { type = 2, name = "plate" }: { readonly type?: PlatformType; readonly name?: string } = {},
): Platform {
  const x: Triple = [Math.cos(yaw), 0, -Math.sin(yaw)];
  const z: Triple = [0, -1, 0];
  const y = cross(z, x);
  const along = (v: Triple): Triple => [dot(v, x), dot(v, y), dot(v, z)];
  const offset: Triple = type === 3 ? [0, 0, origin[2]] : origin;
  const rows = load.force.map((force, i) => {
    const action = along(triple(force)).map((value) => -value) as unknown as Triple;
    const point = triple(load.point[i] as Position);
    const from = triple(centre);
    const place = along([point[0] - from[0], point[1] - from[1], point[2] - from[2]]);
    const arm: Triple = [place[0] + offset[0], place[1] + offset[1], place[2] + offset[2]];
    const turn = cross(arm, action);
    // The runner twists the plate by minus the free moment about the vertical, which is minus the plate's z.
    const twist = load.freeMoment[i] as number;
    const moment: Triple = [turn[0], turn[1], turn[2] + twist];
    if (type === 1) return [...action, place[0], place[1], twist];
    if (type === 3) return eight(action, moment, origin);
    return [...action, ...moment];
  });
  const units =
    type === 3
      ? Array(8).fill("N")
      : type === 1
        ? ["N", "N", "N", "m", "m", "N m"]
        : ["N", "N", "N", "N m", "N m", "N m"];
  const corner = (i: number, j: number): Position => {
    const [a, b] = [(i * size[0]) / 2, (j * size[1]) / 2];
    return {
      forward: centre.forward + a * x[0] + b * y[0],
      up: centre.up,
      right: centre.right + a * x[2] + b * y[2],
    };
  };
  return {
    name,
    type,
    channels: units.map((unit: string, k: number) => ({
      name: `channel ${k + 1}`,
      unit,
      samples: Float64Array.from(rows, (row) => row[k] as number),
    })),
    corners: [corner(1, 1), corner(-1, 1), corner(-1, -1), corner(1, -1)],
    origin,
  };
}

/** A split of force and moment among eight sensors. */
function eight([fx, fy, fz]: Triple, [mx, my, mz]: Triple, [a, b]: Triple): number[] {
  const difference = mz / a;
  const [p, q] = [mx / b, my / a];
  return [
    fx / 2,
    fx / 2,
    (fy + difference) / 2,
    (fy - difference) / 2,
    (fz + p - q) / 4,
    (fz + p + q) / 4,
    (fz - p + q) / 4,
    (fz - p - q) / 4,
  ];
}
