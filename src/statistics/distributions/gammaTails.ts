import { logLessLinear } from "./logLessLinear.js";
import { stirlingError } from "./stirlingError.js";

/** A stop for the worst case: a number of 10⁶ takes some 8000 terms. */
const MOST_TERMS = 100000;

/** Beyond it the logarithm of Q is −x to the last digit, for the shapes up to 5e7 that are used. */
const FAR = 1e150;

/** Logarithms of the regularised incomplete gamma functions: P(a, x) below x and Q(a, x) above it. */
export interface GammaTails {
  readonly below: number;
  readonly above: number;
}

/**
 * Gives the logarithms of both regularised incomplete gamma functions, so that neither can underflow.
 *
 * Formula: up to x = a + 1 the series xᵃ e⁻ˣ / Γ(a + 1) × [1 + x/(a + 1) + x²/((a + 1)(a + 2)) + …] is P; beyond it the
 * continued fraction xᵃ e⁻ˣ / Γ(a) × 1/(x + 1 − a − 1 (1 − a)/(x + 3 − a − …)) is Q; the other is one minus it.
 * @param a - Above 0.
 * @param x - 0 or more.
 */
export function gammaTails(a: number, x: number): GammaTails {
  if (x === 0) return { below: Number.NEGATIVE_INFINITY, above: 0 };
  if (x > FAR) return { below: 0, above: -x };
  const lead = logGammaLead(a, x);
  if (x <= a + 1) {
    const below = lead + Math.log(series(a, x) / a);
    return { below, above: rest(below) };
  }
  const above = lead + Math.log(fraction(a, x));
  return { below: rest(above), above };
}

/** Logarithm of xᵃ e⁻ˣ / Γ(a). */
export function logGammaLead(a: number, x: number): number {
  return a * logLessLinear((x - a) / a, x / a) + 0.5 * Math.log(a / (2 * Math.PI)) - stirlingError(a);
}

function rest(logPart: number): number {
  return Math.log1p(-Math.min(1, Math.exp(logPart)));
}

function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; n < MOST_TERMS && term > sum * 1e-17; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** By Lentz's method as modified by Thompson & Barnett. */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const part = -n * (n - a);
    b += 2;
    d = 1 / nonZero(part * d + b);
    c = nonZero(b + part / c);
    value *= c * d;
    if (Math.abs(c * d - 1) < 2e-16) break;
  }
  return value;
}

function nonZero(value: number): number {
  return Math.abs(value) < 1e-300 ? 1e-300 : value;
}
