import type { TrialSettings } from "../../trial/index.js";
import { plainNumber } from "./plainNumber.js";

/** Says a filter in words. */
export function filterSentence(filter: TrialSettings["filter"]): string {
  if (filter === null) return "none";
  return `low-pass ${plainNumber(filter.cutoff)} Hz (-3 dB of the net response), zero-phase Butterworth, net order ${filter.order}`;
}
