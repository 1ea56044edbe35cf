import type { Metric } from "../metrics/index.js";
import { hedgesG, type Interval } from "../statistics/index.js";
import { type ContactsWith, LEAST_SHARE_OF_CONTACTS, type NotComputed, type Spread } from "../trial/index.js";
import { compareValues, moveInterval, shownDifference } from "./compareValues.js";
import type { ComparedValues, MetricComparison, SpeedAlone } from "./comparison.js";
import { detectableChange, type Given } from "./detectableChange.js";
import type { DifferenceRule } from "./differenceRule.js";
import { givenChanges, sharesOf } from "./givenChanges.js";
import type { Settings } from "./options.js";
import { speedAlone } from "./speedAlone.js";
import type { OfBoth, PairedTrial, StrideSeries } from "./strideSeries.js";
import { whyAbsent } from "./whyAbsent.js";
import { type Missing, whyNoDistance } from "./whyNoDistance.js";

/** A metric's stride values in both trials and what comes of them. */
export interface MetricPair {
  readonly metric: Metric;
  readonly baseline: StrideSeries;
  readonly changed: StrideSeries;
  /** `null` where it could not be compared; then the reason is there. */
  readonly comparison: MetricComparison | null;
  readonly reason: NotComputed | null;
  /** Why there are no values per kilometre; `null` where there are, or where the metric gives them no meaning. */
  readonly noKilometre: Missing | null;
  /** Of a metric that speaks: its interval by the method that readings do not take. */
  readonly otherInterval: Interval | null;
}

/** Compares one metric, per step, per kilometre and normalised. */
export function compareMetric(
  metric: Metric,
  trials: OfBoth<PairedTrial>,
  series: OfBoth<StrideSeries>,
  settings: Settings,
  rule: DifferenceRule,
): MetricPair {
  const { baseline, changed } = series;
  const not = (code: string, message: string): MetricPair => ({
    metric,
    ...series,
    comparison: null,
    reason: { id: metric.id, code, message },
    noKilometre: null,
    otherInterval: null,
  });
  if (baseline.contacts.having === 0 || changed.contacts.having === 0)
    return not("not-in-both", whyAbsent(metric.id, "it", trials, series));
  if (Math.min(baseline.contacts.share, changed.contacts.share) < LEAST_SHARE_OF_CONTACTS) {
    return not(
      "too-few-contacts",
      `${portionOf(baseline.contacts)} of the baseline and ${portionOf(changed.contacts)} of the changed trial have it; ${100 * LEAST_SHARE_OF_CONTACTS} % are needed in both`,
    );
  }
  const perStep = { baseline: baseline.values, changed: changed.values };
  const mean = baseline.values.reduce((sum, value) => sum + value / baseline.values.length, 0);
  const alone = speedAlone(metric, trials, mean, settings);
  const takenOff = alone?.takenOff === true ? alone.difference : 0;
  const given = givenChanges(metric, trials, settings, takenOff);
  const values = compareValues(perStep, { metric, per: "step" }, given, rule, settings);
  if (values === null) {
    return not(
      "no-interval",
      baseline.values.length < 2 || changed.values.length < 2
        ? "a trial has fewer than two strides with it"
        : "the strides of a trial resemble each other so much that they are worth fewer than two independent ones",
    );
  }
  const perKilometre =
    metric.perKilometre === true && takenOff === 0
      ? perKilometreOf(metric, series, values.baseline.mean, given, rule, settings)
      : null;
  const other = metric.primary === true ? rule.otherMethod(perStep) : null;
  const otherInterval = other && moveInterval(other, -takenOff);
  return {
    metric,
    ...series,
    reason: null,
    noKilometre:
      metric.perKilometre === true && perKilometre === null
        ? takenOff === 0
          ? whyNoDistance(trials)
          : STEPS_UNKNOWN
        : null,
    otherInterval,
    comparison: {
      id: metric.id,
      unit: metric.unit,
      ...values,
      ...normalisedOf(metric, trials, series, takenOff, rule),
      effectSize: effectSizeOf(values, takenOff),
      ...spoken(metric, values, perStep, otherInterval, alone, given, rule, settings),
      ...(perKilometre !== null && { perKilometre }),
    },
  };
}

/** Hedges' g of the means by the spreads of strides. */
function effectSizeOf({ baseline, changed }: ComparedValues, takenOff: number): number | null {
  const of = ({ n, mean, sd }: Spread, less: number) => ({ n, mean: mean - less, sd: sd ?? 0 });
  return hedgesG(of(changed, takenOff), of(baseline, 0));
}

const STEPS_UNKNOWN: Missing = {
  reason: "what the speed alone does to the number of steps was not taken out",
  toSettle: "both recordings at one speed",
};

/** What only metrics that speak have, and what the speed alone would do. */
function spoken(
  metric: Metric,
  values: ComparedValues,
  series: OfBoth<readonly number[]>,
  otherInterval: Interval | null,
  alone: SpeedAlone | null,
  given: Given,
  rule: DifferenceRule,
  settings: Settings,
): Pick<MetricComparison, "bootstrapInterval" | "drift" | "speedAlone"> {
  const bootstrap = settings.method === "bootstrap" ? values.readingInterval : otherInterval;
  const speaks = metric.primary === true;
  const floor = detectableChange(given, values.baseline.mean, () =>
    rule.floor(series, { metric, per: "step" }),
  );
  const drift = speaks ? rule.drift(series, floor.value) : null;
  return {
    ...(speaks && bootstrap !== null && { bootstrapInterval: bootstrap }),
    ...(drift !== null && { drift }),
    ...(alone !== null && { speedAlone: alone }),
  };
}

/** In whole per cent, rounded down: 89.9 % are not 90 %. */
function portionOf({ having, counted, share }: ContactsWith): string {
  return `${having} of ${counted} contacts (${Math.floor(100 * share + 1e-9)} %)`;
}

/** A given change per kilometre is the same share of the baseline's mean as per step. */
function perKilometreOf(
  metric: Metric,
  { baseline, changed }: OfBoth<StrideSeries>,
  meanPerStep: number,
  given: Given,
  rule: DifferenceRule,
  settings: Settings,
): ComparedValues | null {
  const thousand = (values: readonly number[]) => values.map((value) => 1000 * value);
  const series = { baseline: thousand(baseline.perMetre), changed: thousand(changed.perMetre) };
  return compareValues(series, { metric, per: "kilometre" }, sharesOf(given, meanPerStep), rule, settings);
}

/** Nothing where the divisor holds the distance and the effect of speed, which moves it too, was taken off. */
function normalisedOf(
  metric: Metric,
  { baseline }: OfBoth<PairedTrial>,
  series: OfBoth<StrideSeries>,
  takenOff: number,
  rule: DifferenceRule,
): Pick<MetricComparison, "normalised"> {
  const { normalised } = metric;
  const { mass, gravity } = baseline.trial.settings;
  if (normalised === undefined || mass === null) return {};
  if (takenOff !== 0 && normalised.by === "mass and distance") return {};
  const found = shownDifference(
    { baseline: series.baseline.normalised, changed: series.changed.normalised },
    { metric, per: "normalised" },
    takenOff / (mass * (normalised.by === "body weight" ? gravity : 1)),
    rule,
  );
  return found === null ? {} : { normalised: { unit: normalised.unit, ...found } };
}
