import type { Metric } from "../metrics/index.js";
import { hedgesG } from "../statistics/index.js";
import { type ContactsWith, LEAST_SHARE_OF_CONTACTS, type NotComputed } from "../trial/index.js";
import { fail } from "../units/index.js";
import { compareValues, shownDifference } from "./compareValues.js";
import type { ComparedValues, MetricComparison, SmallestDetectableChange } from "./comparison.js";
import type { Settings, SourcedChange } from "./options.js";
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
}

/** Compares one metric, per step, per kilometre and normalised. */
export function compareMetric(
  metric: Metric,
  trials: OfBoth<PairedTrial>,
  series: OfBoth<StrideSeries>,
  settings: Settings,
): MetricPair {
  const { baseline, changed } = series;
  const not = (code: string, message: string): MetricPair => ({
    metric,
    ...series,
    comparison: null,
    reason: { id: metric.id, code, message },
    noKilometre: null,
  });
  if (baseline.contacts.having === 0 || changed.contacts.having === 0)
    return not("not-in-both", whyAbsent(metric.id, "it", trials, series));
  if (Math.min(baseline.contacts.share, changed.contacts.share) < LEAST_SHARE_OF_CONTACTS) {
    return not(
      "too-few-contacts",
      `${portionOf(baseline.contacts)} of the baseline and ${portionOf(changed.contacts)} of the changed trial have it; ${100 * LEAST_SHARE_OF_CONTACTS} % are needed in both`,
    );
  }
  const { mass, gravity } = trials.baseline.trial.settings;
  const sourced = settings.smallestDetectableChange[metric.id];
  const inUnit = sourced === undefined ? null : changeIn(metric, sourced, mass, gravity);
  const values = compareValues(baseline.values, changed.values, settings, inUnit);
  if (values === null) {
    return not(
      "no-interval",
      baseline.values.length < 2 || changed.values.length < 2
        ? "a trial has fewer than two strides with it"
        : "the strides of a trial resemble each other so much that they are worth fewer than two independent ones",
    );
  }
  const perKilometre =
    metric.perKilometre === true ? perKilometreOf(series, settings, inUnit, values.baseline.mean) : null;
  const normalised =
    metric.normalised === undefined
      ? null
      : shownDifference(baseline.normalised, changed.normalised, settings.shownLevel);
  return {
    metric,
    ...series,
    reason: null,
    noKilometre: metric.perKilometre === true && perKilometre === null ? whyNoDistance(trials) : null,
    comparison: {
      id: metric.id,
      unit: metric.unit,
      ...values,
      ...(normalised !== null && { normalised: { unit: metric.normalised?.unit ?? "", ...normalised } }),
      effectSize: hedgesG(changed.values, baseline.values),
      ...(perKilometre !== null && { perKilometre }),
    },
  };
}

/** In whole per cent, rounded down: 89.9 % are not 90 %. */
function portionOf({ having, counted, share }: ContactsWith): string {
  return `${having} of ${counted} contacts (${Math.floor(100 * share + 1e-9)} %)`;
}

/** A sourced change per kilometre is the same share of the baseline's mean as per step. */
function perKilometreOf(
  { baseline, changed }: OfBoth<StrideSeries>,
  settings: Settings,
  perStep: ((baselineMean: number) => SmallestDetectableChange) | null,
  meanPerStep: number,
): ComparedValues | null {
  const thousand = (values: readonly number[]) => values.map((value) => 1000 * value);
  const sourced =
    perStep === null
      ? null
      : (meanPerKilometre: number) => {
          const { value, source } = perStep(meanPerStep);
          return { value: meanPerStep === 0 ? 0 : value * Math.abs(meanPerKilometre / meanPerStep), source };
        };
  return compareValues(thousand(baseline.perMetre), thousand(changed.perMetre), settings, sourced);
}

function changeIn(
  metric: Metric,
  { value, unit, source }: SourcedChange,
  mass: number | null,
  gravity: number,
): (baselineMean: number) => SmallestDetectableChange {
  if (unit === "%") return (baselineMean) => ({ value: (value / 100) * Math.abs(baselineMean), source });
  if (unit === metric.unit) return () => ({ value, source });
  if (mass === null) {
    fail(
      "missing-value",
      `the smallest detectable change of ${metric.id} is in ${unit}, and the baseline has no mass`,
      {
        argument: `smallestDetectableChange.${metric.id}`,
      },
    );
  }
  return () => ({ value: value * mass * (metric.normalised?.by === "body weight" ? gravity : 1), source });
}
