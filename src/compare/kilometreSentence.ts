import type { ComponentReading } from "./comparison.js";
import { type Facts, names, type ReadComponent } from "./overallFacts.js";
import { forceOf, is, listed, loadChange, sentence } from "./wording.js";

/** Says what per kilometre is other than per step; nothing where no component could be read. */
export function kilometreSentence(facts: Facts): string {
  const { kilometre } = facts;
  const counted = [
    ...kilometre.lower,
    ...kilometre.higher,
    ...kilometre.similar,
    ...kilometre.unsettled,
    ...kilometre.unknown,
  ];
  if (counted.length === 0) return "";
  if (kilometre.unknown.length === counted.length) return sentence(`per kilometre ${unknown(facts)}`);
  const clauses = kilometreClauses(facts);
  return clauses === ""
    ? "Per kilometre the readings are the same."
    : `Per kilometre, where the number of steps counts too, ${clauses}.`;
}

/** "the vertical force is higher (+8.1 %) and the mediolateral force is not settled": what differs from per step. */
export function kilometreClauses(facts: Facts): string {
  const { kilometre } = facts;
  const said: readonly (readonly [ComponentReading, string])[] = [
    ["higher", "higher"],
    ["lower", "lower"],
    ["unsettled", "not settled"],
    ["similar", "similar"],
  ];
  const clauses = said.flatMap(([reading, word]) => {
    const those = kilometre[reading].filter(({ primary }) => primary.reading !== reading);
    if (those.length === 0) return [];
    const changes = reading === "unsettled" ? "" : ` (${listed(those.flatMap(changeOf))})`;
    return [`${forceOf(names(those))} ${is(those.length)} ${word}${changes}`];
  });
  return listed([...clauses, ...(kilometre.unknown.length === 0 ? [] : [unknown(facts)])]);
}

function changeOf({ primary: { pair } }: ReadComponent): string[] {
  const values = pair.comparison?.perKilometre;
  return values === undefined ? [] : [loadChange(values, `${pair.metric.unit}/km`, pair.metric)];
}

/** "nothing is known, since the speed of both trials is not known"; of some components only, these are named. */
function unknown({ read, kilometre }: Facts): string {
  const reasons = [
    ...new Set(kilometre.unknown.map(({ primary }) => primary.pair.noKilometre?.reason ?? "")),
  ];
  const of = kilometre.unknown.length === read.length ? "" : ` of ${forceOf(names(kilometre.unknown))}`;
  return `nothing is known${of}, since ${reasons.join("; ")}`;
}
