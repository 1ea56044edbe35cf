import { type Hertz, requireFiniteSamples } from "../../units/index.js";
import { cumulativeIntegral, type IntegrationOptions } from "./cumulativeIntegral.js";

/**
 * Integrates samples over their whole time.
 *
 * Formula: trapezoid or Simpson's rule; with an even number of samples the last interval of Simpson's rule is integrated
 * under the parabola through the last three.
 * Units: the unit of the samples times seconds.
 * Limits: as {@link cumulativeIntegral}, whose last value it is. {@link integralBetween} takes times between samples.
 * Source: common practice; the same as SciPy's `trapezoid` and `simpson`.
 * @param samples - None gives 0; at least 3 for Simpson's rule.
 * @param sampleRate - Samples per second, above 0.
 * @param options - The rule; {@link INTEGRATION_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link cumulativeIntegral}.
 * @example
 * integral(new Float64Array([0, 1, 4]), 1, { rule: "simpson" }) // 2.6666666666666665
 */
export function integral(samples: Float64Array, sampleRate: Hertz, options: IntegrationOptions = {}): number {
  requireFiniteSamples("samples", samples);
  return cumulativeIntegral(samples, sampleRate, options).at(-1) ?? 0;
}
