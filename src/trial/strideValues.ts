import { LONGEST_STEP, medianStepTime } from "../events/index.js";
import type { StepRow } from "./trial.js";

/** Two successive contacts, by their place in the rows. */
export type StridePair = readonly [first: number, second: number];

/**
 * Pairs successive contacts into strides that do not overlap.
 *
 * Formula: contacts 1 + 2, 3 + 4, …; after a missed contact the pairing starts anew, so that a stride never spans a gap.
 * Units: none.
 * Limits: an odd last contact belongs to no stride.
 * Source: rule of this library: strides are the unit of its statistics, since left and right steps differ.
 * @param rows - Contacts in order of time.
 * @example
 * stridePairs(trial.steps).length === trial.summary.strides // true
 */
export function stridePairs(rows: readonly StepRow[]): StridePair[] {
  const limit = LONGEST_STEP * (medianStepTime(rows) ?? 0);
  const pairs: StridePair[] = [];
  for (let k = 0; k + 1 < rows.length; k++) {
    const first = rows[k] as StepRow;
    const second = rows[k + 1] as StepRow;
    const otherFoot = first.side !== second.side || first.side === "unknown";
    if (otherFoot && second.initialContact - first.initialContact <= limit) {
      pairs.push([k, k + 1]);
      k++;
    }
  }
  return pairs;
}

/**
 * Gives the stride values of a metric: the mean of both contacts of each stride.
 *
 * Formula: (first + second) ÷ 2.
 * Units: those of the metric.
 * Limits: a stride of which one contact lacks the value is left out.
 * Source: rule of this library.
 * @param rows - Contacts in order of time.
 * @param id - A metric's id.
 * @example
 * strideValues(trial.steps, "contactTime").length === trial.summary.strides // true
 */
export function strideValues(rows: readonly StepRow[], id: string): number[] {
  return stridePairs(rows).flatMap(([first, second]) => {
    const a = rows[first]?.values[id] ?? null;
    const b = rows[second]?.values[id] ?? null;
    return a === null || b === null ? [] : [(a + b) / 2];
  });
}
