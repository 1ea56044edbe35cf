import type { SourcedChange } from "./options.js";

/** A published variation from session to session, as a smallest detectable change. */
export interface PublishedDetectableChange extends SourcedChange {
  /** Id of the metric. */
  readonly metric: string;
  /** What was measured, and how the value comes from it. */
  readonly what: string;
}

const FORCE_PARAMETERS =
  "“Test-retest reliability of selected ground reaction force parameters and their symmetry during running” (abstract)";
const TEN_TRIALS =
  "an upper bound for means of 10 trials a week apart: ten rearfoot strikers at 4.0 m/s, SEM below 10 % of the mean “for almost all” parameters of the force; 1.96 √2 × 10 % = 27.7 %. Which parameter is below it and by how much the abstract does not say";

/**
 * Published variation of running from session to session, for a caller who names it: nothing of it is used by itself.
 *
 * Formula: 1.96 √2 SEM; limits of a ratio as they are.
 * Units: per cent of the baseline's mean.
 * Limits: an upper bound of a small group at one speed. No change with numbers was found for braking, propulsive or
 * mediolateral impulse; of leg and vertical stiffness only correlations are known (ICC 0.922 and 0.873 between days, Sports
 * Biomech. 2014, abstract), which without their spread make no change; of stride time only that of its variation. Better: `reliability` of the runner's own repeated trials.
 * Source: in each entry.
 * @example
 * PUBLISHED_DETECTABLE_CHANGES[0]?.metric // "peakVerticalForce"
 */
export const PUBLISHED_DETECTABLE_CHANGES: readonly PublishedDetectableChange[] = [
  { metric: "peakVerticalForce", value: 27.7, unit: "%", source: FORCE_PARAMETERS, what: TEN_TRIALS },
  { metric: "impactPeak", value: 27.7, unit: "%", source: FORCE_PARAMETERS, what: TEN_TRIALS },
];
