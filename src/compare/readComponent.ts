import { lagOneCorrelation } from "../statistics/index.js";
import type { MetricPair } from "./compareMetric.js";
import type { ComparedValues, ComponentName, ComponentReading } from "./comparison.js";
import { moreStrides } from "./moreStrides.js";
import type { Obstacle } from "./obstacles.js";
import { CORRELATED_ABOVE, type Settings } from "./options.js";
import { readDifference } from "./readDifference.js";
import type { OfBoth } from "./strideSeries.js";
import { listed, strides } from "./wording.js";

/** A primary metric's reading with what a sentence needs. */
export interface PrimaryReading {
  readonly pair: MetricPair;
  readonly reading: ComponentReading;
  /** `null` where there are no values per kilometre, or no reading at all. */
  readonly perKilometre: ComponentReading | null;
  /** Too few strides, speeds or scales apart, no interval; `null` where the numbers decided. */
  readonly obstacle: Obstacle | null;
  /** Why it is not settled; `null` where it is. */
  readonly reason: string | null;
  /** What would settle it; empty where it is settled. */
  readonly toSettle: readonly string[];
  /** What would settle it per kilometre; empty where it is settled there, or has no values. */
  readonly toSettlePerKilometre: readonly string[];
}

/** Why a component has no reading at all. */
export interface Absence {
  readonly kind: "not recorded" | "not compared";
  /** Behind "was": "not recorded in both". */
  readonly words: string;
  readonly toSettle: string;
}

/** The component a metric speaks for with its reading, or why it has none. */
export type ComponentState =
  | { readonly component: ComponentName; readonly primary: PrimaryReading; readonly absence: null }
  | { readonly component: ComponentName; readonly primary: null; readonly absence: Absence };

/**
 * Reads a primary metric.
 *
 * @param pair - Its values in both trials.
 * @param values - What is read: per step, or per metre for work.
 * @param series - The stride values behind `values`.
 * @param what - What it speaks of, such as "the vertical force".
 * @param obstacle - What stands in the way of any reading, such as speeds that differ.
 */
export function readPrimary(
  pair: MetricPair,
  values: ComparedValues | null,
  series: OfBoth<readonly number[]>,
  what: string,
  obstacle: Obstacle | null,
  settings: Settings,
): PrimaryReading {
  const blocked =
    obstacle ?? tooFewStrides(series, settings) ?? (values === null ? notCompared(pair, what) : null);
  if (blocked !== null || values === null) {
    return {
      pair,
      reading: "unsettled",
      perKilometre: null,
      obstacle: blocked,
      reason: blocked?.reason ?? "",
      toSettle: blocked?.toSettle ?? [],
      toSettlePerKilometre: [],
    };
  }
  const { moreLoad } = pair.metric;
  const kilometre = pair.comparison?.perKilometre;
  const reading = readDifference(values, moreLoad, settings.similarMargin);
  const perKilometre =
    kilometre === undefined ? null : readDifference(kilometre, moreLoad, settings.similarMargin);
  const perMetre = { baseline: pair.baseline.perMetre, changed: pair.changed.perMetre };
  return {
    pair,
    reading,
    perKilometre,
    obstacle: null,
    reason: reading === "unsettled" ? whyUnsettled(values) : null,
    toSettle: reading === "unsettled" ? [adviceFor(what, series, values, settings)] : [],
    toSettlePerKilometre:
      kilometre === undefined || perKilometre !== "unsettled"
        ? []
        : [adviceFor(`${what} per kilometre`, thousandfold(perMetre), kilometre, settings)],
  };
}

function thousandfold({ baseline, changed }: OfBoth<readonly number[]>): OfBoth<readonly number[]> {
  return { baseline: baseline.map((value) => 1000 * value), changed: changed.map((value) => 1000 * value) };
}

function notCompared({ reason }: MetricPair, what: string): Obstacle {
  const message = reason?.message ?? "it has no interval";
  return {
    brief: message,
    reason: message,
    toSettle: [`recordings in which ${what} can be compared (${message})`],
  };
}

function adviceFor(
  what: string,
  { baseline, changed }: OfBoth<readonly number[]>,
  values: ComparedValues,
  settings: Settings,
): string {
  const more = moreStrides(baseline, changed, values, settings.similarMargin);
  return more === null
    ? `both conditions recorded again for ${what}: its difference is at the edge of what counts, where more strides alone decide little`
    : `about ${more} more strides in each recording for ${what}, if its difference and spread stay as they are`;
}

function whyUnsettled({ difference, readingInterval, smallestDetectableChange }: ComparedValues): string {
  const { low, high } = readingInterval;
  if ((low > 0 || high < 0) && Math.abs(difference) <= smallestDetectableChange.value) {
    return "the difference is below the smallest detectable change, and its interval reaches beyond what reads similar";
  }
  return "the interval of its difference holds zero and reaches beyond what reads similar";
}

function tooFewStrides(series: OfBoth<readonly number[]>, settings: Settings): Obstacle | null {
  const baseline = shortOf("the baseline", series.baseline, settings);
  const changed = shortOf("the changed trial", series.changed, settings);
  const short = [baseline, changed].filter((trial) => trial !== null);
  if (short.length === 0) return null;
  const need = Math.max(...short.map((trial) => trial.need));
  const more = need - Math.min(series.baseline.length, series.changed.length);
  const together = baseline !== null && changed !== null && baseline.text === changed.text;
  return {
    brief: "too few strides",
    reason: together
      ? `each trial has ${baseline.text}`
      : listed(short.map(({ name, text }) => `${name} has ${text}`)),
    toSettle: [`at least ${need} strides in each recording: ${more} more`],
  };
}

function shortOf(
  name: string,
  values: readonly number[],
  { minimumStrides, minimumStridesCorrelated }: Settings,
): { name: string; text: string; need: number } | null {
  const r1 = values.length < 2 ? 0 : lagOneCorrelation(values);
  // Fewer than the minimum tell nothing of their correlation.
  const correlated = values.length >= minimumStrides && r1 > CORRELATED_ABOVE;
  const need = correlated ? Math.max(minimumStrides, minimumStridesCorrelated) : minimumStrides;
  if (values.length >= need) return null;
  const why =
    values.length < minimumStrides ? "" : ` where strides resemble each other (correlation ${r1.toFixed(2)})`;
  return { name, text: `${strides(values.length)} of the ${need} needed${why}`, need };
}
