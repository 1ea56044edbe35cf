import { type Hertz, requireFiniteSamples, requireNumber } from "../../units/index.js";

/**
 * Integrates over time from the first sample on, by the trapezoid rule.
 *
 * Formula: I₀ = 0, Iᵢ = Iᵢ₋₁ + (xᵢ₋₁ + xᵢ)/(2 fs).
 * Units: the unit of the samples times seconds.
 * Limits: exact for a straight line between samples; else the error is T x″/(12 fs²) over a time T. An offset b in the
 * samples grows to b t: take it out first.
 * Source: common practice; the same as SciPy's `cumulative_trapezoid` with an initial 0.
 * @param samples - Any number; none gives none.
 * @param sampleRate - Samples per second, above 0.
 * @throws GaitKineticsError `not-finite`: NaN or infinity among the samples; `wrong-type`; `out-of-range`: rate not above 0.
 * @example
 * cumulativeIntegral(new Float64Array([2, 2, 4]), 10)[2] // 0.5
 */
export function cumulativeIntegral(samples: Float64Array, sampleRate: Hertz): Float64Array {
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  const integral = new Float64Array(samples.length);
  let sum = 0;
  for (let i = 1; i < samples.length; i++) {
    sum += (samples[i - 1] as number) + (samples[i] as number);
    integral[i] = sum / (2 * sampleRate);
  }
  return integral;
}
