import type { Metric } from "../../metrics/index.js";
import { studentTQuantile } from "../../statistics/index.js";
import type { ComponentName, ComponentReading, OverallReading } from "../comparison.js";
import type { Obstacle } from "../obstacles.js";
import { readDifference } from "../readDifference.js";
import { capital, digits, forceOf, fromTo, lessIsMore } from "../wording.js";
import type { RunnersSettings } from "./options.js";
import type { RunnersComponent, RunnersMetric, RunnersValues } from "./runnersComparison.js";
import type { ComparedMetric } from "./runnersMetric.js";

/** A component with what is said of it and what the overall answer needs. */
export interface RunnersState extends RunnersComponent {
  readonly recorded: boolean;
  /** What stands in the way of a reading; `null` where the numbers decided. */
  readonly obstacle: Obstacle | null;
  /** Why it is not settled; `null` where it is. */
  readonly reason: string | null;
  readonly toSettle: readonly string[];
  /** "-5.5 %" per step and per kilometre; empty without numbers. */
  readonly changes: { readonly step: string; readonly kilometre: string };
  /** "2 of 12 runners moved the other way"; empty where none did, or nothing was read. */
  readonly otherWay: string;
}

/** Of the average runner there is no smallest change but the interval's own. */
const ANY = { value: 0, source: "the interval alone" };
/** Beyond this many runners the estimate is no advice. */
const MOST = 500;

/** Reads a component from its primary metric; `null` metric where none was asked for. */
export function readRunners(
  component: ComponentName,
  primary: ComparedMetric | null,
  recorded: boolean,
  obstacle: Obstacle | null,
  settings: RunnersSettings,
): RunnersState {
  const found = primary?.found ?? null;
  if (primary === null || found === null) {
    const why = primary === null ? "no primary metric for it is among the metrics" : primary.reason?.message;
    const words = recorded ? `not compared: ${why}` : "not recorded in all trials";
    return {
      component,
      metric: null,
      reading: null,
      perKilometre: null,
      sentence: `${capital(component)}: ${words}.`,
      recorded,
      obstacle: null,
      reason: words,
      toSettle: [`${forceOf([component])} recorded and computed in all trials`],
      changes: { step: "", kilometre: "" },
      otherWay: "",
    };
  }
  const { metric } = primary;
  const blocked = obstacle ?? tooFewRunners(found, settings);
  const read = (values: RunnersValues) =>
    readDifference({ ...values, smallestDetectableChange: ANY }, metric.moreLoad);
  const reading = blocked === null ? read(found) : "unsettled";
  const kilometre = found.perKilometre;
  const perKilometre = blocked === null && kilometre !== undefined ? read(kilometre) : null;
  const what = forceOf([component]);
  const open = blocked === null && reading === "unsettled";
  const reason = blocked?.reason ?? (open ? whyUnsettled(found) : null);
  const changes = {
    step: changeOf(found, found.unit, metric),
    kilometre: kilometre === undefined ? "" : changeOf(kilometre, `${found.unit}/km`, metric),
  };
  const otherWay = otherWayOf(found, reading, metric);
  const numbers = `${metric.name} goes from ${numbersOf(found)}${lessIsMore(metric.moreLoad)}`;
  const elsewhere =
    perKilometre === null || perKilometre === reading
      ? ""
      : `; per kilometre ${perKilometre} (${changes.kilometre})`;
  const brief = blocked?.brief ?? reason;
  return {
    component,
    metric: metric.id,
    reading,
    perKilometre,
    sentence: `${capital(component)} ${reading}${brief === null ? "" : ` (${brief})`}: ${numbers}${elsewhere}${otherWay === "" ? "" : `; ${otherWay}`}.`,
    recorded,
    obstacle: blocked,
    reason,
    toSettle: blocked?.toSettle ?? (open ? [moreRunners(what, found)] : []),
    changes,
    otherWay,
  };
}

function tooFewRunners(
  { baseline, changed, runners }: RunnersMetric,
  { minimumRunners }: RunnersSettings,
): Obstacle | null {
  const [one, other] = [baseline.runners, changed.runners];
  if (Math.min(one, other) >= minimumRunners) return null;
  const paired = runners.length > 0;
  return {
    brief: "too few runners",
    reason: paired
      ? `it is known of ${one} of the ${minimumRunners} runners that a reading needs`
      : `it is known of ${one} and ${other} runners where a reading needs ${minimumRunners} of each group`,
    toSettle: [
      paired
        ? `at least ${minimumRunners} runners: ${minimumRunners - one} more`
        : `at least ${minimumRunners} runners of each group`,
    ],
  };
}

