import { mean, standardDeviation, studentTQuantile } from "../statistics/index.js";
import type { SmallestDetectableChange } from "./comparison.js";
import type { FoundDifference } from "./differenceRule.js";
import { SLOW_DRIFT_SHARE, SMALLEST_DETECTABLE_SHARE, THIRDS_LEVEL } from "./options.js";
import type { OfBoth } from "./strideSeries.js";

type Series = OfBoth<readonly number[]>;

/** The part that more strides do not make smaller: {@link SMALLEST_DETECTABLE_SHARE} of the pooled standard deviation. */
export function floorOfStrides(series: Series): SmallestDetectableChange {
  return {
    value: SMALLEST_DETECTABLE_SHARE * pooledDeviation(series),
    source: `${SMALLEST_DETECTABLE_SHARE} of the pooled standard deviation of strides`,
  };
}

/**
 * What a difference must exceed where nobody measured how the metric varies from trial to trial, the largest of three:
 * {@link floorOfStrides}; the reading interval's reach towards zero and {@link SLOW_DRIFT_SHARE} of the pooled standard
 * deviation; {@link thirdsReach}. The first stands in for what strides cannot show, the others keep slow drift within a
 * trial from being read.
 */
export function changeFromStrides(series: Series, found: FoundDifference): SmallestDetectableChange {
  const floor = floorOfStrides(series);
  const reach = reachOf(found) + SLOW_DRIFT_SHARE * pooledDeviation(series);
  const thirds = thirdsReach(series);
  const value = Math.max(floor.value, reach, thirds);
  if (value === floor.value) return floor;
  const percent = Number((100 * found.interval.level).toPrecision(4));
  return value === reach
    ? {
        value,
        source: `the reach of the ${percent} % interval and ${SLOW_DRIFT_SHARE} of the pooled standard deviation of strides`,
      }
    : {
        value,
        source: `what thirds of the same trial differ by, at ${Number((100 * THIRDS_LEVEL).toPrecision(4))} %`,
      };
}

/** From the difference to its interval's end nearer to zero. */
export function reachOf({ difference, interval }: FoundDifference): number {
  return difference > 0 ? difference - interval.low : interval.high - difference;
}

/**
 * How far apart the means of two trials come by what moves slowly within each: Student's quantile with four degrees of
 * freedom times √(2 s²/3), s² the variance of the means of a trial's three successive thirds, pooled over both. A straight
 * drift within the trials, of whatever size and direction, alone never makes the means differ by more.
 */
export function thirdsReach({ baseline, changed }: Series): number {
  if (Math.min(baseline.length, changed.length) < 3) return 0;
  return thirdsOf(thirdsVariance(baseline), thirdsVariance(changed));
}

/** The reach of thirds from the variance of the means of each trial's thirds. */
export function thirdsOf(variance1: number, variance2: number): number {
  return studentTQuantile((1 + THIRDS_LEVEL) / 2, 4) * Math.sqrt((variance1 + variance2) / 3);
}

/** Variance of the means of a trial's three successive thirds; 0 of fewer than three strides. */
export function thirdsVariance(values: readonly number[]): number {
  if (values.length < 3) return 0;
  const edge = (k: number) => Math.round((k * values.length) / 3);
  return standardDeviation([0, 1, 2].map((k) => mean(values.slice(edge(k), edge(k + 1))))) ** 2;
}

/** Pooled standard deviation of strides: √{[(n₁ − 1) s₁² + (n₂ − 1) s₂²] / (n₁ + n₂ − 2)}. */
export function pooledDeviation({ baseline, changed }: Series): number {
  return pooledOf(standardDeviation(baseline), baseline.length, standardDeviation(changed), changed.length);
}

/** The same from both standard deviations and numbers of strides. */
export function pooledOf(s1: number, n1: number, s2: number, n2: number): number {
  return Math.sqrt(((n1 - 1) * s1 ** 2 + (n2 - 1) * s2 ** 2) / (n1 + n2 - 2));
}
