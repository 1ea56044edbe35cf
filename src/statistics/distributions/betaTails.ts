import { betaFraction } from "./betaFraction.js";
import { logLessLinear } from "./logLessLinear.js";
import { stirlingError } from "./stirlingError.js";

/**
 * Gives the logarithm of the regularised incomplete beta function Iₓ(a, b), so that it cannot underflow.
 *
 * Formula: xᵃ yᵇ Γ(a + b) / [Γ(a) Γ(b)] × a continued fraction ÷ a where x < (a + 1)/(a + b + 2), else 1 − I_y(b, a). What
 * stands before the fraction is written with what Stirling's formula leaves of each gamma function, whose large parts
 * cancel on paper instead of in the machine.
 * @param a - Above 0.
 * @param b - Above 0.
 * @param x - From 0 to 1.
 * @param y - 1 − x, given as well so that either may be tiny.
 */
export function logBetaTail(a: number, b: number, x: number, y: number): number {
  if (x === 0) return Number.NEGATIVE_INFINITY;
  if (y === 0) return 0;
  return x < (a + 1) / (a + b + 2)
    ? direct(a, b, x, y)
    : Math.log1p(-Math.min(1, Math.exp(direct(b, a, y, x))));
}

/** Logarithm of xᵃ yᵇ Γ(a + b) / [Γ(a) Γ(b)]. */
export function logBetaLead(a: number, b: number, x: number, y: number): number {
  const excess = x * b - y * a;
  return (
    a * logLessLinear(excess / a, x * (1 + b / a)) +
    b * logLessLinear(-excess / b, y * (1 + a / b)) +
    stirlingError(a + b) -
    stirlingError(a) -
    stirlingError(b) +
    0.5 * Math.log(a / (2 * Math.PI * (1 + a / b)))
  );
}

function direct(a: number, b: number, x: number, y: number): number {
  return logBetaLead(a, b, x, y) + Math.log(betaFraction(a, b, x, y) / a);
}
