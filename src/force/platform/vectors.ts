import type { Position } from "../../recording/index.js";

/**
 * Cross product a × b in the library's frame, whose axes forward, up, right are right-handed in this order.
 */
export function cross(a: Position, b: Position): Position {
  return {
    forward: a.up * b.right - a.right * b.up,
    up: a.right * b.forward - a.forward * b.right,
    right: a.forward * b.up - a.up * b.forward,
  };
}

/** Scalar product a · b. */
export function dot(a: Position, b: Position): number {
  return a.forward * b.forward + a.up * b.up + a.right * b.right;
}

/** Weighted sum Σ kᵢ vᵢ. */
export function combine(...terms: readonly (readonly [factor: number, vector: Position])[]): Position {
  const along = (axis: keyof Position) =>
    terms.reduce((sum, [factor, vector]) => sum + factor * vector[axis], 0);
  return { forward: along("forward"), up: along("up"), right: along("right") };
}

/** The vector divided by its length. */
export function unit(vector: Position): Position {
  return combine([1 / Math.sqrt(dot(vector, vector)), vector]);
}
