import type { ComponentName, MetricComparison, OverallComparison, OverallReading } from "./comparison.js";
import type { ComponentState, PrimaryReading } from "./readComponent.js";
import { change, forceOf, is, listed } from "./wording.js";

/** What every verdict says. */
const NOT_THE_LOAD_INSIDE =
  "This is the force between foot and ground: the load on a joint, bone or tendon can move the other way (Matijevich et al. 2019, PLoS ONE 14:e0210000).";

/** A recorded component. */
interface Recorded {
  readonly component: ComponentName;
  readonly primary: PrimaryReading;
}

/** A secondary metric that rose. */
export interface RisenMetric {
  readonly name: string;
  readonly comparison: MetricComparison;
}

/**
 * Reads the load as a whole from its components.
 *
 * `shifted`: at least one lower and one higher. `raised`: one higher, none lower. `reduced`: one lower, every other
 * recorded one lower or similar, per step and per kilometre, and more than one recorded. `unsettled`: nothing could be
 * read, or one is lower and the proof for `reduced` is not complete. `no clear change`: none lower, none higher.
 * @param states - The three components in their order.
 * @param risen - Secondary metrics whose shown interval lies on the side of more load.
 * @param speedKnown - Whether both trials have a speed, without which there are no values per kilometre.
 */
export function readOverall(
  states: readonly ComponentState[],
  risen: readonly RisenMetric[],
  speedKnown: boolean,
): OverallComparison {
  const recorded = states.flatMap(({ component, primary }) =>
    primary === null ? [] : [{ component, primary }],
  );
  const those = (reading: string) => recorded.filter(({ primary }) => primary.reading === reading);
  const [lower, higher, similar, unsettled] = [
    those("lower"),
    those("higher"),
    those("similar"),
    those("unsettled"),
  ];
  const perKilometre = recorded.filter(({ primary }) => !provenPerKilometre(primary));
  const facts = { recorded, lower, higher, similar, unsettled, perKilometre, speedKnown };
  const reading = readingOf(facts);
  const toSettle = [...new Set(adviceOf(reading, facts))];
  const missing = states.flatMap(({ component, primary }) => (primary === null ? [component] : []));
  const open = recorded.some(({ primary }) => primary.obstacle === null);
  const sentences = [
    verdict(reading, facts),
    extent(recorded, missing),
    ...(open ? [rises(risen)] : []),
    NOT_THE_LOAD_INSIDE,
  ];
  return {
    reading,
    sentence: sentences.filter((sentence) => sentence !== "").join(" "),
    lower: names(lower),
    higher: names(higher),
    unsettled: names(unsettled),
    ...(toSettle.length > 0 && { toSettle }),
  };
}

interface Facts {
  readonly recorded: readonly Recorded[];
  readonly lower: readonly Recorded[];
  readonly higher: readonly Recorded[];
  readonly similar: readonly Recorded[];
  readonly unsettled: readonly Recorded[];
  /** Components not proven lower or similar per kilometre. */
  readonly perKilometre: readonly Recorded[];
  readonly speedKnown: boolean;
}

function readingOf({ recorded, lower, higher, unsettled, perKilometre }: Facts): OverallReading {
  if (recorded.every(({ primary }) => primary.obstacle !== null)) return "unsettled";
  if (higher.length > 0) return lower.length > 0 ? "shifted" : "raised";
  if (lower.length === 0) return "no clear change";
  return recorded.length > 1 && unsettled.length === 0 && perKilometre.length === 0 ? "reduced" : "unsettled";
}

/** A metric whose catalogue entry gives it no value per kilometre needs no proof there. */
function provenPerKilometre({ pair, perKilometre }: PrimaryReading): boolean {
  return pair.metric.perKilometre !== true || perKilometre === "lower" || perKilometre === "similar";
}

function names(components: readonly Recorded[]): ComponentName[] {
  return components.map(({ component }) => component);
}

/** "lower (-5.5 %)", one change a component. */
function moved(components: readonly Recorded[], word: string): string {
  const changes = components.flatMap(({ primary: { pair } }) =>
    pair.comparison === null ? [] : [change(pair.comparison, pair.metric.unit)],
  );
  return `${forceOf(names(components))} ${is(components.length)} ${word} (${listed(changes)})`;
}

