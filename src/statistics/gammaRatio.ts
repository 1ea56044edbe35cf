/**
 * Gives Γ(x + ½) / Γ(x) for x > 0 to a few units in the last place; the difference of two logarithms of the gamma
 * function would lose six digits at x = 5·10⁵.
 *
 * Formula: for x ≥ 12, √x exp(−1/(8x) + 1/(192x³) − 1/(640x⁵) + 17/(14336x⁷) − 31/(18432x⁹) + 691/(180224x¹¹)): the term by
 * term difference of the two asymptotic series ln Γ(z + a) ~ (z + a − ½) ln z − z + ½ ln 2π + Σ (−1)ᵏ⁺¹ Bₖ₊₁(a) /
 * [k (k + 1) zᵏ]. Below 12, by Γ(x + 1) = x Γ(x) from there.
 * Source: series of DLMF 5.11.8 (number from memory), coefficients derived from the Bernoulli polynomials; checked
 * against mpmath.
 */
export function gammaRatio(x: number): number {
  let z = x;
  let factor = 1;
  while (z < 12) {
    factor *= z / (z + 0.5);
    z += 1;
  }
  const w = 1 / (z * z);
  const series =
    (((((691 / 180224) * w - 31 / 18432) * w + 17 / 14336) * w - 1 / 640) * w + 1 / 192) * w - 1 / 8;
  return factor * Math.sqrt(z) * Math.exp(series / z);
}
