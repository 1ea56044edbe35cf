import type { Samples } from "../units/index.js";
import { type BandOptions, bandFilter } from "./bandPass.js";
import type { FilteredChannels, OneOrMore } from "./run/channels.js";

/**
 * Takes out what changes at a rate between two frequencies, such as mains hum, without delay: a Butterworth band-stop
 * run forward and backward.
 *
 * Formula: that of {@link butterworth} for two passes. `order` is the net order of either edge, 2N for N in each pass;
 * each pass has 2N poles.
 * Units: those of the samples, which keep their unit in their type; Hz.
 * Limits: as {@link bandPass}. A constant passes unchanged.
 * Source: agrees with SciPy's `butter` and `sosfiltfilt`; the correction for two passes is worked on the width of the band.
 * @param samples - One channel, or an array of channels of one length, which are filtered side by side.
 * @param options - Edges and sampling rate, and what {@link ZERO_PHASE_DEFAULTS} holds where left out.
 * @throws GaitKineticsError as {@link bandPass}.
 * @example
 * bandStop(new Float64Array(20).fill(700), { cutoff: [48, 52], sampleRate: 1000 }).length // 20
 */
export function bandStop<S extends Samples>(samples: S, options: BandOptions): S;
export function bandStop(samples: Float32Array, options: BandOptions): Float64Array;
export function bandStop<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  options: BandOptions,
): FilteredChannels<L>;
export function bandStop(samples: OneOrMore, options: BandOptions): Float64Array | Float64Array[] {
  return bandFilter("band-stop", samples, options);
}
