import type { ComparedValues, ComponentReading } from "./comparison.js";

/**
 * Reads a difference.
 *
 * `lower` or `higher` load: the reading interval lies on one side of zero and the difference exceeds the smallest
 * detectable change. `similar`: the reading interval lies within the margin. Everything else is `unsettled`.
 * @param moreLoad - Direction of the metric in which the load grows.
 */
export function readDifference(
  values: Pick<ComparedValues, "difference" | "readingInterval" | "smallestDetectableChange" | "margin">,
  moreLoad: "higher" | "lower" | "none",
): ComponentReading {
  const { difference, readingInterval, smallestDetectableChange } = values;
  const { low, high } = readingInterval;
  const shown = low > 0 || high < 0;
  if (shown && Math.abs(difference) > smallestDetectableChange.value) {
    return difference > 0 === (moreLoad !== "lower") ? "higher" : "lower";
  }
  const margin = values.margin.value;
  return low > -margin && high < margin ? "similar" : "unsettled";
}
