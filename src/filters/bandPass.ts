import { type Hertz, type Samples, withDefaults } from "../units/index.js";
import { bandSections } from "./design/bandSections.js";
import { bandOf } from "./design/butterworth.js";
import { onePassOf, ZERO_PHASE_DEFAULTS, type ZeroPhaseOptions } from "./netFilter.js";
import type { FilteredChannels, OneOrMore } from "./run/channels.js";
import { zeroPhase } from "./run/zeroPhase.js";

/** What {@link bandPass} and {@link bandStop} need and may be told. */
export interface BandOptions extends ZeroPhaseOptions {
  /** Where the net response of both passes is −3 dB, Hz: the edges, rising, between 0 and half the sampling rate. */
  readonly cutoff: readonly [low: Hertz, high: Hertz];
  /** Samples per second of every channel, Hz; above 0. */
  readonly sampleRate: Hertz;
}

/**
 * Lets through what changes at a rate between two frequencies, without delay: a Butterworth band-pass run forward and
 * backward.
 *
 * Formula: that of {@link butterworth} for two passes. `order` is the net order of either edge, 2N for N in each pass;
 * each pass has 2N poles.
 * Units: those of the samples, which keep their unit in their type; Hz.
 * Limits: as {@link lowPass}; at order 4 more than 15 samples. The narrower the band, the longer the ends are felt.
 * Source: agrees with SciPy's `butter` and `sosfiltfilt`; the correction for two passes is worked on the width of the band.
 * @param samples - One channel, or an array of channels of one length, which are filtered side by side.
 * @param options - Edges and sampling rate, and what {@link ZERO_PHASE_DEFAULTS} holds where left out.
 * @throws GaitKineticsError as {@link lowPass}; `wrong-type`: not two edges; `out-of-range`: edges that do not rise.
 * @example
 * bandPass(new Float64Array(20).fill(700), { cutoff: [5, 50], sampleRate: 1000 })[10] // 0
 */
export function bandPass<S extends Samples>(samples: S, options: BandOptions): S;
export function bandPass(samples: Float32Array, options: BandOptions): Float64Array;
export function bandPass<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  options: BandOptions,
): FilteredChannels<L>;
export function bandPass(samples: OneOrMore, options: BandOptions): Float64Array | Float64Array[] {
  return bandFilter("band-pass", samples, options);
}

/** What band-pass and band-stop have in common. */
export function bandFilter(
  type: "band-pass" | "band-stop",
  samples: OneOrMore,
  options: BandOptions,
): Float64Array | Float64Array[] {
  const { cutoff, sampleRate, ...rest } = { ...options };
  const settings = withDefaults(ZERO_PHASE_DEFAULTS, rest);
  const [order, correction] = onePassOf(settings);
  const { width, square } = bandOf(type, cutoff, sampleRate, correction);
  return zeroPhase(samples, bandSections(type, order, width, square), settings);
}
