import { logBetaLead, logBetaTail } from "./betaTails.js";

/**
 * Logarithms of the F distribution's two tails at f ≥ 0 and of f times its density: with x = ν₂/(ν₂ + ν₁ f), the tail above
 * is Iₓ(ν₂/2, ν₁/2), that below I₁₋ₓ(ν₁/2, ν₂/2), and f times the density x^(ν₂/2) (1 − x)^(ν₁/2) / B(ν₁/2, ν₂/2).
 */
export function logFAbove(f: number, df1: number, df2: number): number {
  const { x, y } = placeOf(f, df1, df2);
  return logBetaTail(df2 / 2, df1 / 2, x, y);
}

/** Logarithm of the tail below. */
export function logFBelow(f: number, df1: number, df2: number): number {
  const { x, y } = placeOf(f, df1, df2);
  return logBetaTail(df1 / 2, df2 / 2, y, x);
}

/** Logarithm of f times the density. */
export function logFDensity(f: number, df1: number, df2: number): number {
  const { x, y } = placeOf(f, df1, df2);
  return logBetaLead(df2 / 2, df1 / 2, x, y);
}

function placeOf(f: number, df1: number, df2: number): { x: number; y: number } {
  const ratio = (f * df1) / df2;
  return { x: 1 / (1 + ratio), y: ratio === 0 ? 0 : 1 / (1 + 1 / ratio) };
}
