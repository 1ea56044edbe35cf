import type { Samples } from "../../units/index.js";
import type { FilterDesign } from "../design/filterDesign.js";
import type { FilteredChannels, OneOrMore } from "./channels.js";
import { type CausalOptions, streamingFilter } from "./streamingFilter.js";

/**
 * Runs a filter of any design forward only, as an instrument or a real-time display would.
 *
 * Formula: that of the sections.
 * Units: those of the samples, which keep their unit in their type.
 * Limits: what passes is delayed, a low-pass of order 2 by √2/(2π fc) for slow changes; take {@link filterZeroPhase} for
 * recorded data. For blocks as they arrive take {@link streamingFilter}.
 * Source: definition; agrees with SciPy's `sosfilt`.
 * @param samples - One channel, or an array of channels of one length.
 * @param design - From {@link butterworth} or {@link criticallyDamped}, made for one pass.
 * @param options - How it starts; {@link CAUSAL_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-finite`: NaN or infinity among the samples; `unequal-lengths`; `wrong-type`: no samples,
 * no design, a start that does not fit; `unknown-option`.
 * @example
 * filterCausal(new Float64Array([700, 700]), butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 }))[1] // 700
 */
export function filterCausal<S extends Samples>(samples: S, design: FilterDesign, options?: CausalOptions): S;
export function filterCausal(
  samples: Float32Array,
  design: FilterDesign,
  options?: CausalOptions,
): Float64Array;
export function filterCausal<const L extends readonly (Samples | Float32Array)[]>(
  channels: L,
  design: FilterDesign,
  options?: CausalOptions,
): FilteredChannels<L>;
export function filterCausal(
  samples: OneOrMore,
  design: FilterDesign,
  options: CausalOptions = {},
): Float64Array | Float64Array[] {
  return streamingFilter(design, options).push(samples as Float64Array);
}
