import type { Comparison, CurveComparison } from "../../../compare/index.js";
import type { Metric } from "../../../metrics/index.js";
import type { Trial } from "../../../trial/index.js";

/** What the sections of a comparison's page are written from. */
export interface Compared {
  readonly comparison: Comparison;
  /** The trials that are drawn: the first of each condition. */
  readonly baseline: Trial;
  readonly changed: Trial;
  /** Trials of each condition that were handed over. */
  readonly trials: { readonly baseline: number; readonly changed: number };
  readonly metrics: readonly Metric[];
  readonly curves: readonly CurveComparison[];
}

/** Says that of several trials the first is drawn; empty where there is one of each. */
export function firstOfSeveral({ trials }: Compared): string {
  return trials.baseline === 1 && trials.changed === 1 ? "" : " Of each condition the first trial is drawn.";
}
