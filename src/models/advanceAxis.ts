import type { AxisState } from "./axisState.js";
import { placeAfter } from "./placeAfter.js";
import { velocityAfter } from "./velocityAfter.js";

/**
 * Moves one axis along one straight piece of its force.
 *
 * @param axis - Changed in place.
 * @param force - At the end of the piece, N.
 * @param duration - Its duration h, s.
 */
export function advanceAxis(axis: AxisState, force: number, duration: number): void {
  const before = axis.acceleration;
  const after = (force - axis.meanForce) * axis.perMass;
  axis.position = placeAfter(axis.position, axis.velocity, before, after, duration);
  axis.velocity = velocityAfter(axis.velocity, before, after, duration);
  axis.acceleration = after;
}
