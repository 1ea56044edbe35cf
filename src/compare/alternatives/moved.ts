import { differenceInterval } from "../../statistics/index.js";
import { strideValues } from "../../trial/index.js";
import { READING_CORRELATION } from "../options.js";
import { strideMean, type TrialPair } from "./pair.js";

/** A metric that moved between two trials, with its means. */
export interface Moved {
  readonly from: number;
  readonly to: number;
  readonly direction: "lower" | "higher";
}

/** The level shown beside differences: an alternative is something to try, not a reading. */
const LEVEL = 0.95;

/** Tells whether a metric moved: whether the 95 % interval of the difference of stride means leaves zero. */
export function moved({ baseline, changed }: TrialPair, id: string): Moved | null {
  const before = strideValues(baseline.steps, id, baseline);
  const after = strideValues(changed.steps, id, changed);
  if (before.length < 2 || after.length < 2) return null;
  const { interval } = differenceInterval(after, before, LEVEL, READING_CORRELATION);
  if (interval === null || (interval.low <= 0 && interval.high >= 0)) return null;
  return {
    from: strideMean(baseline, id) as number,
    to: strideMean(changed, id) as number,
    direction: interval.low > 0 ? "higher" : "lower",
  };
}
