import { fail } from "../../units/index.js";
import { type Curves, requireCurves } from "./requireCurves.js";

/** √(4 ln 2). */
const SLOPE = 1.6651092223153954;
/** A curve whose residuals do not change along it has no width; it is given as this many lengths of it. */
const SMOOTHEST = 1000;

/**
 * Estimates how smooth random curves are from their residuals.
 *
 * Formula: FWHM = 1 ÷ mean over points of √(Σ g² ÷ Σ e² ÷ (4 ln 2)), sums over curves, e the residuals, g their slope
 * along the curve (central differences, one-sided at the ends).
 * Units: points of the curve.
 * Limits: points at which all residuals are 0 are left out. Where the spread changes along the curve, that change
 * counts as roughness, and the curve comes out too rough: on the careful side. At most a thousand lengths of the
 * curve. Curves smoothed to 12 points come out at 12.06 in the tests' example, single sets of ten within about a
 * tenth.
 * Source: the estimator of the open package spm1d, held to NumPy.
 * @param residuals - Curves less their mean, at least one, all equally long with at least two points.
 * @throws GaitKineticsError `too-short`, `unequal-lengths`, `not-finite`, `wrong-type`: no such curves;
 *   `out-of-range`: all residuals are 0.
 * @example
 * fieldSmoothness([[1, 2, 1], [-1, -2, -1]]).toFixed(3) // "2.498"
 */
export function fieldSmoothness(residuals: Curves): number {
  const nodes = requireCurves("residuals", residuals, 1);
  return smoothnessOver(residuals, nodes, null);
}

/** The same over the points that `formed` names; `null` for all at which not every residual is 0. */
export function smoothnessOver(residuals: Curves, nodes: number, formed: readonly boolean[] | null): number {
  let sum = 0;
  let count = 0;
  for (let q = 0; q < nodes; q++) {
    if (formed?.[q] === false) continue;
    const before = Math.max(0, q - 1);
    const after = Math.min(nodes - 1, q + 1);
    let squares = 0;
    let slopes = 0;
    for (const curve of residuals) {
      const here = curve[q] as number;
      const slope = ((curve[after] as number) - (curve[before] as number)) / (after - before);
      squares += here * here;
      slopes += slope * slope;
    }
    if (squares === 0) continue;
    sum += Math.sqrt(slopes / squares) / SLOPE;
    count++;
  }
  if (count === 0) {
    fail("out-of-range", "residuals are all 0: curves that do not vary have no smoothness", {
      argument: "residuals",
    });
  }
  return Math.min(count / sum, SMOOTHEST * nodes);
}
