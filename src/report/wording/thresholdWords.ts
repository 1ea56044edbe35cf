import type { TrialSettings } from "../../trial/index.js";
import { plainNumber } from "./plainNumber.js";

/** Says the contact threshold and, where a share or a rule was asked for, how it follows from it. */
export function thresholdWords({
  threshold,
  thresholdRule,
  thresholdShare,
  noiseFactor,
}: TrialSettings["events"]): string {
  const level = `${plainNumber(threshold)} N`;
  if (thresholdRule === "share of body weight" && thresholdShare !== null) {
    return `${level} (${plainNumber(100 * thresholdShare)} % of body weight)`;
  }
  if (thresholdRule === "noise in flight" && noiseFactor !== null) {
    return `${level} (${plainNumber(noiseFactor)} SD above the mean force in flight)`;
  }
  return level;
}
