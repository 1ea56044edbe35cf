import { type Samples, withDefaults } from "../../units/index.js";
import { type FilterDesign, sectionsOf } from "../design/filterDesign.js";
import type { FilteredChannels, OneOrMore } from "./channels.js";
import { END_DEFAULTS, type EndOptions, zeroPhase } from "./zeroPhase.js";

/**
 * Runs a filter of any design forward and backward, so that nothing is delayed.
 *
 * Formula: net response |H(f)|², H that of one pass.
 * Units: those of the samples, which keep their unit in their type.
 * Limits: the net cutoff is that of the design where it was made for 2 passes; a design for one pass is −6 dB there.
 * Source: the rules of SciPy's `sosfiltfilt` for pad and initial states.
 * @param samples - One channel, or an array of channels of one length, which are filtered side by side.
 * @param design - From {@link butterworth} or {@link criticallyDamped}.
 * @param options - How ends are treated; {@link END_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: not more samples than the pad; `not-finite`: NaN or infinity among the samples;
 * `unequal-lengths`; `wrong-type`: no samples or no design; `out-of-range`; `unknown-option`.
 * @example
 * filterZeroPhase(new Float64Array(20).fill(700), criticallyDamped({ order: 2, cutoff: 20, sampleRate: 1000, passes: 2 })).length // 20
 */
export function filterZeroPhase<S extends Samples>(samples: S, design: FilterDesign, options?: EndOptions): S;
export function filterZeroPhase(
  samples: Float32Array,
  design: FilterDesign,
  options?: EndOptions,
): Float64Array;
export function filterZeroPhase<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  design: FilterDesign,
  options?: EndOptions,
): FilteredChannels<L>;
export function filterZeroPhase(
  samples: OneOrMore,
  design: FilterDesign,
  options: EndOptions = {},
): Float64Array | Float64Array[] {
  return zeroPhase(samples, sectionsOf(design), withDefaults(END_DEFAULTS, options));
}
