import { requireNumber } from "../../units/index.js";
import { gammaRatio } from "../gammaRatio.js";

/**
 * Gives the factor that frees a standardised mean difference of its bias in small samples.
 *
 * Formula: J = Γ(ν/2) / [√(ν/2) Γ((ν − 1)/2)], near 1 − 3/(4 ν − 1).
 * Units: none.
 * Limits: ν above 1.
 * Source: Hedges 1981, J. Educ. Stat. 6:107 (exact J), from memory; SciPy's gamma function gives the same.
 * @param df - Degrees of freedom ν of the standard deviation.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: no number above 1.
 * @example
 * hedgesCorrection(50).toFixed(6) // "0.984912"
 */
export function hedgesCorrection(df: number): number {
  requireNumber("df", df, { above: 1 });
  return gammaRatio((df - 1) / 2) / Math.sqrt(df / 2);
}
