import type { Metric } from "../../metrics/index.js";
import {
  blandAltman,
  CORRELATION_FORMS,
  intraclassCorrelation,
  mean,
  SMALLEST_DETECTABLE_CHANGE_DEFAULTS,
  smallestDetectableChange,
  standardDeviation,
  standardErrorOfMeasurement,
} from "../../statistics/index.js";
import { LEAST_MEAN_FOR_PERCENT } from "../options.js";
import type { MetricReliability, ReliabilityCorrelation } from "./reliabilityResult.js";

/** Rows of runners, columns of trials: each cell the mean of a trial's strides. */
export type Cells = readonly (readonly number[])[];

/** Works out how well a metric repeats from the means of its trials. */
export function metricReliability({ id, unit }: Metric, cells: Cells, level: number): MetricReliability {
  const several = cells.length > 1;
  const agreement = standardErrorOfMeasurement(cells, { type: "agreement", level });
  const consistency = several ? standardErrorOfMeasurement(cells, { type: "consistency", level }) : agreement;
  const all = cells.flat();
  const centre = mean(all);
  const change = smallestDetectableChange(agreement.value);
  const spread = standardDeviation(all);
  const { low, high } = agreement.interval;
  return {
    id,
    unit,
    runners: cells.length,
    trials: (cells[0] as readonly number[]).length,
    mean: centre,
    correlations: several ? correlationsOf(cells, level) : [],
    standardError: { agreement: agreement.value, consistency: consistency.value },
    smallestDetectableChange: {
      value: change,
      percent:
        centre === 0 || Math.abs(centre) < LEAST_MEAN_FOR_PERCENT * spread
          ? null
          : (100 * change) / Math.abs(centre),
      interval: { low: smallestDetectableChange(low), high: smallestDetectableChange(high), level },
    },
    limitsOfAgreement: several ? limitsOf(cells, level) : null,
  };
}

/** Forms that have a value: where runners and trials do not differ at all, none has. */
function correlationsOf(cells: Cells, level: number): ReliabilityCorrelation[] {
  return CORRELATION_FORMS.flatMap((form) => {
    const { alsoCalled, value, interval } = intraclassCorrelation(cells, { form, level });
    return value === null || interval === null ? [] : [{ form, alsoCalled, value, interval }];
  });
}

/** Of the first two trials, at the multiplier that the smallest detectable change has. */
function limitsOf(cells: Cells, level: number): MetricReliability["limitsOfAgreement"] {
  const { multiplier } = SMALLEST_DETECTABLE_CHANGE_DEFAULTS;
  const [first, second] = [0, 1].map((place) => cells.map((row) => row[place] as number)) as [
    number[],
    number[],
  ];
  const { bias, biasInterval, low, lowInterval, high, highInterval } = blandAltman(second, first, {
    multiplier,
    level,
  });
  return { bias, biasInterval, low, lowInterval, high, highInterval };
}
