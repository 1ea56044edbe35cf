import type { AlternativeEffect } from "./alternative.js";
import type { EstimateRange } from "./cadenceEstimates.js";

/**
 * Kind and direction of a force by its modelled range, in the tenths of a per cent that are printed: what gets larger is a
 * cost; a range that holds both signs tells no direction, and the force is a load all the same.
 */
export function directionOf(range: EstimateRange): Pick<AlternativeEffect, "kind" | "direction"> {
  const [least, most] = changesOf(range);
  if (least < 0 && most > 0) return { kind: "load", direction: "unclear" };
  return most > 0 ? { kind: "cost", direction: "higher" } : { kind: "load", direction: "lower" };
}

/** Both ends as changes from where the range starts, %, rounded to tenths. */
export function changesOf({ from, low, high }: Omit<EstimateRange, "unit">): readonly [number, number] {
  const tenths = (end: number) => Math.round(1000 * (end / from - 1)) / 10;
  return [tenths(low), tenths(high)];
}
