import type { Comparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { comparedFacts } from "./comparedFacts.js";
import { designWords } from "./designWords.js";
import type { Fact } from "./fact.js";
import { filterSentence } from "./filterSentence.js";
import { limitFacts } from "./limitFacts.js";
import { methodWords } from "./methodWords.js";
import { plainNumber } from "./plainNumber.js";

/**
 * Says what was compared and how, in the words of a person: strides, speeds and masses of both trials, filter,
 * threshold, and the rule behind the readings.
 *
 * @param comparison - As `compareTrials` gives it.
 * @param metrics - Entries that name the metrics.
 * @param names - What the recordings are called, where they have names.
 */
export function comparisonFacts(
  comparison: Comparison,
  metrics: readonly Metric[],
  names: { readonly baseline: string; readonly changed: string } | null,
): readonly Fact[] {
  const { settings } = comparison;
  const [baseline, changed, needs] = comparedFacts(comparison, names);
  return [
    baseline,
    changed,
    { label: "Design", text: `${designWords(settings.design)}; ${settings.design.variation}` },
    { label: "Filter", text: filterSentence(settings.filter) },
    { label: "Contact threshold", text: thresholdOf(comparison) },
    {
      label: "Intervals",
      text: `${percent(settings.shownLevel)} % shown, ${percent(settings.readingLevel)} % behind every reading; ${settings.interval}`,
    },
    { label: "Readings by", text: methodWords(comparison) },
    ...limitFacts(comparison, metrics),
    needs,
  ];
}

function percent(share: number): string {
  return plainNumber(100 * share);
}

function thresholdOf({ settings, baseline, changed }: Comparison): string {
  return settings.threshold === null
    ? `${plainNumber(baseline.threshold)} N in the baseline, ${plainNumber(changed.threshold)} N in the changed trial`
    : `${plainNumber(settings.threshold)} N for both`;
}
