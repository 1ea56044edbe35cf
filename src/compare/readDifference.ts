import type { ComparedValues, ComponentReading } from "./comparison.js";

/**
 * Reads a difference.
 *
 * `lower` or `higher` load: the reading interval lies on one side of zero and the difference exceeds the smallest
 * detectable change. `similar`: the reading interval lies within the margin, the larger of the smallest detectable change
 * and `similarMargin` of the baseline's mean. Everything else is `unsettled`.
 * @param moreLoad - Direction of the metric in which the load grows.
 */
export function readDifference(
  values: ComparedValues,
  moreLoad: "higher" | "lower" | "none",
  similarMargin: number,
): ComponentReading {
  const { difference, readingInterval, smallestDetectableChange } = values;
  const { low, high } = readingInterval;
  const shown = low > 0 || high < 0;
  if (shown && Math.abs(difference) > smallestDetectableChange.value) {
    return difference > 0 === (moreLoad !== "lower") ? "higher" : "lower";
  }
  const margin = marginOf(values, similarMargin);
  return low > -margin && high < margin ? "similar" : "unsettled";
}

/** The margin of `similar`, in the unit of the values. */
export function marginOf(
  { baseline, smallestDetectableChange }: ComparedValues,
  similarMargin: number,
): number {
  return Math.max(smallestDetectableChange.value, similarMargin * Math.abs(baseline.mean));
}
