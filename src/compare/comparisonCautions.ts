import type { Trial } from "../trial/index.js";
import type { Caution } from "../units/index.js";
import type { MetricPair } from "./compareMetric.js";
import type { ComparisonDesign } from "./comparison.js";
import { freedomWords, isFew } from "./detectableChange.js";
import { driftCautions } from "./driftCautions.js";
import {
  COMPARE_TRIALS_DEFAULTS,
  LEAST_DEGREES_OF_FREEDOM,
  type Settings,
  SMALLEST_DETECTABLE_SHARE,
} from "./options.js";
import { speedCaution } from "./speedCaution.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";
import type { TrialDifference } from "./trialDifferences.js";
import { digits, listed } from "./wording.js";

/** What the cautions of a comparison are found in. */
export interface CautionParts {
  readonly trials: OfBoth<PairedTrial>;
  readonly design: ComparisonDesign;
  readonly pairs: readonly MetricPair[];
  /** Those that speak for a component. */
  readonly primaries: readonly MetricPair[];
  readonly differences: readonly TrialDifference[];
}

/** Lists what is suspect: of the comparison first, then of the trials. */
export function comparisonCautions(parts: CautionParts, settings: Settings): Caution[] {
  const { trials, design, pairs, primaries, differences } = parts;
  const speaking = pairs.filter(({ metric }) => metric.primary === true);
  return [
    ...(design.kind === "one trial each" ? trialToTrialCaution(primaries, settings) : []),
    ...differences.map(({ caution }) => caution),
    ...speedCaution(trials, pairs, settings),
    ...driftCautions(speaking),
    ...fewerStridesCaution(settings),
    ...methodsCaution(speaking, settings),
    ...trialCautions(trials.baseline.trial, trials.changed.trial),
  ];
}

function trialToTrialCaution(primaries: readonly MetricPair[], settings: Settings): Caution[] {
  const given = settings.smallestDetectableChange;
  const own = primaries.filter(({ metric }) => !Object.hasOwn(given, metric.id));
  const few = primaries.filter(
    ({ metric }) => Object.hasOwn(given, metric.id) && isFew(given[metric.id]?.degreesOfFreedom),
  );
  if (own.length + few.length === 0) return [];
  const strides = `${SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides, or more,`;
  const freedom = Math.min(...few.map(({ metric }) => given[metric.id]?.degreesOfFreedom ?? 0));
  const parts = [
    ...(own.length === 0
      ? []
      : [
          `${strides} stands in for the variation from trial to trial, which strides cannot show, nor whether it was the change, warming up or fatigue that moved the load`,
        ]),
    ...(few.length === 0
      ? []
      : [
          `what was given as smallest detectable change of ${listed(few.map(({ metric }) => metric.name))} rests on ${freedomWords(freedom)} and may be far too small by chance, so that what strides ask for, ${strides} stays in force where it is larger; neither shows whether it was the change, warming up or fatigue that moved the load`,
        ]),
  ];
  const more =
    few.length === 0
      ? "or give a sourced smallest detectable change"
      : `or measure the smallest detectable change with ${LEAST_DEGREES_OF_FREEDOM} degrees of freedom or more (${LEAST_DEGREES_OF_FREEDOM + 1} trials of one runner)`;
  return [
    {
      code: "only-two-recordings",
      message: `only these two recordings were compared: ${parts.join("; ")}; record the baseline again after the change, ${more}`,
      where: [...own, ...few].map(({ metric }) => metric.id).join(", "),
      values: { share: SMALLEST_DETECTABLE_SHARE },
    },
  ];
}

/** The figures of false alarms hold from the default numbers of strides. */
function fewerStridesCaution({ minimumStrides, minimumStridesCorrelated }: Settings): Caution[] {
  const tested = COMPARE_TRIALS_DEFAULTS;
  if (minimumStrides >= tested.minimumStrides && minimumStridesCorrelated >= tested.minimumStridesCorrelated)
    return [];
  return [
    {
      code: "fewer-strides-than-tested",
      message: `readings were asked for from ${minimumStrides} strides (${minimumStridesCorrelated} where successive strides resemble each other): how often a component reads lower or higher without a change was measured from ${tested.minimumStrides} (${tested.minimumStridesCorrelated}) strides, and fewer may do so more often`,
      values: { minimumStrides, minimumStridesCorrelated },
    },
  ];
}

/** Metrics that speak of which one method's interval leaves zero and the other's does not. */
function methodsCaution(speaking: readonly MetricPair[], { method }: Settings): Caution[] {
  const clear = ({ low, high }: { readonly low: number; readonly high: number }) => low > 0 || high < 0;
  const apart = speaking.filter(
    ({ comparison, otherInterval }) =>
      comparison !== null &&
      otherInterval !== null &&
      clear(comparison.readingInterval) !== clear(otherInterval),
  );
  if (apart.length === 0) return [];
  const names = { student: "Student's t", bootstrap: "the block bootstrap" };
  const [own, other] = method === "student" ? ["student", "bootstrap"] : ["bootstrap", "student"];
  const said = apart.map(({ metric, comparison, otherInterval }) => {
    const range = (interval: { readonly low: number; readonly high: number } | null | undefined) =>
      `${digits(interval?.low ?? 0)} to ${digits(interval?.high ?? 0)}`;
    return `${metric.name} (${range(comparison?.readingInterval)} and ${range(otherInterval)} ${metric.unit})`;
  });
  return [
    {
      code: "intervals-disagree",
      message: `by ${names[own as "student"]} and by ${names[other as "student"]} the interval of the difference does not agree on whether it leaves zero: ${listed(said)}; readings are taken from the first, and a few more strides would tell`,
      where: apart.map(({ metric }) => metric.id).join(", "),
    },
  ];
}

/** The trials' own cautions with the trial they are of; what both say alike is said once. */
function trialCautions(baseline: Trial, changed: Trial): Caution[] {
  const same = (one: Caution, other: Caution) =>
    one.code === other.code && one.message === other.message && one.where === other.where;
  const of = (trial: string, caution: Caution): Caution => ({
    ...caution,
    where: caution.where === undefined ? trial : `${trial}, ${caution.where}`,
  });
  return [
    ...baseline.cautions.map((one) =>
      of(changed.cautions.some((other) => same(one, other)) ? "both trials" : "baseline", one),
    ),
    ...changed.cautions
      .filter((one) => !baseline.cautions.some((other) => same(one, other)))
      .map((one) => of("changed", one)),
  ];
}
