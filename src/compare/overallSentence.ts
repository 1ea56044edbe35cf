import type { Metric } from "../metrics/index.js";
import type { MetricComparison, OverallReading } from "./comparison.js";
import { kilometreClauses, kilometreSentence } from "./kilometreSentence.js";
import { type AbsentComponent, type Facts, names, type ReadComponent } from "./overallFacts.js";
import { change, forceOf, is, lessIsMore, listed, loadChange, sentence } from "./wording.js";

/** What every verdict says. */
export const NOT_THE_LOAD_INSIDE =
  "This is the force between foot and ground: the load on a joint, bone or tendon can move the other way (Matijevich et al. 2019, PLoS ONE 14:e0210000).";

/** A secondary metric that rose in load. */
export interface RisenMetric {
  readonly metric: Metric;
  readonly comparison: MetricComparison;
}

/** Puts the answer into words: per step, per kilometre, what else differs, and what it does not reach to. */
export function overallSentence(
  reading: OverallReading,
  facts: Facts,
  risen: readonly RisenMetric[],
  aside: string,
): string {
  const open = facts.read.some(({ primary }) => primary.obstacle === null);
  return [verdict(reading, facts), aside, extent(facts), ...(open ? [rises(risen)] : []), NOT_THE_LOAD_INSIDE]
    .filter((part) => part !== "")
    .join(" ");
}

/** "lower (-5.5 %)", one change a component. */
function moved(components: readonly ReadComponent[], word: "lower" | "higher"): string {
  const changes = components.flatMap(({ primary: { pair } }) =>
    pair.comparison === null ? [] : [loadChange(pair.comparison, pair.metric.unit, pair.metric)],
  );
  return `${forceOf(names(components))} ${is(components.length)} ${word} (${listed(changes)})`;
}

function verdict(reading: OverallReading, facts: Facts): string {
  const { read, lower, higher, similar, unsettled, kilometre } = facts;
  const rest = [
    similar.length === 0 ? "" : sentence(`${forceOf(names(similar))} ${is(similar.length)} similar`),
    describe(unsettled),
    reading === "no clear change" && unsettled.length > 0
      ? "What is not shown to differ need not be the same."
      : "",
    kilometreSentence(facts),
  ];
  const followed = (first: string) => [first, ...rest].filter((part) => part !== "").join(" ");
  switch (reading) {
    case "shifted":
      return followed(`Shifted, not reduced: ${moved(lower, "lower")}, and ${moved(higher, "higher")}.`);
    case "raised": {
      const perStep = kilometre.lower.length === 0 ? "" : " per step";
      return followed(`Raised${perStep}: ${moved(higher, "higher")}, and none is shown lower.`);
    }
    case "reduced": {
      const alike =
        similar.length === 0 ? "" : `, and ${forceOf(names(similar))} ${is(similar.length)} similar`;
      const everywhere = read.every(({ primary }) => primary.perKilometre !== null);
      return `Reduced: ${moved(lower, "lower")}${alike}${everywhere ? "; per kilometre, too, each is lower or similar" : ""}.`;
    }
    case "no clear change": {
      const perStep = kilometre.lower.length + kilometre.higher.length === 0 ? "" : " per step";
      return followed(`No clear change${perStep}: no component is shown lower and none higher.`);
    }
    case "unsettled":
      return `Unsettled: ${unsettledVerdict(facts)}`;
  }
}

function unsettledVerdict(facts: Facts): string {
  const { read, absent, lower, unsettled } = facts;
  if (read.length === 0) return `no component of the force can be compared. ${sentence(absences(absent))}`;
  if (lower.length === 0) {
    const reasons = [...new Set(read.map(({ primary }) => primary.obstacle?.reason ?? ""))];
    if (reasons.length === 1) return `${reasons[0]}.`;
    return `${read.map(({ component, primary }) => `for ${forceOf([component])}, ${primary.obstacle?.reason}`).join("; ")}.`;
  }
  const down = moved(lower, "lower");
  const left = absent.filter(({ absence }) => read.length === 1 || absence.kind === "not compared");
  if (unsettled.length > 0 || left.length > 0) {
    const where = left.length === 0 ? "" : ` to a component that was ${kinds(left)}`;
    return [`${down}, but load may have moved${where}.`, describe(unsettled), kilometreSentence(facts)]
      .filter((part) => part !== "")
      .join(" ");
  }
  return `${down} per step and none is higher, but per kilometre, where the number of steps counts too, ${kilometreClauses(facts)}.`;
}

/** Names the components that are not settled, one reason after the other. */
function describe(components: readonly ReadComponent[]): string {
  return components
    .map(({ component, primary }) => sentence(`${forceOf([component])} is not settled: ${primary.reason}`))
    .join(" ");
}

/** What the verdict does not reach to. */
function extent({ read, absent }: Facts): string {
  if (absent.length === 0 || read.length === 0) return "";
  return read.length === 1
    ? `This speaks of ${forceOf(names(read))} alone: ${absences(absent)}.`
    : sentence(absences(absent));
}

/** "the mediolateral force was not recorded in both", components of one reason together. */
function absences(absent: readonly AbsentComponent[]): string {
  const reasons = [...new Set(absent.map(({ absence }) => absence.words))];
  return reasons
    .map((words) => {
      const those = absent.filter(({ absence }) => absence.words === words);
      return `${forceOf(names(those))} was ${words}`;
    })
    .join("; ");
}

function kinds(absent: readonly AbsentComponent[]): string {
  return [...new Set(absent.map(({ absence }) => absence.kind))].join(" or ");
}

function rises(risen: readonly RisenMetric[]): string {
  if (risen.length === 0) return "";
  const level = Number((100 * (risen[0]?.comparison.interval.level ?? 0)).toPrecision(4));
  const named = risen.map(
    ({ metric: { name, moreLoad }, comparison }) =>
      `${name} (${change(comparison, comparison.unit)}${lessIsMore(moreLoad)})`,
  );
  const by = risen.length === 1 ? `its ${level} % interval` : `their ${level} % intervals`;
  const chance = Math.round(200 / (100 - level));
  return `Also more load by ${by}, without a reading (of metrics that did not change, about one in ${chance} rises like this by chance, and more where strides resemble each other or drift): ${listed(named)}.`;
}
