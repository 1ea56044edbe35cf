import type { Platform } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { PlatformFrame } from "./platformFrame.js";
import type { PlatformOptions } from "./platformOptions.js";

type Vector = readonly [x: number, y: number, z: number];

/**
 * From the transducer's origin to the middle of the plate's surface, and what was done to the stored value.
 */
export interface SurfaceOrigin {
  /** Along the plate's axes, m, without a cover. */
  readonly vector: Vector;
  readonly negated: boolean;
  readonly cautions: readonly Caution[];
}

/** Below this share of the vertical a plate's z axis does not tell above from below. */
const UPRIGHT = 0.5;

/**
 * The vector from the transducer to the surface. By the format its third value is negative, since the plate's
 * z axis points down and the transducer lies below the surface; a positive one means that the vector was
 * stored the other way round: all three values are negated (of type 3, whose first two are spacings, the
 * third alone).
 */
export function surfaceOrigin(
  { name, type, origin }: Platform,
  { z }: PlatformFrame,
  sign: NonNullable<PlatformOptions["originSign"]>,
): SurfaceOrigin {
  if (type === 1) return { vector: [0, 0, 0], negated: false, cautions: [] };
  const [ox, oy, oz] = origin;
  const stored: Vector = type === 3 ? [0, 0, oz] : [ox, oy, oz];
  const above = oz * z.up < 0 && Math.abs(z.up) > UPRIGHT;
  const negated = sign === "negated" || (sign === "auto" && above);
  const vector: Vector = negated ? [-stored[0], -stored[1], -stored[2]] : stored;
  const cautions: Caution[] = [];
  if (sign === "auto" && negated) {
    const which = type === 3 ? "it was negated" : "all three were negated";
    cautions.push({
      code: "origin-negated",
      message: `the third value of the origin of "${name}" is ${oz} m and would put the transducer above the surface: the vector was stored the other way round, and ${which}`,
      where: name,
      values: { stored: oz, used: vector[2] },
    });
  }
  if (type !== 3 && ox === 0 && oy === 0 && oz === 0) {
    cautions.push({
      code: "origin-zero",
      message: `the origin of "${name}" is 0 0 0: its moments are taken to be about the middle of the surface`,
      where: name,
    });
  }
  return { vector, negated, cautions };
}
