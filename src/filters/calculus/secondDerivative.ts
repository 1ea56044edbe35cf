import { type Complete, type Hertz, withDefaults } from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";
import { requireDifferences } from "./requireDifferences.js";

/** How {@link secondDerivative} treats the first and last sample. */
export interface SecondDerivativeOptions {
  /** Order of the error at both ends: 2 uses four samples, 1 uses three, which is the value of the neighbour. */
  readonly endOrder?: 1 | 2 | undefined;
}

/** Second order everywhere, so that the error falls alike at the ends and between them. */
export const SECOND_DERIVATIVE_DEFAULTS: Complete<SecondDerivativeOptions> = { endOrder: 2 };

/**
 * Differentiates twice with respect to time by central differences.
 *
 * Formula: x″ᵢ = fs² (xᵢ₊₁ − 2xᵢ + xᵢ₋₁); at the start fs² (2x₀ − 5x₁ + 4x₂ − x₃), or fs² (x₀ − 2x₁ + x₂) at end order 1;
 * mirrored at the end.
 * Units: the unit of the samples per second squared.
 * Limits: the error is x⁗/(12 fs²), at the ends 11 x⁗/(12 fs²), or x‴/fs at end order 1. Noise grows with the square of
 * the rate: filter first.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed. (from memory); ends by Taylor expansion.
 * @param samples - At least 4 of them, 3 at end order 1.
 * @param sampleRate - Samples per second, above 0.
 * @param options - {@link SECOND_DERIVATIVE_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`; `not-finite`: NaN or infinity among samples or result; `wrong-type`;
 * `out-of-range`: rate not above 0 or end order neither 1 nor 2.
 * @example
 * secondDerivative(new Float64Array([0, 1, 4, 9]), 1)[0] // 2
 */
export function secondDerivative(
  samples: Float64Array,
  sampleRate: Hertz,
  options: SecondDerivativeOptions = {},
): Float64Array {
  const { endOrder } = withDefaults(SECOND_DERIVATIVE_DEFAULTS, options);
  requireDifferences(samples, sampleRate, endOrder, 2);
  const count = samples.length;
  const curvature = new Float64Array(count);
  const square = sampleRate * sampleRate;
  for (let i = 1; i < count - 1; i++) {
    curvature[i] =
      ((samples[i + 1] as number) - 2 * (samples[i] as number) + (samples[i - 1] as number)) * square;
  }
  curvature[0] = atEnd(samples, 0, 1, endOrder) * square;
  curvature[count - 1] = atEnd(samples, count - 1, -1, endOrder) * square;
  return finiteResult(curvature);
}

/** Second difference per sample at an end; `inward` leads from it into the samples. */
function atEnd(samples: Float64Array, end: number, inward: 1 | -1, order: 1 | 2): number {
  const x = (i: number) => samples[end + i * inward] as number;
  return order === 1 ? x(0) - 2 * x(1) + x(2) : 2 * x(0) - 5 * x(1) + 4 * x(2) - x(3);
}
