import { CATALOGUE, type Metric } from "../metrics/index.js";
import type { StepRow, Trial } from "../trial/index.js";
import type { Caution } from "../units/index.js";

/** A trial and what it is called behind "in". */
export interface CalledTrial {
  readonly name: string;
  readonly trial: Trial;
}

/** Share of the contacts from which trials with the very same numbers are said to hold the same data. A judgement. */
const SAME_SHARE = 0.1;
/** Digits to which numbers are the very same: more than exchange files round away, fewer than a filter's edge moves. */
const SAME_DIGITS = 9;

/**
 * Finds trials that hold the same contacts: one recording given twice, a copy of it, or windows that overlap. No two
 * contacts of a runner agree in every metric that speaks for a component to {@link SAME_DIGITS} digits; what stands more than
 * once within a trial tells nothing and is left out. Times are not looked at: a window moves them. Windows of which each was
 * zeroed by flights of its own are not told: that moves every force by a little.
 */
export function sameData(trials: readonly CalledTrial[], metrics: readonly Metric[]): Caution[] {
  const ids = speakingIds(metrics);
  const recorded = trials.map(({ trial: { steps } }) => ids.filter((id) => steps.some(has(id))));
  const keysOf = (k: number, of: readonly string[]) => keysOnce(trials[k]?.trial.steps ?? [], of);
  const known = new Map<string, ReadonlySet<string>>();
  const cached = (k: number, of: readonly string[]) => {
    const name = `${k} ${of.join()}`;
    const found = known.get(name) ?? keysOf(k, of);
    known.set(name, found);
    return found;
  };
  const found = trials.flatMap((one, k) =>
    trials.slice(0, k).flatMap((before, j) => {
      const both = ids.filter((id) => recorded[k]?.includes(id) && recorded[j]?.includes(id));
      if (both.length === 0) return [];
      const [own, other] = [cached(k, both), cached(j, both)];
      const contacts = Math.min(own.size, other.size);
      const same = [...own].filter((key) => other.has(key)).length;
      return same > SAME_SHARE * contacts ? [{ names: [before.name, one.name], same, contacts }] : [];
    }),
  );
  const [first] = found;
  if (first === undefined) return [];
  const where =
    trials.length === 2 ? "both trials" : `${first.names.join(" and ")}${moreWords(found.length - 1)}`;
  return [
    {
      code: "same-data",
      message: `${first.same} of ${first.contacts} contacts have the very same numbers in ${where}: one recording against itself, or overlapping parts of it, tells nothing`,
      where: [...new Set(found.flatMap(({ names }) => names))].join(", "),
      values: { contacts: first.contacts, same: first.same, pairs: found.length },
    },
  ];
}

function moreWords(more: number): string {
  if (more === 0) return "";
  return ` (and in ${more} more such pair${more === 1 ? "" : "s"})`;
}

/** Metrics that speak for a component; work rests on the speed and mass that were stated. */
function speakingIds(metrics: readonly Metric[]): string[] {
  const speaking = [...metrics, ...CATALOGUE].filter(
    ({ primary, family }) => primary === true && family !== "work",
  );
  return [...new Set(speaking.map(({ id }) => id))];
}

function has(id: string): (row: StepRow) => boolean {
  return ({ values }) => typeof values[id] === "number";
}

/** What stands once among a trial's contacts; a contact that lacks a number is left out. */
function keysOnce(steps: readonly StepRow[], ids: readonly string[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const row of steps) {
    if (!ids.every((id) => has(id)(row))) continue;
    const key = ids.map((id) => (row.values[id] as number).toPrecision(SAME_DIGITS)).join();
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return new Set([...counts].filter(([, count]) => count === 1).map(([key]) => key));
}
