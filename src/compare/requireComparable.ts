import type { Trial } from "../trial/index.js";
import { fail } from "../units/index.js";
import { requireTrial } from "./requireTrial.js";
import { apart } from "./wording.js";

/** Refuses trials whose numbers cannot be set against each other at all. */
export function requireComparable(baseline: Trial, changed: Trial): void {
  requireTrial("baseline", baseline);
  requireTrial("changed", changed);
  const [one, other] = [baseline.settings.filter, changed.settings.filter];
  if (one?.cutoff === other?.cutoff && one?.order === other?.order) return;
  const cutoffs = apart(one?.cutoff ?? 0, other?.cutoff ?? 0);
  const words = (filter: Trial["settings"]["filter"], cutoff: string) =>
    filter === null ? "no filter" : `a ${cutoff} Hz filter of order ${filter.order}`;
  fail(
    "not-comparable",
    `the baseline was analysed with ${words(one, cutoffs[0])} and the changed trial with ${words(other, cutoffs[1])}; a filter moves peaks and rates by as much as a technique: analyse both with one`,
    { argument: "changed", values: { baseline: one, changed: other } },
  );
}
