import { type Complete, type Hertz, withDefaults } from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { requireDifferences } from "./requireDifferences.js";

/** How {@link derivative} treats the first and last sample. */
export interface DerivativeOptions {
  /** Order of the error at both ends: 2 uses three samples, 1 uses two and is less moved by noise. */
  readonly endOrder?: 1 | 2 | undefined;
}

/** Second order everywhere, so that the error falls alike at the ends and between them. */
export const DERIVATIVE_DEFAULTS: Complete<DerivativeOptions> = { endOrder: 2 };

/**
 * Differentiates with respect to time by central differences.
 *
 * Formula: x′ᵢ = fs (xᵢ₊₁ − xᵢ₋₁)/2; at the start fs (−3x₀ + 4x₁ − x₂)/2, or fs (x₁ − x₀) at end order 1; mirrored at
 * the end.
 * Units: the unit of the samples per second.
 * Limits: the error is x‴/(6 fs²), at the ends x‴/(3 fs²), or x″/(2 fs) at end order 1. Noise grows with the rate:
 * filter first. The gain falls with frequency as sin(ω/fs)/(ω/fs).
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed. (central difference; from memory).
 * @param samples - At least 3 of them, 2 at end order 1.
 * @param sampleRate - Samples per second, above 0.
 * @param options - {@link DERIVATIVE_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`; `not-finite`: NaN or infinity among samples or result; `wrong-type`;
 * `out-of-range`: rate not above 0 or end order neither 1 nor 2.
 * @example
 * derivative(new Float64Array([0, 1, 4, 9]), 1)[1] // 2
 */
export function derivative(
  samples: Float64Array,
  sampleRate: Hertz,
  options: DerivativeOptions = {},
): Float64Array {
  const { endOrder } = withDefaults(DERIVATIVE_DEFAULTS, options);
  requireDifferences(samples, sampleRate, endOrder, 1);
  const count = samples.length;
  const slopes = new Float64Array(count);
  const half = sampleRate / 2;
  for (let i = 1; i < count - 1; i++) {
    slopes[i] = ((samples[i + 1] as number) - (samples[i - 1] as number)) * half;
  }
  slopes[0] = slopeAtEnd(samples, 0, 1, endOrder) * sampleRate;
  slopes[count - 1] = -slopeAtEnd(samples, count - 1, -1, endOrder) * sampleRate;
  return finiteResult(slopes);
}

/** Difference per sample at an end; `inward` leads from it into the samples. */
function slopeAtEnd(samples: Float64Array, end: number, inward: 1 | -1, order: 1 | 2): number {
  const edge = samples[end] as number;
  const next = samples[end + inward] as number;
  if (order === 1) return next - edge;
  return -1.5 * edge + 2 * next - 0.5 * (samples[end + 2 * inward] as number);
}
