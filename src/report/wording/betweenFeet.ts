import type { Metric } from "../../metrics/index.js";
import { type NotComputed, type Symmetry, symmetriesOf, type Trial } from "../../trial/index.js";
import { capitalised } from "./capitalised.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatNumber } from "./formatNumber.js";
import { metricName } from "./metricName.js";
import { plainNumber } from "./plainNumber.js";
import { reasonGroups } from "./reasonGroups.js";

/** The two feet beside each other, in words. */
export interface BetweenFeetWords {
  /** Of the metrics that speak for their components, and for work. */
  readonly rows: readonly {
    readonly name: string;
    readonly index: string;
    readonly interval: string;
    readonly difference: string;
  }[];
  /** Other metrics whose interval leaves out 0, and those without an index, a sentence each. */
  readonly notes: readonly string[];
  /** Of the intervals, such as "95 %". */
  readonly level: string;
}

/**
 * Says how alike the two feet are: the symmetry index of each metric that speaks for its component, which other metrics
 * differ by their intervals and how many would by chance, and why there is none where there is none.
 *
 * @param trial - As `analyseTrial` gives it.
 * @param metrics - Catalogue entries, own ones included.
 */
export function betweenFeet(trial: Trial, metrics: readonly Metric[]): BetweenFeetWords {
  const { level } = trial.settings;
  const present = metrics.filter(({ id }) => trial.summary.metrics[id] !== undefined);
  const { metrics: found, notComputed } = symmetriesOf(trial, { metrics: present, level });
  const speaks = (id: string) => present.some((metric) => metric.id === id && metric.primary === true);
  const nameOf = (id: string) => metricName(id, metrics);
  const apart = found.filter(({ id, interval }) => !speaks(id) && (interval.low > 0 || interval.high < 0));
  const missing = notComputed.filter(({ id }) => speaks(id));
  return {
    rows: found.filter(({ id }) => speaks(id)).map((one) => rowOf(one, capitalised(nameOf(one.id)))),
    notes: [
      ...(apart.length === 0 ? [] : [apartSentence(apart, found.length, level, nameOf)]),
      ...missingSentences(missing, nameOf),
    ],
    level: `${plainNumber(100 * level)} %`,
  };
}

function rowOf(
  { index, interval, difference, unit }: Symmetry,
  name: string,
): BetweenFeetWords["rows"][number] {
  const { low, high } = difference.interval;
  const decimals = decimalsFor(difference.value, (high - low) / 2);
  return {
    name,
    index: formatNumber(index, 1),
    interval: `${formatNumber(interval.low, 1)} to ${formatNumber(interval.high, 1)}`,
    difference: `${formatNumber(difference.value, decimals)}${unit === "1" ? "" : ` ${unit}`}`,
  };
}

function apartSentence(
  apart: readonly Symmetry[],
  compared: number,
  level: number,
  nameOf: (id: string) => string,
): string {
  const chance = compared * (1 - level);
  const names = apart.map(({ id, index }) => `${nameOf(id)} (${formatNumber(index, 1)} %)`);
  return `Also apart by their intervals, where about ${chance.toFixed(0)} of ${compared} metrics would be by chance in feet that are alike: ${names.join(", ")}.`;
}

function missingSentences(missing: readonly NotComputed[], nameOf: (id: string) => string): string[] {
  return reasonGroups(missing, nameOf).map(
    ({ reason, names }) => `No index of ${names.join(", ")}: ${reason}.`,
  );
}
