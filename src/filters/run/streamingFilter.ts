import {
  allFinite,
  type Complete,
  fail,
  requireOneOf,
  type Samples,
  withDefaults,
} from "../../units/index.js";
import { type FilterDesign, sectionsOf } from "../design/filterDesign.js";
import { channelsOf, type FilteredChannels, type OneOrMore, refuseNotFinite } from "./channels.js";
import { coefficientsOf, runBlock } from "./runBlock.js";
import { startState } from "./startState.js";

/** What a filter holds between samples: two numbers a section, channel by channel, in transposed direct form II. */
export type FilterState = Float64Array;

/** How a causal filter starts. */
export interface CausalOptions {
  /**
   * `steady`, the default: as if the first sample had been there for ever. `rest`: from zero. A {@link FilterState} goes
   * on where another run ended.
   */
  readonly start?: "steady" | "rest" | FilterState | undefined;
  /** Writes the result over the samples given and returns them; they must be `Float64Array`s. */
  readonly inPlace?: boolean | undefined;
}

/** From the steady state of the first sample, so that nothing swings in. */
export const CAUSAL_DEFAULTS: Complete<CausalOptions> = { start: "steady", inPlace: false };

/** A causal filter that takes its input in blocks. */
export interface StreamingFilter {
  /**
   * Filters the next block of each channel.
   *
   * @param block - One channel, or an array of as many channels as the first block had, all of one length, which may
   * differ from block to block and may be 0.
   * @throws GaitKineticsError `not-finite`, `unequal-lengths`, `wrong-type`; the filter is then as it was before.
   */
  push<S extends Samples>(block: S): S;
  push(block: Float32Array): Float64Array;
  push<const L extends readonly (Samples | Float32Array)[]>(block: L): FilteredChannels<L>;
  /** Gives a copy of the state after the last block, or `null` before the first sample. */
  state(): FilterState | null;
}

/** Samples taken through all sections before the next are begun. */
const BLOCK = 1024;

/**
 * Prepares a filter for data that arrive block by block. It runs forward only and so delays what it passes.
 *
 * Formula: that of the sections, in transposed direct form II; the state is carried from block to block.
 * Units: those of the samples.
 * Limits: blocks give bit for bit what one block gives. A low-pass of order 2 delays slow changes by √2/(2π fc), 11 ms
 * at 20 Hz. Make the design for one pass.
 * Source: definition; agrees with SciPy's `sosfilt`, states included.
 * @param design - From {@link butterworth} or {@link criticallyDamped}.
 * @param options - How it starts; {@link CAUSAL_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no design, or a start that is neither word nor state; `unknown-option`.
 * @example
 * streamingFilter(butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 })).push(new Float64Array([700, 700]))[1] // 700
 */
export function streamingFilter(design: FilterDesign, options: CausalOptions = {}): StreamingFilter {
  const { start, inPlace } = withDefaults(CAUSAL_DEFAULTS, options);
  const sections = sectionsOf(design);
  const coefficients = coefficientsOf(sections);
  if (!(start instanceof Float64Array)) requireOneOf("start", start, ["steady", "rest"]);
  let state: Float64Array | null = null;
  let count: number | null = null;

  function push(block: OneOrMore): Float64Array | Float64Array[] {
    const channels = channelsOf(block, inPlace);
    if (inPlace && !channels.every(allFinite)) refuseNotFinite(channels);
    const length = channels[0]?.length ?? 0;
    if (count !== null && channels.length !== count) {
      fail(
        "unequal-lengths",
        `the block has ${channels.length} channels; ${count} are needed, as in the first`,
        {
          argument: "block",
          values: { channels: channels.length, expected: count },
        },
      );
    }
    const targets = channels.map((channel) => (inPlace ? channel : new Float64Array(length)));
    if (length > 0) {
      const next = state?.slice() ?? startState(sections, start, channels);
      for (let from = 0; from < length; from += BLOCK) {
        runBlock(coefficients, next, 0, channels, targets, from, Math.min(from + BLOCK, length), 1);
      }
      if (!next.every(Number.isFinite)) refuseNotFinite(channels);
      state = next;
      count = channels.length;
    }
    return Array.isArray(block) ? targets : (targets[0] as Float64Array);
  }
  return { push: push as StreamingFilter["push"], state: () => state?.slice() ?? null };
}
