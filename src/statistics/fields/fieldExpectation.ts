import { fProbability } from "../distributions/fProbability.js";
import { normalProbability } from "../distributions/normalProbability.js";
import { gammaRatio } from "../gammaRatio.js";
import { studentTProbability } from "../studentTProbability.js";
import { type Field, reselsOf } from "./field.js";

/** √(4 ln 2): turns a full width at half maximum into the standard deviation of the curve's slope. */
const SLOPE = 1.6651092223153954;

/** Probability that one point lies above `u`. */
export function pointTail(u: number, field: Field): number {
  if (field.kind === "t") return studentTProbability(-u, field.degreesOfFreedom);
  if (field.kind === "gaussian") return normalProbability(-u);
  return fProbability(Math.max(0, u), ...field.degreesOfFreedom, "above");
}

/**
 * Expected upward crossings of `u` in one resel: the Euler characteristic density of dimension 1. Of t and the normal
 * form held to published thresholds and probabilities, of F to one with a single degree of freedom above, where it is
 * twice that of t, and to simulation with three.
 */
export function crossingDensity(u: number, field: Field): number {
  if (field.kind === "gaussian") return (SLOPE / (2 * Math.PI)) * Math.exp((-u * u) / 2);
  if (field.kind === "t") {
    const df = field.degreesOfFreedom;
    return (SLOPE / (2 * Math.PI)) * Math.exp((-(df - 1) / 2) * Math.log1p((u * u) / df));
  }
  if (u <= 0) return 0;
  const [k, df] = field.degreesOfFreedom;
  // Γ((ν + k − 1)/2) ÷ [Γ(ν/2) Γ(k/2)] √π, step by step of a half.
  let scale = 1;
  for (let j = 1; j < k; j++) scale *= gammaRatio((df + j - 1) / 2) / gammaRatio(j / 2);
  const rise = ((k - 1) / 2) * Math.log((k * u) / df) - ((df + k - 2) / 2) * Math.log1p((k * u) / df);
  return (SLOPE / Math.PI) * scale * Math.exp(rise);
}

/** Expected number of stretches above `u`: those that begin above it, and those that rise to it. */
export function expectedStretches(u: number, field: Field): number {
  return pointTail(u, field) + reselsOf(field) * crossingDensity(u, field);
}
