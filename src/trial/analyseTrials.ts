import type { GroundReaction } from "../force/index.js";
import { type AnalyseTrialOptions, analyseTrial } from "./analyseTrial.js";
import type { Trial } from "./trial.js";

/**
 * Analyses recordings that are to be compared, with one filter and one contact threshold for all: the largest that any
 * of them needs.
 *
 * Formula: threshold = largest of the thresholds found for each by itself; see {@link analyseTrial}.
 * Units: as {@link analyseTrial}.
 * Limits: a threshold stated in the options holds for all as it is.
 * Source: common practice: events read at different levels are not comparable.
 * @param grounds - One ground reaction a recording.
 * @param options - As {@link analyseTrial}, for all of them.
 * @throws GaitKineticsError as {@link analyseTrial}.
 * @example
 * analyseTrials([ground, ground]).length // 2
 */
export function analyseTrials(
  grounds: readonly GroundReaction[],
  options: AnalyseTrialOptions = {},
): Trial[] {
  const trials = grounds.map((ground) => analyseTrial(ground, options));
  const threshold = Math.max(...trials.map(({ settings }) => settings.events.threshold));
  // A share or a rule that gave it is not asked again.
  const events = { ...options.events, threshold, thresholdShare: null, noiseFactor: null };
  return trials.map((trial, k) =>
    trial.settings.events.threshold === threshold
      ? trial
      : analyseTrial(grounds[k] as GroundReaction, { ...options, events }),
  );
}
