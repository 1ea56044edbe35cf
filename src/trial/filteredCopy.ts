import { type GroundReaction, lowPassGroundReaction } from "../force/index.js";
import { fail, type Hertz } from "../units/index.js";

/** Net cutoff and order of the zero-phase filter metrics are read behind. */
export interface TrialFilter {
  readonly cutoff: Hertz;
  /** Net order, even; 4 where left out. */
  readonly order?: number | undefined;
}

/** Net fourth order, 50 Hz, zero phase; events on the same copy. Common practice. */
export const TRIAL_FILTER: Required<TrialFilter> = { cutoff: 50, order: 4 };

/**
 * The ground reaction behind the filter of a trial; as it is where that is `null`, or where it is filtered already
 * and no filter was asked for by the caller.
 */
export function filteredCopy(
  ground: GroundReaction,
  filter: TrialFilter | null,
  asked: boolean,
): GroundReaction {
  if (filter === null) return ground;
  if (ground.settings.filter !== null && !asked) return ground;
  if (!asked && filter.cutoff >= ground.sampleRate / 2) {
    fail(
      "out-of-range",
      `the sampling rate is ${ground.sampleRate} Hz; the default filter of ${filter.cutoff} Hz needs more than ${2 * filter.cutoff} Hz: state a lower cutoff, or no filter`,
      { argument: "filter", values: { sampleRate: ground.sampleRate, cutoff: filter.cutoff } },
    );
  }
  return lowPassGroundReaction(ground, filter);
}
