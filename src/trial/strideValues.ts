import { type Contact, stepsOf } from "../events/index.js";
import { isOfOneFoot } from "./oneFoot/notOfOneFoot.js";
import type { StepRow, Trial } from "./trial.js";

/**
 * The contacts of a stride, by their place in the rows: two successive ones, or the single one where one foot alone was
 * recorded.
 */
export type StridePair = readonly number[];

/** What the trial of some rows says of them. */
export type StrideContext = Partial<Pick<Trial, "partialContacts" | "cautions">>;

/**
 * Pairs successive contacts into strides that do not overlap.
 *
 * Formula: contacts 1 + 2, 3 + 4, …; after a missed contact, or one that was left out, the pairing starts anew, so that a
 * stride never spans a gap. Where one foot alone was recorded, each contact that is followed by the next one is a stride.
 * Units: none.
 * Limits: an odd last contact belongs to no stride.
 * Source: rule of this library: strides are the unit of its statistics, since left and right steps differ.
 * @param rows - Contacts in order of time.
 * @param trial - The trial they are of: what it left out, and whether it holds one foot alone; left out, nothing of it.
 * @example
 * stridePairs(trial.steps, trial).length === trial.summary.strides // true
 */
export function stridePairs(rows: readonly StepRow[], trial: StrideContext = {}): StridePair[] {
  const { partialContacts = [], cautions = [] } = trial;
  const single = isOfOneFoot({ cautions });
  const contacts = rows.map(({ side, initialContact, toeOff }): Contact => {
    return { side: single ? "unknown" : side, initialContact, toeOff, threshold: 0 };
  });
  const steps = stepsOf(contacts, partialContacts);
  const pairs: StridePair[] = [];
  for (let k = 0; k < steps.length; k++) {
    if (steps[k]?.next === undefined) continue;
    pairs.push(single ? [k] : [k, k + 1]);
    if (!single) k++;
  }
  return pairs;
}

/**
 * Gives the stride values of a metric: the mean of both contacts of each stride.
 *
 * Formula: (first + second) ÷ 2; where one foot alone was recorded, the contact's own value.
 * Units: those of the metric.
 * Limits: a stride of which one contact lacks the value is left out.
 * Source: rule of this library.
 * @param rows - Contacts in order of time.
 * @param id - A metric's id.
 * @param trial - As {@link stridePairs}.
 * @example
 * strideValues(trial.steps, "contactTime", trial).length === trial.summary.strides // true
 */
export function strideValues(rows: readonly StepRow[], id: string, trial: StrideContext = {}): number[] {
  return stridePairs(rows, trial).flatMap((pair) => strideValue(rows, pair, id) ?? []);
}

/** Mean over the contacts of one stride; `null` where one lacks the value. */
function strideValue(rows: readonly StepRow[], pair: StridePair, id: string): number | null {
  let sum = 0;
  for (const k of pair) {
    const value = rows[k]?.values[id] ?? null;
    if (value === null) return null;
    sum += value;
  }
  return sum / pair.length;
}
