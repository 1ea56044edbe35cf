import { betaFraction } from "./distributions/betaFraction.js";
import { gammaRatio } from "./gammaRatio.js";

/**
 * The area under Student's density right of zero in two parts, each by a form that keeps its digits where the other
 * loses them. With x = ν/(ν + t²): the tail beyond t is ½ Iₓ(ν/2, ½), given as a logarithm so that it cannot underflow;
 * the part between 0 and t is ½ I₁₋ₓ(½, ν/2). I is the regularised incomplete beta function,
 * Iₓ(a, b) = xᵃ (1 − x)ᵇ Γ(a + b) / [a Γ(a) Γ(b)] × a continued fraction.
 */

/** Whether the tail, rather than the part between 0 and t, is where the continued fraction converges fast. */
export function isFarOut(t: number, df: number): boolean {
  return (t / df) * t > 3 / (df + 2);
}

/** Logarithm of the probability beyond `t`, for t > 0 that {@link isFarOut}. */
export function logUpperTail(t: number, df: number): number {
  const a = df / 2;
  const { ratio, logOnePlus } = squaredOver(t, df);
  const inside = 1 / (1 + 1 / ratio);
  const fraction = betaFraction(a, 0.5, 1 / (1 + ratio), inside);
  return (
    Math.log((fraction * Math.sqrt(inside) * gammaRatio(a)) / (Math.sqrt(Math.PI) * df)) - a * logOnePlus
  );
}

/** Probability between 0 and `t`, for t ≥ 0 that is not {@link isFarOut}. */
export function centralPart(t: number, df: number): number {
  if (t === 0) return 0;
  const a = df / 2;
  const { ratio, logOnePlus } = squaredOver(t, df);
  const inside = ratio / (1 + ratio);
  const fraction = betaFraction(0.5, a, inside, 1 / (1 + ratio));
  return fraction * Math.sqrt(inside) * Math.exp(-a * logOnePlus) * (gammaRatio(a) / Math.sqrt(Math.PI));
}

/** Logarithm of Student's density at t. */
export function logDensity(t: number, df: number): number {
  return (
    Math.log(gammaRatio(df / 2) / Math.sqrt(Math.PI * df)) - ((df + 1) / 2) * squaredOver(t, df).logOnePlus
  );
}

/** t²/ν and ln(1 + t²/ν), the latter also where t² is beyond the largest number. */
function squaredOver(t: number, df: number): { ratio: number; logOnePlus: number } {
  const root = t / Math.sqrt(df);
  const ratio = root * root;
  return { ratio, logOnePlus: Number.isFinite(ratio) ? Math.log1p(ratio) : 2 * Math.log(root) };
}
