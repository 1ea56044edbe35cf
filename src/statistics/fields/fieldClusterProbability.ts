import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { type Field, requireField, reselsOf } from "./field.js";
import { expectedStretches, pointTail } from "./fieldExpectation.js";

/** How {@link fieldClusterProbability} reads a curve. */
export interface FieldClusterOptions {
  /** Whether a stretch on the other side would have counted as well. */
  readonly twoSided?: boolean | undefined;
}

/** Two sides. */
export const FIELD_CLUSTER_DEFAULTS: Complete<FieldClusterOptions> = { twoSided: true };

/** Γ(3/2): mean of the extent in units of its scale. */
const MEAN_OF_SCALE = 0.886226925452758;

/**
 * Gives the probability that a smooth random curve without any true effect stays above a threshold over a stretch at
 * least this wide.
 *
 * Formula: 1 − exp(−m exp(−(x/s)²)); x the extent in full widths at half maximum, m the expected number of stretches
 * above the threshold u (E of {@link fieldExceedance}, or the expected number of points above u where that is
 * smaller), s = R P(point > u) ÷ (Γ(3/2) E), so that the mean extent comes out right. Near its top a smooth curve
 * above a high u is a parabola, its rise above u exponential, and so the square of the width. Two-sided it is
 * doubled, at most 1.
 * Units: points of the curve.
 * Limits: for high thresholds, such as those of {@link fieldThreshold}. A stretch cut by the curve's end is wider
 * than it looks, and its probability comes out too large. Of six kinds of curves, 20 000 each, the simulated share
 * differs by at most 0.005 (the tests). For stretches of several FWHM it is an extrapolation: read it as small.
 * Source: Friston et al. 1994, Hum. Brain Mapp. 1:210, from memory; derived as above, held to simulation with NumPy.
 * @param extent - Width above the threshold, in points, 0 or more.
 * @param threshold - Above 0.
 * @param field - What the curve is of, its points and its smoothness.
 * @param options - {@link FIELD_CLUSTER_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range; `conflict`:
 *   two sides of F; `unknown-option`.
 * @example
 * fieldClusterProbability(6, 3, { kind: "t", degreesOfFreedom: 58, nodes: 101, fullWidthAtHalfMaximum: 15 }).toFixed(3) // "0.031"
 */
export function fieldClusterProbability(
  extent: number,
  threshold: number,
  field: Field,
  options: FieldClusterOptions = {},
): number {
  const { twoSided } = withDefaults<FieldClusterOptions>(FIELD_CLUSTER_DEFAULTS, options);
  requireField(field, twoSided);
  requireNumber("extent", extent, { from: 0 });
  requireNumber("threshold", threshold, { above: 0 });
  const tail = pointTail(threshold, field);
  const stretches = expectedStretches(threshold, field);
  const scale = (reselsOf(field) * tail) / (MEAN_OF_SCALE * stretches);
  const ratio = extent / field.fullWidthAtHalfMaximum / scale;
  const expected = Math.min(stretches, field.nodes * tail) * Math.exp(-ratio * ratio);
  return Math.min(1, (twoSided ? 2 : 1) * -Math.expm1(-expected));
}
