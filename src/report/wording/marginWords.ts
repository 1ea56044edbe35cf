import type { ComparisonSettings } from "../../compare/index.js";
import { plainNumber } from "./plainNumber.js";

/** Says what the margin is that a difference must stay within to read similar. */
export function marginWords({
  design: { baselineTrials, changedTrials },
  similarMargin,
  smallestDetectableShare,
}: ComparisonSettings): string {
  const floor =
    baselineTrials + changedTrials > 3
      ? "the smallest detectable change"
      : `${plainNumber(smallestDetectableShare)} of the standard deviation of strides (or of a smallest detectable change that was given)`;
  return `the larger of ${plainNumber(100 * similarMargin)} % of the baseline's mean and ${floor}, unless one was given`;
}
