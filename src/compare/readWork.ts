import type { MetricPair } from "./compareMetric.js";
import { compareValues } from "./compareValues.js";
import type { WorkComparison, WorkReading } from "./comparison.js";
import type { DifferenceRule } from "./differenceRule.js";
import { givenChanges, sharesOf } from "./givenChanges.js";
import type { Obstacle } from "./obstacles.js";
import type { Settings } from "./options.js";
import { readPrimary } from "./readComponent.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";
import { whyNoDistance } from "./whyNoDistance.js";
import { capital, lessIsMore, numbersOf } from "./wording.js";

const NOT_OXYGEN =
  "Mechanical work on the centre of mass is not oxygen uptake: tendons return part of it, and muscles spend energy without it.";
const WHAT = "the work";

/**
 * Reads positive external work per metre and kilogram: each stride's work ÷ (mass × speed × its mean step time), by the
 * rule of the components.
 *
 * @param pair - The metric that speaks for work; `null` where none was asked for.
 * @param obstacle - What stands in the way of any reading.
 * @param aside - A sentence on what else than the technique differs, or nothing.
 */
export function readWork(
  pair: MetricPair | null,
  trials: OfBoth<PairedTrial>,
  obstacle: Obstacle | null,
  aside: string,
  settings: Settings,
  rule: DifferenceRule,
): WorkComparison {
  const [before, after] = [trials.baseline.trial.settings.mass, trials.changed.trial.settings.mass];
  if (pair === null || pair.comparison === null || before === null || after === null) {
    const why =
      pair === null ? "it is not among the metrics" : (pair.reason?.message ?? "a trial has no mass");
    return unread(`${pair?.metric.name ?? "positive external work"} cannot be compared (${why})`);
  }
  const series = {
    baseline: pair.baseline.perMetre.map((value) => value / before),
    changed: pair.changed.perMetre.map((value) => value / after),
  };
  // Given changes of the work per step are taken as the same shares of the baseline's mean.
  const given = sharesOf(givenChanges(pair.metric, trials, settings, 0), pair.comparison.baseline.mean);
  const { name, moreLoad } = pair.metric;
  const perMetre = compareValues(series, { metric: pair.metric, per: "metre" }, given, rule, settings);
  if (perMetre === null)
    return unread(`of ${name} per metre nothing is known, since ${whyNoDistance(trials).reason}`);
  const unit = `${pair.metric.unit}/kg/m`;
  const primary = readPrimary(pair, perMetre, series, WHAT, obstacle, settings, rule);
  const reading = WORDS[primary.reading];
  const numbers = `${name} per metre goes from ${numbersOf(perMetre, unit)}`;
  const sentences = [
    `${verdict(reading, numbers, primary.reason)}${lessIsMore(moreLoad, "work")}.`,
    aside,
    NOT_OXYGEN,
  ];
  return {
    reading,
    sentence: sentences.filter((sentence) => sentence !== "").join(" "),
    perMetre: { unit, ...perMetre },
  };
}

const WORDS: Readonly<Record<"lower" | "higher" | "similar" | "unsettled", WorkReading>> = {
  lower: "less work",
  higher: "more work",
  similar: "no clear change",
  unsettled: "unsettled",
};

function unread(why: string): WorkComparison {
  return { reading: "unsettled", sentence: `Work is unsettled: ${why}. ${NOT_OXYGEN}` };
}

/** Without its full stop. */
function verdict(reading: WorkReading, numbers: string, reason: string | null): string {
  switch (reading) {
    case "less work":
      return `Less work: ${numbers}`;
    case "more work":
      return `More work: ${numbers}`;
    case "no clear change":
      return `No clear change of work: ${numbers}, within what reads similar`;
    case "unsettled":
      return `Work is unsettled: ${reason}. ${capital(numbers)}`;
  }
}
