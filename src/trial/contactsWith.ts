import type { Metric } from "../metrics/index.js";
import type { Side } from "../recording/index.js";
import type { Fraction } from "../units/index.js";
import type { StepRow } from "./trial.js";

/** Share of a trial's contacts that must have a metric for anything to be said of the trial by it. A judgement. */
export const LEAST_SHARE_OF_CONTACTS = 0.9;

/** How many contacts have a metric. */
export interface ContactsWith {
  readonly having: number;
  /** Contacts that could have it: those at the end without the neighbours it needs do not count. */
  readonly counted: number;
  /** `having` ÷ `counted`; 0 where none is counted. */
  readonly share: Fraction;
}

/**
 * Counts the contacts that have a value of a metric.
 *
 * Formula: share = contacts with a value ÷ contacts. A metric that needs the next contact does not count against the last
 * contact, one that needs the same foot's next not against the last two, as long as they lack it.
 * Units: none.
 * Limits: a contact before a gap in the recording lacks neighbours too, and counts.
 * Source: rule of this library.
 * @param rows - Contacts in order of time.
 * @param metric - Its entry.
 * @param side - Count the contacts of this foot alone; of both where left out.
 * @example
 * contactsWith(trial.steps, metricById("contactTime")).share // 1
 */
export function contactsWith(rows: readonly StepRow[], metric: Metric, side?: Side): ContactsWith {
  const has = (row: StepRow | undefined) => (row?.values[metric.id] ?? null) !== null;
  const excused = metric.needs.includes("nextSameSide") ? 2 : metric.needs.includes("next") ? 1 : 0;
  let counted = rows.length;
  while (counted > 0 && counted > rows.length - excused && !has(rows[counted - 1])) counted--;
  const own = rows.slice(0, counted).filter((row) => side === undefined || row.side === side);
  const having = own.filter(has).length;
  return { having, counted: own.length, share: own.length === 0 ? 0 : having / own.length };
}
