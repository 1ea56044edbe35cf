import { fail } from "../units/index.js";
import type { Direction } from "./recording.js";

/** A direction that a source's axis may point in: one of the library's, or the opposite of one. */
export type AxisDirection = Direction | "backward" | "down" | "left";

/** Where a source's axes point, seen by the runner. Axes that no column uses may be left out. */
export interface Axes {
  readonly x?: AxisDirection | undefined;
  readonly y?: AxisDirection | undefined;
  readonly z?: AxisDirection | undefined;
}

/** The library's direction along which a source's axis lies, and whether it points with it or against it. */
export interface MappedAxis {
  readonly direction: Direction;
  readonly sign: 1 | -1;
}

/** A source's axes in the library's frame. */
export interface AxisMapping {
  readonly x?: MappedAxis;
  readonly y?: MappedAxis;
  readonly z?: MappedAxis;
  /**
   * 1 for a right-handed source, −1 for a left-handed one, `null` where fewer than three axes are stated. Forces and
   * positions are mapped by `sign` alone; a moment is an axial vector and takes `sign × handedness`.
   */
  readonly handedness: 1 | -1 | null;
}

/** The words for {@link Axes}, with what each means. */
const DIRECTIONS: Readonly<Record<AxisDirection, MappedAxis>> = {
  forward: { direction: "forward", sign: 1 },
  backward: { direction: "forward", sign: -1 },
  up: { direction: "up", sign: 1 },
  down: { direction: "up", sign: -1 },
  right: { direction: "right", sign: 1 },
  left: { direction: "right", sign: -1 },
};

const NAMES = ["x", "y", "z"] as const;

/**
 * Reads where a source's axes point and gives the library's direction, sign and handedness.
 *
 * Formula: handedness is the determinant of the matrix that maps the source's axes to forward, up, right (itself
 * right-handed). M = r × F keeps its component formula in either hand, so under a mapping R it becomes det(R) R M:
 * forces and positions take R, moments det(R) R.
 * Limits: a left-handed source is taken as what it is, not corrected to a right-handed one.
 * Source: forward, up, right are the x, y, z of Wu & Cavanagh (1995), J. Biomech. 28:1257; the sign of an axial vector
 * under reflection follows from its definition.
 * @param axes - Such as `{ x: "right", y: "forward", z: "up" }`.
 * @throws GaitKineticsError `unknown-axes`: a word that is no direction, a name that is no axis, two axes on one line.
 * @example
 * axisMapping({ x: "right", y: "forward", z: "up" }).handedness // 1
 * axisMapping({ z: "down" }).z?.sign // -1
 */
export function axisMapping(axes: Axes): AxisMapping {
  if (typeof axes !== "object" || axes === null) {
    refuse(`axes are ${String(axes)}`, axes);
  }
  const mapped: { x?: MappedAxis; y?: MappedAxis; z?: MappedAxis } = {};
  for (const [name, word] of Object.entries(axes)) {
    if (word === undefined) continue;
    const axis = NAMES.find((known) => known === name);
    if (axis === undefined) refuse(`"${name}" is no axis`, axes);
    if (typeof word !== "string" || !Object.hasOwn(DIRECTIONS, word)) {
      refuse(`axis ${axis} is ${JSON.stringify(word) ?? String(word)}, which is no direction`, axes);
    }
    mapped[axis] = DIRECTIONS[word as AxisDirection];
  }
  for (const direction of ["forward", "up", "right"] as const) {
    const sharing = NAMES.filter((name) => mapped[name]?.direction === direction);
    if (sharing.length > 1) refuse(`axes ${sharing.join(" and ")} lie on one line (${direction})`, axes);
  }
  return { ...mapped, handedness: handednessOf(mapped) };
}

/** The sign of the permutation that the lines make, times the signs of the axes. */
function handednessOf({ x, y, z }: Omit<AxisMapping, "handedness">): 1 | -1 | null {
  if (x === undefined || y === undefined || z === undefined) return null;
  const order = `${x.direction} ${y.direction} ${z.direction}`;
  const even = ["forward up right", "up right forward", "right forward up"].includes(order);
  return x.sign * y.sign * z.sign * (even ? 1 : -1) > 0 ? 1 : -1;
}

function refuse(what: string, axes: unknown): never {
  fail(
    "unknown-axes",
    `${what}; axes are stated as { x: "right", y: "forward", z: "up" }: each of x, y, z on a line of its own, in words of ${Object.keys(DIRECTIONS).join(", ")}`,
    { argument: "axes", values: { given: axes, allowed: Object.keys(DIRECTIONS) } },
  );
}
