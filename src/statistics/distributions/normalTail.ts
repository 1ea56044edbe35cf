import { gammaTails } from "./gammaTails.js";

/** Logarithm of the standard normal tail above z ≥ 0: ½ Q(½, z²/2). */
export function logNormalAbove(z: number): number {
  return gammaTails(0.5, (z * z) / 2).above - Math.LN2;
}
