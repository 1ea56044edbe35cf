import type { MetricComparison } from "../../compare/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatNumber } from "./formatNumber.js";
import { intervalWords } from "./intervalWords.js";

/** What stands behind the reading of one component, in words. */
export interface BehindReading {
  /** Interval that the reading is taken from by Student's t, or by the bootstrap where that decides. */
  readonly interval: string;
  /** The same by the studentised block bootstrap; empty where it was not made. */
  readonly bootstrap: string;
  readonly smallestDetectableChange: string;
  readonly margin: string;
  /** Whether a rise beyond the margin is ruled out: "yes", "not shown", or empty. */
  readonly noRiseBeyondMargin: string;
}

/** Writes what a metric's reading rests on, in the metric's unit, with one number of decimals. */
export function behindReading(metric: MetricComparison): BehindReading {
  const {
    readingInterval,
    bootstrapInterval,
    smallestDetectableChange,
    margin,
    noRiseBeyondMargin,
    baseline,
  } = metric;
  const decimals = decimalsFor(baseline.mean, (readingInterval.high - readingInterval.low) / 2);
  return {
    interval: intervalWords(readingInterval, decimals),
    bootstrap: bootstrapInterval === undefined ? "" : intervalWords(bootstrapInterval, decimals),
    smallestDetectableChange: formatNumber(smallestDetectableChange.value, decimals),
    margin: formatNumber(margin.value, decimals),
    noRiseBeyondMargin: noRiseBeyondMargin === null ? "" : noRiseBeyondMargin ? "yes" : "not shown",
  };
}
