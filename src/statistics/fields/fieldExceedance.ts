import { type Complete, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { type Field, type FieldRule, requireField } from "./field.js";
import { expectedStretches, pointTail } from "./fieldExpectation.js";

/** How {@link fieldExceedance} reads a curve. */
export interface FieldExceedanceOptions {
  /** Whether the curve may leave ±`threshold` on either side. */
  readonly twoSided?: boolean | undefined;
  /** `smaller`: the smaller of random field theory and Bonferroni, which wins for rough curves. */
  readonly rule?: FieldRule | undefined;
}

/** One side, by the smaller of both bounds. */
export const FIELD_EXCEEDANCE_DEFAULTS: Complete<FieldExceedanceOptions> = {
  twoSided: false,
  rule: "smaller",
};

/**
 * Gives the probability that a smooth random curve without any true effect rises above a threshold somewhere.
 *
 * Formula: by random field theory 1 − exp(−E), E = P(point > u) + R ρ(u), R = (nodes − 1) ÷ FWHM; ρ(u) = √(4 ln
 * 2)/(2π) times (1 + u²/ν)^(−(ν − 1)/2) for t, exp(−u²/2) for the normal form; by Bonferroni nodes × P(point > u), at
 * most 1. Two-sided it is doubled, at most 1.
 * Units: FWHM in points of the curve.
 * Limits: for curves of even smoothness and probabilities that are small; an F curve has one side.
 * Source: Pataky 2016, J. Biomech. 49:1704 and Worsley et al. 2004 for the densities, from memory; held to the values
 * printed in the documentation of the open package rft1d, to SciPy and to simulation.
 * @param threshold - Above 0.
 * @param field - What the curve is of, its points and its smoothness.
 * @param options - {@link FIELD_EXCEEDANCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range; `conflict`:
 *   two sides of F; `unknown-option`.
 * @example
 * fieldExceedance(2, { kind: "gaussian", nodes: 101, fullWidthAtHalfMaximum: 10 }).toFixed(4) // "0.3171"
 */
export function fieldExceedance(
  threshold: number,
  field: Field,
  options: FieldExceedanceOptions = {},
): number {
  const { twoSided, rule } = withDefaults<FieldExceedanceOptions>(FIELD_EXCEEDANCE_DEFAULTS, options);
  requireOneOf("rule", rule, ["smaller", "random field", "Bonferroni"]);
  requireField(field, twoSided);
  requireNumber("threshold", threshold, { above: 0 });
  const bounds: number[] = [];
  if (rule !== "Bonferroni") bounds.push(-Math.expm1(-expectedStretches(threshold, field)));
  if (rule !== "random field") bounds.push(field.nodes * pointTail(threshold, field));
  return Math.min(1, (twoSided ? 2 : 1) * Math.min(...bounds));
}
