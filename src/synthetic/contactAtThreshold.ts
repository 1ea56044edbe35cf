import type { Contact } from "../events/index.js";
import { fail, type Newtons, requireNumber } from "../units/index.js";
import { stanceForce } from "./stance.js";
import type { TrueContact } from "./truth.js";

/** Step of the search for the crossings, s. */
const GRID = 5e-4;

/**
 * Gives the true contact that a force threshold sees: the first upward and the last downward crossing of the vertical force.
 *
 * Formula: roots of F_up(t) − threshold, by bisection.
 * Units: N in; s from the recording's first sample out.
 * Limits: the true force, without noise, offset or filter; a threshold of 0 gives the zeros of the force.
 * Source: definition of contact by a force threshold, common practice.
 * @param contact - One of a run's truth.
 * @param threshold - From 0 to below the contact's largest vertical force, N.
 * @throws GaitKineticsError `out-of-range`: a threshold that the force does not reach, or a negative one.
 * @example
 * contactAtThreshold(syntheticRun().truth.contacts[0], 0).initialContact // 0.15
 */
export function contactAtThreshold(contact: TrueContact, threshold: Newtons): Contact {
  requireNumber("threshold", threshold, { from: 0, unit: "N" });
  const { stance, side, initialContact, toeOff } = contact;
  if (threshold === 0) return { side, initialContact, toeOff, threshold };
  const { contactTime } = stance;
  const over = (time: number) => stanceForce(stance, "up", time) >= threshold;
  const count = Math.ceil(contactTime / GRID);
  const step = contactTime / count;
  let first = 1;
  while (first <= count && !over(first * step)) first++;
  if (first > count) {
    fail("out-of-range", `threshold is ${threshold} N; the force of this contact stays below it`, {
      argument: "threshold",
      values: { given: threshold, largest: contact.values.peakVerticalForce },
    });
  }
  let last = count - 1;
  while (!over(last * step)) last--;
  return {
    side,
    initialContact: initialContact + crossing(over, first * step, (first - 1) * step),
    toeOff: initialContact + crossing(over, last * step, (last + 1) * step),
    threshold,
  };
}

/** Halves the stretch between a time over the threshold and one under it until it is a trillionth of a second. */
function crossing(over: (time: number) => boolean, within: number, outside: number): number {
  let yes = within;
  let no = outside;
  while (Math.abs(yes - no) > 1e-12) {
    const middle = (yes + no) / 2;
    if (over(middle)) yes = middle;
    else no = middle;
  }
  return (yes + no) / 2;
}
