import type { OverallComparison, OverallReading } from "./comparison.js";
import { type Facts, names, overallFacts } from "./overallFacts.js";
import { overallSentence, type RisenMetric } from "./overallSentence.js";
import type { ComponentState } from "./readComponent.js";

/**
 * Reads the load as a whole from its components.
 *
 * `shifted`: at least one lower and one higher. `raised`: one higher, none lower. `reduced`: one lower, every other
 * recorded one lower or similar, per step and per kilometre, and more than one compared. `unsettled`: nothing could be
 * read, or one is lower and the proof for `reduced` is not complete. `no clear change`: none lower, none higher.
 * @param states - The three components in their order.
 * @param risen - Secondary metrics whose shown interval lies on the side of more load.
 * @param aside - A sentence on what else than the technique differs, or nothing.
 */
export function readOverall(
  states: readonly ComponentState[],
  risen: readonly RisenMetric[],
  aside: string,
): OverallComparison {
  const facts = overallFacts(states);
  const { lower, higher, unsettled, kilometre } = facts;
  const reading = readingOf(facts);
  const toSettle = [...new Set(adviceOf(reading, facts))];
  return {
    reading,
    sentence: overallSentence(reading, facts, risen, aside),
    lower: names(lower),
    higher: names(higher),
    unsettled: names(unsettled),
    perKilometre: {
      lower: names(kilometre.lower),
      higher: names(kilometre.higher),
      unsettled: names(kilometre.unsettled),
    },
    ...(toSettle.length > 0 && { toSettle }),
  };
}

function readingOf(facts: Facts): OverallReading {
  const { read, lower, higher } = facts;
  if (read.every(({ primary }) => primary.obstacle !== null)) return "unsettled";
  if (higher.length > 0) return lower.length > 0 ? "shifted" : "raised";
  if (lower.length === 0) return "no clear change";
  return isProven(facts) ? "reduced" : "unsettled";
}

/** That nothing recorded is left open, per step and per kilometre: what a reassurance needs. */
function isProven({ read, absent, unsettled, kilometre }: Facts): boolean {
  return (
    read.length > 1 &&
    unsettled.length === 0 &&
    absent.every(({ absence }) => absence.kind === "not recorded") &&
    kilometre.higher.length + kilometre.unsettled.length + kilometre.unknown.length === 0
  );
}

function adviceOf(reading: OverallReading, { read, absent, lower, unsettled, kilometre }: Facts): string[] {
  // Load that is lower may have moved to a component without a reading, and with none read all of them are wanted.
  const wanted = reading === "unsettled" && (lower.length > 0 || read.length === 0);
  const advice = [
    ...unsettled.flatMap(({ primary }) => primary.toSettle),
    ...kilometre.unknown.flatMap(({ primary }) => primary.pair.noKilometre?.toSettle ?? []),
    ...kilometre.unsettled
      .filter(({ primary }) => primary.reading !== "unsettled")
      .flatMap(({ primary }) => primary.toSettlePerKilometre),
    ...(wanted
      ? absent
          .filter(({ absence }) => read.length < 2 || absence.kind === "not compared")
          .map(({ absence }) => absence.toSettle)
      : []),
  ];
  if (reading !== "unsettled" || advice.length > 0) return advice;
  return ["a choice between load per step and load per kilometre, which point different ways"];
}
