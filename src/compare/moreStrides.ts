import { effectiveNumbersOf, standardDeviation, studentTQuantile } from "../statistics/index.js";
import type { ComparedValues } from "./comparison.js";
import { READING_CORRELATION, SLOW_DRIFT_SHARE, SMALLEST_DETECTABLE_SHARE } from "./options.js";
import { changeFromStrides, floorOfStrides, pooledOf, thirdsOf, thirdsVariance } from "./smallestChange.js";
import type { OfBoth } from "./strideSeries.js";

type Series = OfBoth<readonly number[]>;

/** Numbers a person would say; beyond the last the estimate is no advice. */
const SAID: readonly number[] = [
  5, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90, 100, 150, 200, 250, 300, 350, 400, 450, 500, 550, 600, 650, 700,
  750, 800, 850, 900, 950, 1000,
];

/**
 * Estimates how many more strides in each trial would settle a difference, if it and the spread and correlation of the
 * strides stay as they are: the reading interval must come to lie within the margin, or the difference must exceed the
 * smallest detectable change. What strides make narrows with each trial's own number, from n to n + more: its part of the
 * variance of the difference, and that of its thirds; the spread of both trials is pooled by the new numbers. `null` where
 * it would take more than a thousand. No promise: the strides to come are others.
 */
export function moreStrides(series: Series, values: ComparedValues): number | null {
  const size = Math.abs(values.difference);
  const later = laterOf(series, values);
  const settles = (more: number) => {
    const { reach, margin, smallest } = later(more);
    return size + reach < margin || (reach < size && smallest < size);
  };
  return SAID.find(settles) ?? null;
}

/**
 * Whether a difference lies beyond the margin and within that part of the smallest detectable change which more strides do
 * not make smaller, a given one whole: it is neither similar nor does it count, however many strides tell of it.
 */
export function isBetweenLimits(series: Series, values: ComparedValues): boolean {
  const size = Math.abs(values.difference);
  const { smallestDetectableChange } = values;
  const lasting = isFromStrides(series, values) ? floorOfStrides(series) : smallestDetectableChange;
  return size >= values.margin.value && size <= lasting.value;
}

/** The reading interval's reach and the limits with so many more strides in each trial. */
function laterOf(
  series: Series,
  values: ComparedValues,
): (more: number) => { readonly reach: number; readonly margin: number; readonly smallest: number } {
  const { baseline, changed } = series;
  const [s1, s2] = [standardDeviation(baseline), standardDeviation(changed)];
  const [e1, e2] = effectiveNumbersOf(baseline, changed, READING_CORRELATION);
  const [thirds1, thirds2] = [thirdsVariance(baseline), thirdsVariance(changed)];
  const floor = floorOfStrides(series);
  const marginIsFloor = values.margin.source.startsWith(floor.source) && values.margin.value === floor.value;
  const smallestIsOwn = isFromStrides(series, values);
  return (more) => {
    const times1 = (baseline.length + more) / baseline.length;
    const times2 = (changed.length + more) / changed.length;
    const v1 = s1 ** 2 / (e1 * times1);
    const v2 = s2 ** 2 / (e2 * times2);
    const share = v1 + v2 === 0 ? 0.5 : v1 / (v1 + v2);
    const df = 1 / (share ** 2 / (e1 * times1 - 1) + (1 - share) ** 2 / (e2 * times2 - 1));
    const reach = studentTQuantile((1 + values.readingInterval.level) / 2, df) * Math.sqrt(v1 + v2);
    const pooled = pooledOf(s1, baseline.length + more, s2, changed.length + more);
    const least = SMALLEST_DETECTABLE_SHARE * pooled;
    return {
      reach,
      margin: marginIsFloor ? least : values.margin.value,
      smallest: smallestIsOwn
        ? Math.max(least, reach + SLOW_DRIFT_SHARE * pooled, thirdsOf(thirds1 / times1, thirds2 / times2))
        : values.smallestDetectableChange.value,
    };
  };
}

/** Whether the smallest detectable change was made from the strides, not given. */
function isFromStrides(
  series: Series,
  { smallestDetectableChange: { value, source }, difference, readingInterval }: ComparedValues,
): boolean {
  const own = changeFromStrides(series, { difference, interval: readingInterval });
  // Behind the source may stand what was given and is smaller.
  return source.startsWith(own.source) && own.value === value;
}
