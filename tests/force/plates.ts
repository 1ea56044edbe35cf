import {
  type Axes,
  axisMapping,
  type Platform,
  type PlatformType,
  type Position,
} from "../../src/recording/index.js";

/** What {@link platformOf} is made from: lengths in `lengthUnit`, moments in N times it. */
export interface PlatformParts {
  readonly name?: string;
  readonly type: PlatformType;
  /** One row a sample. */
  readonly rows: readonly (readonly number[])[];
  readonly corners: readonly (readonly number[])[];
  readonly origin: readonly number[];
  readonly axes: Axes;
  readonly lengthUnit: "mm" | "m";
  readonly calibration?: readonly (readonly number[])[];
}

const UNITS: Readonly<Record<PlatformType, readonly string[]>> = {
  1: ["N", "N", "N", "m", "m", "N m"],
  2: ["N", "N", "N", "N m", "N m", "N m"],
  3: ["N", "N", "N", "N", "N", "N", "N", "N"],
  4: ["V", "V", "V", "V", "V", "V"],
};

/** A point of the laboratory in the library's frame. */
export function positionOf(point: readonly number[], axes: Axes, scale: number): Position {
  const mapping = axisMapping(axes);
  const position = { forward: 0, up: 0, right: 0 };
  (["x", "y", "z"] as const).forEach((axis, k) => {
    const mapped = mapping[axis];
    if (mapped) position[mapped.direction] = mapped.sign * scale * (point[k] as number);
  });
  return position;
}

/** Makes a platform of the recording's contract from numbers as files state them. */
export function platformOf(parts: PlatformParts): Platform {
  const { type, rows, axes, lengthUnit, calibration } = parts;
  const scale = lengthUnit === "mm" ? 1e-3 : 1;
  const [ox, oy, oz] = parts.origin.map((value) => value * scale) as [number, number, number];
  const corners = parts.corners.map((corner) => positionOf(corner, axes, scale));
  return {
    name: parts.name ?? `type ${type}`,
    type,
    channels: UNITS[type].map((unit, k) => ({
      name: `channel ${k + 1}`,
      unit,
      samples: Float64Array.from(
        rows,
        (row) => (row[k] as number) * (unit === "N" || unit === "V" ? 1 : scale),
      ),
    })),
    corners: corners as unknown as Platform["corners"],
    origin: [ox, oy, oz],
    ...(calibration && { calibration }),
  };
}
