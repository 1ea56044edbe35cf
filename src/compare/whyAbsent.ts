import type { OfBoth, PairedTrial, StrideSeries } from "./strideSeries.js";

/** What a trial's own list says nothing of was never asked of it. */
export const NOT_ANALYSED = "it was not among the metrics analysed";

/**
 * Says which trial lacks a metric, with the trial's own reason.
 *
 * @param what - What the sentence calls the metric: "it", "the braking impulse".
 */
export function whyAbsent(
  id: string,
  what: string,
  trials: OfBoth<PairedTrial>,
  series: OfBoth<StrideSeries>,
): string {
  const why = (which: keyof OfBoth<unknown>) =>
    trials[which].trial.notComputed.find((entry) => entry.id === id)?.message ?? NOT_ANALYSED;
  const absent = (which: keyof OfBoth<unknown>) => series[which].contacts.having === 0;
  if (absent("baseline") && absent("changed") && why("baseline") === why("changed")) {
    return `neither trial has ${what} (${why("baseline")})`;
  }
  return [
    ...(absent("baseline") ? [`the baseline does not have ${what} (${why("baseline")})`] : []),
    ...(absent("changed") ? [`the changed trial does not have ${what} (${why("changed")})`] : []),
  ].join("; ");
}
