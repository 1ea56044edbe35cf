import type { Metric } from "../../metrics/index.js";
import type { MetricSummary, Trial } from "../../trial/index.js";
import { counted } from "./counted.js";
import { measuredCells } from "./measuredCells.js";
import { plainNumber } from "./plainNumber.js";
import { summaryNoun } from "./strideNoun.js";

/**
 * Says what a trial shows in one sentence: the primary metric of every component that was recorded, with the interval
 * of its mean.
 *
 * @param trial - As `analyseTrial` gives it.
 * @param metrics - Entries that tell which metrics speak for the components.
 */
export function trialSentence(trial: Trial, metrics: readonly Metric[]): string {
  const { summary, settings } = trial;
  const found = metrics
    .filter(({ primary, component }) => primary === true && component !== "none")
    .flatMap(({ id, name }) => {
      const metric = summary.metrics[id];
      return metric === undefined ? [] : [{ name, metric }];
    });
  const parts = found.map(({ name, metric }) => `${name} ${meanOf(metric)}`);
  const level = plainNumber(100 * settings.level);
  const strides = `Over ${counted(summary.strides || trial.contacts.length, summaryNoun(trial))}`;
  if (parts.length === 0) return `${strides}, no component of the force has a primary metric.`;
  const what = found.some(({ metric }) => metric.interval !== null)
    ? `means with ${level} % intervals`
    : "without an interval";
  return `${strides}, ${what}: ${parts.join("; ")}.`;
}

function meanOf(summary: MetricSummary): string {
  const { mean, interval } = measuredCells(summary);
  const { unit, normalised } = summary;
  const relative = normalised === undefined ? "" : `${measuredCells(normalised).mean} ${normalised.unit}`;
  const inside = [interval, relative].filter((part) => part !== "").join("; ");
  return `${mean} ${unit}${inside === "" ? "" : ` (${inside})`}`;
}
