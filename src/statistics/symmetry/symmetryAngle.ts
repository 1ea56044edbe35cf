import { requireSides } from "./requireSides.js";

/**
 * Gives the symmetry angle: how far the point (right, left) lies from the line of equal sides, as a share of a right
 * angle.
 *
 * Formula: 100 (45° − arctan(left ÷ right)) ÷ 90°.
 * Units: the same for both sides; per cent out, from −50 (no right) to 50 (no left), positive where the right is the
 * larger in size.
 * Limits: none for values of opposite sign or both 0. Not to be set beside a {@link symmetryIndex}: near symmetry that
 * is π times this.
 * Source: Zifchock, Davis, Higginson & Royer 2008, Gait Posture 27:622, from memory; as tabulated in Int. J. Phys. Med.
 * Rehabil. 2:201 (2014), table 1.
 * @param right - Value of the right side.
 * @param left - Value of the left side, of the same sign or 0.
 * @throws GaitKineticsError `out-of-range`: values of opposite sign, or both 0; `not-finite`, `wrong-type`: a value that
 *   is no finite number.
 * @example
 * symmetryAngle(1250, 1180).toFixed(3) // "1.833"
 */
export function symmetryAngle(right: number, left: number): number {
  requireSides(right, left);
  return 50 - (100 * Math.atan2(Math.abs(left), Math.abs(right))) / (Math.PI / 2);
}
