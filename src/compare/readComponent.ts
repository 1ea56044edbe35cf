import type { Metric } from "../metrics/index.js";
import { lagOneCorrelation } from "../statistics/index.js";
import type { MetricPair } from "./compareMetric.js";
import type { ComparedValues, ComponentName, ComponentReading } from "./comparison.js";
import type { DifferenceRule } from "./differenceRule.js";
import type { Obstacle } from "./obstacles.js";
import { CORRELATED_ABOVE, type Settings } from "./options.js";
import { readDifference } from "./readDifference.js";
import type { OfBoth } from "./strideSeries.js";
import { digits, listed, strides } from "./wording.js";

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
 * @param rule - What would settle an unsettled difference is its to say.
 */
export function readPrimary(
  pair: MetricPair,
  values: ComparedValues | null,
  series: OfBoth<readonly number[]>,
  what: string,
  obstacle: Obstacle | null,
  settings: Settings,
  rule: DifferenceRule,
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
  const reading = readDifference(values, moreLoad);
  const perKilometre = kilometre === undefined ? null : readDifference(kilometre, moreLoad);
  const perMetre = { baseline: pair.baseline.perMetre, changed: pair.changed.perMetre };
  return {
    pair,
    reading,
    perKilometre,
    obstacle: null,
    reason: reading === "unsettled" ? whyUnsettled(values, moreLoad) : null,
    toSettle: reading === "unsettled" ? [rule.advice(what, series, values)] : [],
    toSettlePerKilometre:
      kilometre === undefined || perKilometre !== "unsettled"
        ? []
        : [rule.advice(`${what} per kilometre`, thousandfold(perMetre), kilometre)],
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

function whyUnsettled(values: ComparedValues, moreLoad: Metric["moreLoad"]): string {
  const { difference, readingInterval, smallestDetectableChange } = values;
  const { low, high } = readingInterval;
  const why =
    (low > 0 || high < 0) && Math.abs(difference) <= smallestDetectableChange.value
      ? "the difference is below the smallest detectable change, and its interval reaches beyond what reads similar"
      : "the interval of its difference holds zero and reaches beyond what reads similar";
  return `${why}${noRise(values, moreLoad)}`;
}

/** That the load is no higher than the margin allows is worth saying where more is not known. */
function noRise(
  { noRiseBeyondMargin, margin, baseline }: ComparedValues,
  moreLoad: Metric["moreLoad"],
): string {
  if (noRiseBeyondMargin !== true || baseline.mean === 0) return "";
  const percent = digits((100 * margin.value) / Math.abs(baseline.mean));
  return moreLoad === "lower"
    ? `; it is shown not to be more than ${percent} % lower, of which less is more load`
    : `; its load is shown not to be more than ${percent} % higher`;
}

/** Fewer strides than a reading needs. */
export function tooFewStrides(series: OfBoth<readonly number[]>, settings: Settings): Obstacle | null {
  const baseline = shortOf("the baseline", series.baseline, settings);
  const changed = shortOf("the changed trial", series.changed, settings);
  const short = [baseline, changed].filter((trial) => trial !== null);
  if (short.length === 0) return null;
  const together = baseline !== null && changed !== null && baseline.text === changed.text;
  return {
    brief: "too few strides",
    reason: together
      ? `each trial has ${baseline.text}`
      : listed(short.map(({ name, text }) => `${name} has ${text}`)),
    toSettle: together
      ? [`at least ${baseline.need} strides in each recording: ${baseline.more} more`]
      : [
          listed(
            short.map(
              ({ name, need, more }) => `at least ${need} strides in ${name}'s recording: ${more} more`,
            ),
          ),
        ],
  };
}

function shortOf(
  name: string,
  values: readonly number[],
  { minimumStrides, minimumStridesCorrelated }: Settings,
): { name: string; text: string; need: number; more: number } | null {
  const r1 = values.length < 2 ? 0 : lagOneCorrelation(values);
  // Fewer than the minimum tell nothing of their correlation.
  const correlated = values.length >= minimumStrides && r1 > CORRELATED_ABOVE;
  const need = correlated ? Math.max(minimumStrides, minimumStridesCorrelated) : minimumStrides;
  if (values.length >= need) return null;
  const why =
    values.length < minimumStrides ? "" : ` where strides resemble each other (correlation ${r1.toFixed(2)})`;
  return {
    name,
    text: `${strides(values.length)} of the ${need} needed${why}`,
    need,
    more: need - values.length,
  };
}
