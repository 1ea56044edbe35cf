import type { MetricPair } from "./compareMetric.js";
import { compareValues } from "./compareValues.js";
import type { ComparedValues, WorkComparison, WorkReading } from "./comparison.js";
import type { Settings } from "./options.js";
import { type Obstacle, readPrimary } from "./readComponent.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";
import { numbersOf } from "./wording.js";

const NOT_OXYGEN =
  "Mechanical work on the centre of mass is not oxygen uptake: tendons return part of it, and muscles spend energy without it.";
const UNIT = "J/kg/m";
const WHAT = "the work";

/**
 * Reads positive external work per metre and kilogram: each stride's work ÷ (mass × speed × its mean step time), by the
 * rule of the components.
 *
 * @param pair - The metric that speaks for work; `null` where none was asked for.
 * @param obstacle - What stands in the way of any reading.
 */
export function readWork(
  pair: MetricPair | null,
  trials: OfBoth<PairedTrial>,
  obstacle: Obstacle | null,
  settings: Settings,
): WorkComparison {
  const [before, after] = [trials.baseline.trial.settings.mass, trials.changed.trial.settings.mass];
  if (pair === null || pair.comparison === null || before === null || after === null) {
    const why = pair === null ? "it was not asked for" : (pair.reason?.message ?? "a trial has no mass");
    return unread(`positive external work cannot be compared (${why})`);
  }
  const series = {
    baseline: pair.baseline.perMetre.map((value) => value / before),
    changed: pair.changed.perMetre.map((value) => value / after),
  };
  // A sourced change of the work per step is taken as the same share of the baseline's mean.
  const perStep = pair.comparison;
  const sourced = Object.hasOwn(settings.smallestDetectableChange, pair.metric.id)
    ? (mean: number) => ({
        value:
          perStep.baseline.mean === 0
            ? 0
            : perStep.smallestDetectableChange.value * Math.abs(mean / perStep.baseline.mean),
        source: perStep.smallestDetectableChange.source,
      })
    : null;
  const perMetre = compareValues(series.baseline, series.changed, settings, sourced);
  if (perMetre === null) return unread("work per metre needs the speed of both trials");
  const primary = readPrimary(pair, perMetre, series, WHAT, obstacle, settings);
  return {
    reading: WORDS[primary.reading],
    sentence: `${verdict(WORDS[primary.reading], perMetre, primary.reason)} ${NOT_OXYGEN}`,
    perMetre: { unit: UNIT, ...perMetre },
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

function verdict(reading: WorkReading, perMetre: ComparedValues, reason: string | null): string {
  const numbers = numbersOf(perMetre, UNIT);
  switch (reading) {
    case "less work":
      return `Less work: positive external work per metre goes from ${numbers}.`;
    case "more work":
      return `More work: positive external work per metre goes from ${numbers}.`;
    case "no clear change":
      return `No clear change of work: positive external work per metre goes from ${numbers}, within what reads similar.`;
    case "unsettled":
      return `Work is unsettled: ${reason}. Positive external work per metre goes from ${numbers}.`;
  }
}
