import {
  differenceInterval,
  type Interval,
  type MeanInterval,
  meanInterval,
  standardDeviation,
} from "../statistics/index.js";
import type { ComparedValues, SmallestDetectableChange } from "./comparison.js";
import { LEAST_MEAN_FOR_PERCENT, READING_CORRELATION, SMALLEST_DETECTABLE_SHARE } from "./options.js";

/** The levels of the two intervals. */
export interface Levels {
  readonly shownLevel: number;
  readonly readingLevel: number;
}

/**
 * Sets the stride values of two trials against each other. `null` where one of them has fewer than two, or strides so
 * alike that they are worth fewer than two independent ones: there is no difference without an interval.
 * `sourced` gives a smallest detectable change for the baseline's mean; without one it is
 * {@link SMALLEST_DETECTABLE_SHARE} of the pooled standard deviation, √{[(n₁ − 1) s₁² + (n₂ − 1) s₂²] / (n₁ + n₂ − 2)}.
 */
export function compareValues(
  baseline: readonly number[],
  changed: readonly number[],
  { shownLevel, readingLevel }: Levels,
  sourced: ((baselineMean: number) => SmallestDetectableChange) | null,
): ComparedValues | null {
  if (baseline.length < 2 || changed.length < 2) return null;
  const { difference, interval } = differenceInterval(changed, baseline, shownLevel);
  const { interval: readingInterval } = differenceInterval(
    changed,
    baseline,
    readingLevel,
    READING_CORRELATION,
  );
  if (interval === null || readingInterval === null) return null;
  const before = meanInterval(baseline, shownLevel);
  return {
    baseline: before,
    changed: meanInterval(changed, shownLevel),
    difference,
    percent: nearZero(before) ? null : (100 * difference) / Math.abs(before.mean),
    interval,
    readingInterval,
    smallestDetectableChange: sourced === null ? fromStrides(baseline, changed) : sourced(before.mean),
  };
}

/** Whether a difference as a share of the mean would tell nothing. */
function nearZero({ mean, sd }: MeanInterval): boolean {
  return mean === 0 || Math.abs(mean) < LEAST_MEAN_FOR_PERCENT * (sd ?? 0);
}

/** Interval of the difference alone, for values that are shown and not read. */
export function shownDifference(
  baseline: readonly number[],
  changed: readonly number[],
  level: number,
): { difference: number; interval: Interval } | null {
  if (baseline.length < 2 || changed.length < 2) return null;
  const { difference, interval } = differenceInterval(changed, baseline, level);
  return interval === null ? null : { difference, interval };
}

function fromStrides(baseline: readonly number[], changed: readonly number[]): SmallestDetectableChange {
  const df = baseline.length + changed.length - 2;
  const squares =
    (baseline.length - 1) * standardDeviation(baseline) ** 2 +
    (changed.length - 1) * standardDeviation(changed) ** 2;
  return {
    value: SMALLEST_DETECTABLE_SHARE * Math.sqrt(squares / df),
    source: `${SMALLEST_DETECTABLE_SHARE} of the pooled standard deviation of strides`,
  };
}
