import { effectiveNumbersOf, standardDeviation, studentTQuantile } from "../statistics/index.js";
import type { ComparedValues } from "./comparison.js";
import { READING_CORRELATION, SLOW_DRIFT_SHARE } from "./options.js";
import { changeFromStrides, floorOfStrides, pooledDeviation, thirdsReach } from "./smallestChange.js";
import type { OfBoth } from "./strideSeries.js";

/** Beyond this many more strides in each trial the estimate is no advice. */
const MOST = 1000;

/**
 * Estimates how many more strides in each trial would settle a difference, if it and the spread and correlation of the
 * strides stay as they are: the reading interval, which narrows with the root of the number, must come to lie within the
 * margin, or the difference must exceed the smallest detectable change, of which the parts that strides make narrow with it. Rounded up to a
 * number a person would say; `null` where that would take more than {@link MOST}.
 */
export function moreStrides(series: OfBoth<readonly number[]>, values: ComparedValues): number | null {
  const { baseline, changed } = series;
  const size = Math.abs(values.difference);
  const inside = values.margin.value - size;
  const [n1, n2] = effectiveNumbersOf(baseline, changed, READING_CORRELATION);
  const v1 = standardDeviation(baseline) ** 2 / n1;
  const v2 = standardDeviation(changed) ** 2 / n2;
  const share = v1 / (v1 + v2);
  const fewest = Math.min(baseline.length, changed.length);
  const smallest = smallestWith(series, values);
  const settles = (more: number) => {
    const times = 1 + more / fewest;
    const df = 1 / (share ** 2 / (n1 * times - 1) + (1 - share) ** 2 / (n2 * times - 1));
    const reach = studentTQuantile((1 + values.readingInterval.level) / 2, df) * Math.sqrt((v1 + v2) / times);
    return reach < inside || (reach < size && smallest(reach, times) < size);
  };
  if (!settles(MOST)) return null;
  // What must be passed narrows with every stride, so the first number that settles is found by halving.
  let low = 0;
  let high = MOST;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (settles(middle)) high = middle;
    else low = middle;
  }
  return roundUp(high);
}

/** The smallest detectable change with so many times the strides; a given one stays. */
function smallestWith(
  series: OfBoth<readonly number[]>,
  { smallestDetectableChange: { value, source }, difference, readingInterval }: ComparedValues,
): (reach: number, times: number) => number {
  const own = changeFromStrides(series, { difference, interval: readingInterval });
  if (own.source !== source || own.value !== value) return () => value;
  const floor = floorOfStrides(series).value;
  const allowance = SLOW_DRIFT_SHARE * pooledDeviation(series);
  const thirds = thirdsReach(series);
  return (reach, times) => Math.max(floor, reach + allowance, thirds / Math.sqrt(times));
}

function roundUp(strides: number): number {
  const step = strides <= 20 ? 5 : strides <= 100 ? 10 : 50;
  return Math.ceil(strides / step) * step;
}
