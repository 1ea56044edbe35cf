import { type Samples, withDefaults } from "../units/index.js";
import { edgeSections } from "./design/edgeSections.js";
import type { LowPassOptions } from "./lowPass.js";
import { onePassOf, tangentOf, ZERO_PHASE_DEFAULTS } from "./netFilter.js";
import type { FilteredChannels, OneOrMore } from "./run/channels.js";
import { zeroPhase } from "./run/zeroPhase.js";

/** What {@link highPass} needs and may be told: the same as a low-pass. */
export interface HighPassOptions extends LowPassOptions {}

/**
 * Takes out what changes more slowly than the cutoff, without delay: a Butterworth high-pass run forward and backward.
 *
 * Formula: net |H(f)| = 1/(1 + (t′/t)^(2N)), t = tan(π f/fs), order N in each pass, net order 2N; t′ = C tan(π fc/fs)
 * with C of {@link passCorrection} for two passes, so that |H(fc)| = 1/√2.
 * Units: those of the samples, which keep their unit in their type; Hz.
 * Limits: as {@link lowPass}. A constant comes out as 0. Ground reaction is rarely high-passed: the load itself is slow.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed., sect. 2.2.4.4, turned round; ends and
 * initial states as SciPy's `sosfiltfilt`.
 * @param samples - One channel, or an array of channels of one length, which are filtered side by side.
 * @param options - Cutoff and sampling rate, and what {@link ZERO_PHASE_DEFAULTS} holds where left out.
 * @throws GaitKineticsError as {@link lowPass}.
 * @example
 * highPass(new Float64Array(20).fill(700), { cutoff: 5, sampleRate: 1000 })[10] // 0
 */
export function highPass<S extends Samples>(samples: S, options: HighPassOptions): S;
export function highPass(samples: Float32Array, options: HighPassOptions): Float64Array;
export function highPass<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  options: HighPassOptions,
): FilteredChannels<L>;
export function highPass(samples: OneOrMore, options: HighPassOptions): Float64Array | Float64Array[] {
  const { cutoff, sampleRate, ...rest } = { ...options };
  const settings = withDefaults(ZERO_PHASE_DEFAULTS, rest);
  const tangent = tangentOf(cutoff, sampleRate);
  const [order, correction] = onePassOf(settings);
  return zeroPhase(samples, edgeSections(order, tangent * correction, -1), settings);
}