function whyUnsettled({ readingInterval: { low, high } }: RunnersValues): string {
  return low > 0 || high < 0
    ? "its interval reaches beyond what reads similar"
    : "the interval of its difference holds zero and reaches beyond what reads similar";
}

/** As many more runners as would settle it, if difference and spread stay as they are. */
function moreRunners(
  what: string,
  { difference, readingInterval, margin, baseline, changed }: RunnersMetric,
): string {
  const k = Math.min(baseline.runners, changed.runners);
  const size = Math.abs(difference);
  const quantile = (runners: number) => studentTQuantile((1 + readingInterval.level) / 2, runners - 1);
  const error = (readingInterval.high - readingInterval.low) / 2 / quantile(k);
  for (let more = 1; more <= MOST; more++) {
    const reach = quantile(k + more) * error * Math.sqrt(k / (k + more));
    if (reach < size || reach < margin.value - size)
      return `about ${more} more runner${more === 1 ? "" : "s"} for ${what}, if its difference and spread stay as they are`;
  }
  return `a larger change for ${what}: its difference is at the edge of what counts, where more runners alone decide little`;
}

/** How many runners' own differences have the other sign than a reading that says lower or higher. */
function otherWayOf(
  { runners, difference }: RunnersMetric,
  reading: ComponentReading,
  { moreLoad }: Metric,
): string {
  if (runners.length === 0 || (reading !== "lower" && reading !== "higher")) return "";
  const other = runners.filter((one) => one.difference !== 0 && one.difference > 0 !== difference > 0).length;
  const direction = difference > 0 === (moreLoad !== "lower") ? "lower" : "higher";
  return other === 0
    ? `of ${runners.length} runners none moved the other way`
    : `of ${runners.length} runners ${other} moved the other way (${direction})`;
}

function changeOf(values: RunnersValues, unit: string, { name, moreLoad }: Metric): string {
  const own =
    values.percent === null ? `${signed(values.difference)} ${unit}` : `${signedPercent(values.percent)} %`;
  return moreLoad === "lower" ? `${name} ${own}${lessIsMore(moreLoad)}` : own;
}

/** "2.41 to 2.33 BW (-3.3 %, 99 % interval -5.0 to -1.6 %)". */
function numbersOf(values: RunnersMetric): string {
  const { baseline, changed, readingInterval, percent, unit } = values;
  const { low, high, level } = readingInterval;
  const scale = 100 / Math.abs(baseline.mean);
  const [change, interval] =
    percent === null
      ? [`${signed(values.difference)} ${unit}`, `${signed(low)} to ${signed(high)} ${unit}`]
      : [`${signedPercent(percent)} %`, `${signedPercent(scale * low)} to ${signedPercent(scale * high)} %`];
  return `${fromTo(baseline.mean, changed.mean)} ${unit} (${change}, ${digits(100 * level)} % interval ${interval})`;
}

function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${digits(value)}`;
}

function signedPercent(percent: number): string {
  const text = percent.toFixed(Math.abs(percent) < 100 ? 1 : 0);
  if (Number(text) === 0) return text.replace("-", "");
  return percent > 0 ? `+${text}` : text;
}

/** Names of components by their reading. */
export function having(
  states: readonly RunnersState[],
  reading: ComponentReading,
  per: "reading" | "perKilometre" = "reading",
): RunnersState[] {
  return states.filter((state) => state[per] === reading);
}

/** The overall reading by the rule of two trials. */
export function overallOf(states: readonly RunnersState[]): OverallReading {
  const read = states.filter(({ reading }) => reading !== null);
  const [lower, higher] = [having(read, "lower"), having(read, "higher")];
  if (read.every(({ obstacle }) => obstacle !== null)) return "unsettled";
  if (higher.length > 0) return lower.length > 0 ? "shifted" : "raised";
  if (lower.length === 0) return "no clear change";
  const proven =
    read.length > 1 &&
    having(read, "unsettled").length === 0 &&
    states.every(({ reading, recorded }) => reading !== null || !recorded) &&
    read.every(({ perKilometre }) => perKilometre === "lower" || perKilometre === "similar");
  return proven ? "reduced" : "unsettled";
}
