import { type Complete, requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { type Field, type FieldRule, requireField } from "./field.js";
import { expectedStretches, pointTail } from "./fieldExpectation.js";

/** What {@link fieldThreshold} is asked for. */
export interface FieldThresholdOptions {
  /** Share of curves without a true effect that cross the threshold somewhere, above 0, at most 0.3. */
  readonly level?: number | undefined;
  /** Half of the level on each side. */
  readonly twoSided?: boolean | undefined;
  /** `smaller`: the smaller of random field theory and Bonferroni, which wins for rough curves. */
  readonly rule?: FieldRule | undefined;
}

/** One curve of twenty, two sides, the smaller of both. */
export const FIELD_THRESHOLD_DEFAULTS: Complete<FieldThresholdOptions> = {
  level: 0.05,
  twoSided: true,
  rule: "smaller",
};

/** A threshold for a whole curve and the rule that gave it. */
export interface FieldThreshold {
  readonly threshold: number;
  readonly rule: "random field" | "Bonferroni";
}

/**
 * Gives the threshold that a smooth random curve without any true effect crosses in no more than a given share of
 * cases.
 *
 * Formula: the u at which 1 − exp(−E) = α, α the level, half of it where two-sided, E as in {@link fieldExceedance};
 * by Bonferroni the u with P(point > u) = α ÷ nodes.
 * Units: FWHM in points of the curve.
 * Limits: for curves of even smoothness. E = α in place of 1 − exp(−E) = α is 0.2 to 0.5 % too high.
 * Source: Pataky 2016, J. Biomech. 49:1704, from memory; held to thresholds printed in the documentation of the open
 * package spm1d, to SciPy and to simulation.
 * @param field - What the curve is of, its points and its smoothness.
 * @param options - {@link FIELD_THRESHOLD_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range; `conflict`:
 *   two sides of F; `unknown-option`.
 * @example
 * fieldThreshold({ kind: "t", degreesOfFreedom: 9, nodes: 101, fullWidthAtHalfMaximum: 15 }).threshold.toFixed(3) // "4.164"
 */
export function fieldThreshold(field: Field, options: FieldThresholdOptions = {}): FieldThreshold {
  const { level, twoSided, rule } = withDefaults<FieldThresholdOptions>(FIELD_THRESHOLD_DEFAULTS, options);
  requireOneOf("rule", rule, ["smaller", "random field", "Bonferroni"]);
  requireNumber("level", level, { above: 0, to: 0.3 });
  requireField(field, twoSided);
  const side = twoSided ? level / 2 : level;
  const found: FieldThreshold[] = [];
  if (rule !== "Bonferroni") {
    const threshold = lastCrossing((u) => expectedStretches(u, field), -Math.log1p(-side));
    found.push({ threshold, rule: "random field" });
  }
  if (rule !== "random field") {
    const threshold = lastCrossing((u) => pointTail(u, field), side / field.nodes);
    found.push({ threshold, rule: "Bonferroni" });
  }
  return found.reduce((one, other) => (other.threshold < one.threshold ? other : one));
}

/**
 * The largest u at which a function that falls in the end comes down to `target`; it is above `target` at some u > 0.
 */
function lastCrossing(of: (u: number) => number, target: number): number {
  let high = 1;
  while (of(high) > target) high *= 2;
  let low = high / 2;
  // Where the first guess was high enough, the crossing lies further down; F may have its only rise below 1.
  while (of(low) <= target && low > 1e-12) {
    high = low;
    low /= 2;
  }
  for (let i = 0; i < 200 && high - low > 1e-14 * high; i++) {
    const middle = (low + high) / 2;
    if (of(middle) > target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
