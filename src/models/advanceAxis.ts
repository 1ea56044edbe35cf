import type { AxisState } from "./axisState.js";

/**
 * Moves one axis along one straight piece of its force: velocity and position are exact for it.
 *
 * Formula: Δv = (a₀ + a₁) h/2; Δx = v₀ h + (2 a₀ + a₁) h²/6.
 *
 * @param axis - Changed in place.
 * @param force - At the end of the piece, N.
 * @param duration - Its duration h, s.
 */
export function advanceAxis(axis: AxisState, force: number, duration: number): void {
  const before = axis.acceleration;
  const acceleration = (force - axis.meanForce) / axis.mass;
  axis.position += duration * (axis.velocity + (duration * (2 * before + acceleration)) / 6);
  axis.velocity += (duration * (before + acceleration)) / 2;
  axis.acceleration = acceleration;
}
