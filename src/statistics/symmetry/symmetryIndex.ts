import { type Complete, requireOneOf, withDefaults } from "../../units/index.js";
import { requireSides } from "./requireSides.js";

/** What the difference of the sides is divided by; `larger` is the one farther from 0. */
export type SymmetryReference = "mean" | "sum" | "larger" | "right" | "left";

/** Every {@link SymmetryReference}. */
export const SYMMETRY_REFERENCES: readonly SymmetryReference[] = ["mean", "sum", "larger", "right", "left"];

/** Which published form of the index is taken. */
export interface SymmetryIndexOptions {
  readonly of?: SymmetryReference | undefined;
}

/** The form of Robinson, Herzog & Nigg: a share of the mean of both sides. */
export const SYMMETRY_INDEX_DEFAULTS: Complete<SymmetryIndexOptions> = { of: "mean" };

/**
 * Gives the symmetry index: the difference between right and left as a percentage of their mean.
 *
 * Formula: 100 (right − left) ÷ [(right + left) ÷ 2]; with `of`, in per cent of the sum of both, of the one farther from
 * 0, of the right or of the left.
 * Units: the same for both sides; per cent out, from −200 to 200 of the mean, from −100 to 100 of the sum and of the
 * larger, without an end on one side of the right and of the left. Positive where the right is the larger in size.
 * Limits: none for values of opposite sign or both 0, and of little use near 0, where a small difference is a large
 * share. Forms must not be mixed: 0.39 and 0.25 are 44 % apart in the mean, 22 % in the sum, 36 % in the larger. No bound
 * tells what is much: the 10 % that are often quoted are arbitrary.
 * Source: Robinson, Herzog & Nigg 1987, J. Manipulative Physiol. Ther. 10:172; the other forms as tabulated in Int. J.
 * Phys. Med. Rehabil. 2:201 (2014), table 1.
 * @param right - Value of the right side.
 * @param left - Value of the left side, of the same sign or 0.
 * @param options - {@link SYMMETRY_INDEX_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: values of opposite sign, both 0, 0 as the side to divide by, or no such
 *   form; `not-finite`, `wrong-type`: a value that is no finite number; `unknown-option`.
 * @example
 * symmetryIndex(1250, 1180).toFixed(2) // "5.76"
 */
export function symmetryIndex(right: number, left: number, options: SymmetryIndexOptions = {}): number {
  const { of } = withDefaults<SymmetryIndexOptions>(SYMMETRY_INDEX_DEFAULTS, options);
  requireOneOf("of", of, SYMMETRY_REFERENCES);
  requireSides(right, left, of);
  // Halved first, so that the sum of very large values does not overflow.
  const half = right / 2 + left / 2;
  if (of === "mean") return 100 * ((right - left) / half);
  if (of === "sum") return 50 * ((right - left) / half);
  if (of === "right") return 100 * ((right - left) / right);
  if (of === "left") return 100 * ((right - left) / left);
  return 100 * ((right - left) / (Math.abs(right) >= Math.abs(left) ? right : left));
}
