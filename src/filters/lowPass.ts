import { type Hertz, type Samples, withDefaults } from "../units/index.js";
import { edgeSections } from "./design/edgeSections.js";
import { onePassOf, tangentOf, ZERO_PHASE_DEFAULTS, type ZeroPhaseOptions } from "./netFilter.js";
import type { FilteredChannels, OneOrMore } from "./run/channels.js";
import { zeroPhase } from "./run/zeroPhase.js";

/** What {@link lowPass} needs and may be told. */
export interface LowPassOptions extends ZeroPhaseOptions {
  /** Where the net response of both passes is −3 dB, Hz; above 0 and below half the sampling rate. */
  readonly cutoff: Hertz;
  /** Samples per second of every channel, Hz; above 0. */
  readonly sampleRate: Hertz;
}

/**
 * Takes out what changes faster than the cutoff, without delay: a Butterworth low-pass run forward and backward.
 *
 * Formula: net |H(f)| = 1/(1 + (t/t′)^(2N)), t = tan(π f/fs), order N in each pass, net order 2N; t′ = tan(π fc/fs)/C
 * with C of {@link passCorrection} for two passes, so that |H(fc)| = 1/√2.
 * Units: those of the samples, which keep their unit in their type; Hz.
 * Limits: more samples than the pad are needed, 10 or more at order 4. A step leaks as far ahead as behind: at 20 Hz a
 * contact is seen some 5 ms early. Samples are 64-bit numbers inside; 32-bit input is widened.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed., sect. 2.2.4.4; ends and initial
 * states as SciPy's `sosfiltfilt`.
 * @param samples - One channel, or an array of channels of one length, which are filtered side by side.
 * @param options - Cutoff and sampling rate, and what {@link ZERO_PHASE_DEFAULTS} holds where left out.
 * @throws GaitKineticsError `out-of-range`: cutoff not between 10⁻⁷ of the sampling rate and half of it;
 * order odd, not from 2 to 100, or too high for so low a cutoff; `too-short`: not more samples than the pad; `not-finite`: NaN or infinity among the samples;
 * `unequal-lengths`: channels of different lengths; `wrong-type`: no `Float64Array` or `Float32Array`;
 * `unknown-option`.
 * @example
 * lowPass(new Float64Array(20).fill(700), { cutoff: 50, sampleRate: 1000, order: 4 })[10] // 700
 */
export function lowPass<S extends Samples>(samples: S, options: LowPassOptions): S;
export function lowPass(samples: Float32Array, options: LowPassOptions): Float64Array;
export function lowPass<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  options: LowPassOptions,
): FilteredChannels<L>;
export function lowPass(samples: OneOrMore, options: LowPassOptions): Float64Array | Float64Array[] {
  const { cutoff, sampleRate, ...rest } = { ...options };
  const settings = withDefaults(ZERO_PHASE_DEFAULTS, rest);
  const tangent = tangentOf(cutoff, sampleRate);
  const [order, correction] = onePassOf(settings);
  return zeroPhase(samples, edgeSections(order, tangent / correction, 1), settings);
}
