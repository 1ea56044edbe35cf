import { effectiveNumbersOf, standardDeviation, studentTQuantile } from "../statistics/index.js";
import type { ComparedValues } from "./comparison.js";
import { READING_CORRELATION } from "./options.js";
import { marginOf } from "./readDifference.js";

/** Beyond this many more strides in each trial the estimate is no advice. */
const MOST = 1000;

/**
 * Estimates how many more strides in each trial would settle a difference, if it and the spread and correlation of the
 * strides stay as they are: the reading interval, which narrows with the root of the number, must leave zero (where the
 * difference exceeds the smallest detectable change) or come to lie within the margin. Rounded up to a number a person
 * would say; `null` where that would take more than {@link MOST}.
 */
export function moreStrides(
  baseline: readonly number[],
  changed: readonly number[],
  values: ComparedValues,
  similarMargin: number,
): number | null {
  const size = Math.abs(values.difference);
  const inside = marginOf(values, similarMargin) - size;
  const goal = Math.max(inside, size > values.smallestDetectableChange.value ? size : 0);
  if (goal <= 0) return null;
  const [n1, n2] = effectiveNumbersOf(baseline, changed, READING_CORRELATION);
  const v1 = standardDeviation(baseline) ** 2 / n1;
  const v2 = standardDeviation(changed) ** 2 / n2;
  const share = v1 / (v1 + v2);
  const fewest = Math.min(baseline.length, changed.length);
  const settles = (more: number) => {
    const times = 1 + more / fewest;
    const df = 1 / (share ** 2 / (n1 * times - 1) + (1 - share) ** 2 / (n2 * times - 1));
    return studentTQuantile((1 + values.readingInterval.level) / 2, df) * Math.sqrt((v1 + v2) / times) < goal;
  };
  if (!settles(MOST)) return null;
  // The interval narrows with every stride, so the first number that settles is found by halving.
  let low = 0;
  let high = MOST;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (settles(middle)) high = middle;
    else low = middle;
  }
  return roundUp(high);
}

function roundUp(strides: number): number {
  const step = strides <= 20 ? 5 : strides <= 100 ? 10 : 50;
  return Math.ceil(strides / step) * step;
}
