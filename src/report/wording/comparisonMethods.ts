import type { Comparison } from "../../compare/index.js";
import type { Metric } from "../../metrics/index.js";
import { designWords } from "./designWords.js";
import { filterSentence } from "./filterSentence.js";
import { levelWords } from "./intervalWords.js";
import { limitFacts } from "./limitFacts.js";
import { hasBootstrap } from "./methodWords.js";
import { metricName } from "./metricName.js";
import { plainNumber } from "./plainNumber.js";
import { speakers } from "./speakers.js";

/**
 * Says in prose, for a paper's methods, how two conditions were compared: design, effective strides, intervals and their
 * levels, rule of a reading, smallest detectable change and its source, margin, filter, threshold and version.
 */
export function comparisonMethods(comparison: Comparison, metrics: readonly Metric[]): string {
  const { settings, baseline, changed } = comparison;
  const { version, design, bootstrap, shownLevel, readingLevel } = settings;
  const spoken = speakers(comparison);
  const named = spoken.map(
    ({ component, metric }) => `${metricName(metric.id, metrics)} (${component.component})`,
  );
  const reading = levelWords(readingLevel);
  return [
    `Two conditions were compared, ${designWords(design)}; variation from trial to trial: ${design.variation}.`,
    `The baseline held ${baseline.strides} strides, worth ${Math.floor(baseline.effectiveStrides)} independent ones, the changed condition ${changed.strides}, worth ${Math.floor(changed.effectiveStrides)}.`,
    `Differences are changed less baseline, of means over strides (two successive contacts), with ${levelWords(shownLevel)} intervals (${settings.interval}).`,
    ...(named.length === 0 ? [] : [`Primary metrics were ${named.join(", ")}.`]),
    `A reading of lower or higher was taken where the ${reading} interval by ${METHODS[settings.method]} lay clear of zero and the difference exceeded the smallest detectable change${hasBootstrap(comparison) ? `; the bootstrap used ${bootstrap.resamples} resamples (seed ${bootstrap.seed})` : ""}.`,
    ...limitFacts(comparison, metrics).map(({ label, text }) => `${label} of ${text}.`),
    `Filter: ${filterSentence(settings.filter)}; contact threshold ${thresholdOf(comparison)}.`,
    `Computed with gait-kinetics ${version}.`,
  ].join(" ");
}

const METHODS: Readonly<Record<Comparison["settings"]["method"], string>> = {
  student: "Student's t",
  bootstrap: "a studentised block bootstrap",
};

function thresholdOf({ settings, baseline, changed }: Comparison): string {
  return settings.threshold === null
    ? `${plainNumber(baseline.threshold)} N and ${plainNumber(changed.threshold)} N`
    : `${plainNumber(settings.threshold)} N`;
}
