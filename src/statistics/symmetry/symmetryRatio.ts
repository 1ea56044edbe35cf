import { requireSides } from "./requireSides.js";

/**
 * Gives the ratio of right to left.
 *
 * Formula: right ÷ left.
 * Units: the same for both sides; none out: 1 where both are alike, 0 where the right is 0.
 * Limits: none for a left of 0 or values of opposite sign. Not symmetric itself: 2 and ½ are as far from 1.
 * Source: definition; as tabulated in Int. J. Phys. Med. Rehabil. 2:201 (2014), table 1.
 * @param right - Value of the right side.
 * @param left - Value of the left side, of the same sign and not 0.
 * @throws GaitKineticsError `out-of-range`: values of opposite sign, or a left of 0; `not-finite`, `wrong-type`: a value
 *   that is no finite number.
 * @example
 * symmetryRatio(3, 2) // 1.5
 */
export function symmetryRatio(right: number, left: number): number {
  requireSides(right, left, "left");
  return right / left;
}
