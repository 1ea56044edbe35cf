/**
 * Gives what Stirling's formula leaves of the logarithm of the gamma function: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π, for
 * x > 0.
 *
 * Formula: for x ≥ 16, Σ B₂ₖ / [2k (2k − 1) x²ᵏ⁻¹], seven terms; below, by δ(x) = δ(x + 1) + (x + ½) ln(1 + 1/x) − 1 from
 * there.
 * Source: DLMF 5.11.1 (number from memory), Bernoulli numbers; checked through the tails it serves against mpmath.
 */
export function stirlingError(x: number): number {
  let z = x;
  let rest = 0;
  while (z < 16) {
    rest += (z + 0.5) * Math.log1p(1 / z) - 1;
    z += 1;
  }
  const w = 1 / (z * z);
  const series =
    (((((1 / 156) * w - 691 / 360360) * w + 1 / 1188) * w - 1 / 1680) * w + 1 / 1260) * w * w -
    w / 360 +
    1 / 12;
  return rest + series / z;
}