function verdict(reading: OverallReading, facts: Facts): string {
  const { recorded, lower, higher, similar, unsettled } = facts;
  const notSettled = unsettled.length === 0 ? "" : ` ${describe(unsettled)}`;
  const alike =
    similar.length === 0 ? "" : ` ${sentence(`${forceOf(names(similar))} ${is(similar.length)} similar`)}`;
  switch (reading) {
    case "shifted":
      return `Shifted, not reduced: ${moved(lower, "lower")}, and ${moved(higher, "higher")}.${alike}${notSettled}`;
    case "raised":
      return `Raised: ${moved(higher, "higher")}, and none is shown lower.${alike}${notSettled}`;
    case "reduced": {
      const rest =
        similar.length === 0 ? "" : `, and ${forceOf(names(similar))} ${is(similar.length)} similar`;
      const kilometre = recorded.some(({ primary }) => primary.perKilometre === null)
        ? ""
        : "; per kilometre, too, each is lower or similar";
      return `Reduced: ${moved(lower, "lower")}${rest}${kilometre}.`;
    }
    case "no clear change":
      return `No clear change: no component is shown lower and none higher.${alike}${notSettled}${unsettled.length > 0 ? " What is not shown to differ need not be the same." : ""}`;
    case "unsettled":
      return recorded.length === 0
        ? "Unsettled: no component of the force can be compared in these two trials."
        : `Unsettled: ${unsettledVerdict(facts)}`;
  }
}

function unsettledVerdict({ recorded, lower, unsettled, perKilometre, speedKnown }: Facts): string {
  if (lower.length === 0) {
    return `${listed([...new Set(recorded.map(({ primary }) => primary.obstacle?.reason ?? ""))])}.`;
  }
  const down = moved(lower, "lower");
  if (recorded.length === 1) return `${down}, but load may have moved to a component that was not recorded.`;
  if (unsettled.length > 0) return `${down}, but load may have moved. ${describe(unsettled)}`;
  if (!speedKnown)
    return `${down} per step and none is higher, but without the speed nothing is known per kilometre.`;
  const more = perKilometre.filter(({ primary }) => primary.perKilometre === "higher");
  const open = perKilometre.filter(({ primary }) => primary.perKilometre !== "higher");
  const words = [
    ...(more.length === 0 ? [] : [`${forceOf(names(more))} ${is(more.length)} higher`]),
    ...(open.length === 0 ? [] : [`${forceOf(names(open))} ${is(open.length)} not settled`]),
  ];
  return `${down} per step and none is higher, but per kilometre, where the number of steps counts too, ${listed(words)}.`;
}

/** Names the components that are not settled, one reason after the other. */
function describe(components: readonly Recorded[]): string {
  return components
    .map(({ component, primary }) => sentence(`${forceOf([component])} is not settled: ${primary.reason}`))
    .join(" ");
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** What the verdict does not reach to. */
function extent(recorded: readonly Recorded[], missing: readonly ComponentName[]): string {
  if (missing.length === 0 || recorded.length === 0) return "";
  if (recorded.length === 1)
    return `This speaks of ${forceOf(names(recorded))} alone: the other components were not recorded in both.`;
  return `${sentence(`${forceOf(missing)} was not recorded in both`)}`;
}

function rises(risen: readonly RisenMetric[]): string {
  if (risen.length === 0) return "";
  const level = Number((100 * (risen[0]?.comparison.interval.level ?? 0)).toPrecision(4));
  const named = risen.map(({ name, comparison }) => `${name} (${change(comparison, comparison.unit)})`);
  const by = risen.length === 1 ? `its ${level} % interval` : `their ${level} % intervals`;
  return `Also more load by ${by}, without a reading: ${listed(named)}.`;
}

function adviceOf(
  reading: OverallReading,
  { recorded, unsettled, perKilometre, speedKnown }: Facts,
): string[] {
  const advice = unsettled.flatMap(({ primary }) => primary.toSettle ?? []);
  if (reading !== "unsettled" || advice.length > 0) return advice;
  if (recorded.length === 1) return ["all three components of the force recorded in both trials"];
  if (!speedKnown) return ["the speed of both trials"];
  const open = perKilometre.flatMap(({ primary }) => primary.toSettlePerKilometre ?? []);
  return open.length > 0
    ? open
    : ["a choice between load per step and load per kilometre, which point different ways"];
}
