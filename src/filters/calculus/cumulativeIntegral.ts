import {
  type Complete,
  fail,
  type Hertz,
  requireFiniteSamples,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";

/** By which rule samples are integrated. */
export type IntegrationRule = "trapezoid" | "simpson";

/** What {@link cumulativeIntegral} and {@link integral} may be told. */
export interface IntegrationOptions {
  /** `trapezoid` joins samples by straight lines, `simpson` by parabolas through three samples. */
  readonly rule?: IntegrationRule | undefined;
}

/** The trapezoid rule: it never leaves the range of its samples and is least moved by noise. */
export const INTEGRATION_DEFAULTS: Complete<IntegrationOptions> = { rule: "trapezoid" };

/**
 * Integrates over time from the first sample on.
 *
 * Formula: I₀ = 0; trapezoid Iᵢ = Iᵢ₋₁ + (xᵢ₋₁ + xᵢ)/(2 fs); Simpson, between xᵢ₋₁ and xᵢ, (5xᵢ₋₁ + 8xᵢ − xᵢ₊₁)/(12 fs) for
 * odd i and (−xᵢ₋₂ + 8xᵢ₋₁ + 5xᵢ)/(12 fs) for even i and at the last sample.
 * Units: the unit of the samples times seconds.
 * Limits: over a time T the error is T x″/(12 fs²) by trapezoids and, at every second sample, T x⁗/(180 fs⁴) by Simpson's rule. An
 * offset b in the samples grows to b t: take it out first.
 * Source: common practice; the same as SciPy's `cumulative_trapezoid` and `cumulative_simpson` with an initial 0.
 * @param samples - Any number, none gives none; at least 3 for Simpson's rule.
 * @param sampleRate - Samples per second, above 0.
 * @param options - The rule; {@link INTEGRATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-finite`: NaN or infinity among samples or result; `wrong-type`; `too-short`; `out-of-range`:
 * rate not above 0, unknown rule; `unknown-option`.
 * @example
 * cumulativeIntegral(new Float64Array([2, 2, 4]), 10)[2] // 0.5
 */
export function cumulativeIntegral(
  samples: Float64Array,
  sampleRate: Hertz,
  options: IntegrationOptions = {},
): Float64Array {
  const { rule } = withDefaults(INTEGRATION_DEFAULTS, options);
  requireOneOf("rule", rule, ["trapezoid", "simpson"]);
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireFiniteSamples("samples", samples);
  const count = samples.length;
  const integral = new Float64Array(count);
  const x = (i: number) => samples[i] as number;
  let sum = 0;
  if (rule === "trapezoid") {
    for (let i = 1; i < count; i++) {
      sum += x(i - 1) + x(i);
      integral[i] = sum / (2 * sampleRate);
    }
    return finiteResult(integral);
  }
  if (count < 3) {
    fail("too-short", `there are ${count} samples; Simpson's rule needs at least 3`, {
      argument: "samples",
      values: { length: count },
    });
  }
  for (let i = 1; i < count; i++) {
    const ahead = i % 2 === 1 && i < count - 1;
    sum += ahead ? 5 * x(i - 1) + 8 * x(i) - x(i + 1) : 5 * x(i) + 8 * x(i - 1) - x(i - 2);
    integral[i] = sum / (12 * sampleRate);
  }
  return finiteResult(integral);
}
