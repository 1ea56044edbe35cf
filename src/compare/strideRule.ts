import { bootstrapDifference, differenceInterval, type Interval, meanInterval } from "../statistics/index.js";
import type { DifferenceRule, FoundDifference, IntervalUse } from "./differenceRule.js";
import { driftOf } from "./driftOf.js";
import { isBetweenLimits, moreStrides } from "./moreStrides.js";
import { READING_CORRELATION, type Settings } from "./options.js";
import { changeFromStrides, floorOfStrides } from "./smallestChange.js";
import type { OfBoth } from "./strideSeries.js";

/** Fewest values of a series that can be resampled in blocks. */
const LEAST_FOR_BOOTSTRAP = 4;

/** The rule for one trial each: everything from the strides. */
export function strideRule(settings: Settings): DifferenceRule {
  const { shownLevel, readingLevel, method } = settings;
  return {
    differ: (series, { metric, purpose }: IntervalUse) => {
      if (purpose === "shown") return student(series, shownLevel, {});
      const bootstrap = method === "bootstrap" && metric.primary === true;
      return bootstrap
        ? resampled(series, readingLevel, settings)
        : student(series, readingLevel, READING_CORRELATION);
    },
    otherMethod: (series): Interval | null => {
      const found =
        method === "bootstrap"
          ? student(series, readingLevel, READING_CORRELATION)
          : resampled(series, readingLevel, settings);
      return found?.interval ?? null;
    },
    spread: (which, series) => meanInterval(series[which], shownLevel),
    floor: floorOfStrides,
    smallestChange: changeFromStrides,
    drift: ({ baseline, changed }, floor) => ({
      baseline: driftOf(baseline, readingLevel, floor),
      changed: driftOf(changed, readingLevel, floor),
    }),
    advice: (what, series, values) => {
      if (isBetweenLimits(series, values)) {
        return `another margin or smallest detectable change for ${what}: its difference lies beyond what reads similar and below what counts, which no recording settles while it stays as it is`;
      }
      const more = moreStrides(series, values);
      return more === null
        ? `both conditions recorded again for ${what}: its difference is at the edge of what counts, where more strides alone decide little`
        : `about ${more} or more further strides in each recording for ${what}, if its difference and spread stay as they are`;
    },
  };
}

function student(
  { baseline, changed }: OfBoth<readonly number[]>,
  level: number,
  correlation: Partial<typeof READING_CORRELATION>,
): FoundDifference | null {
  if (baseline.length < 2 || changed.length < 2) return null;
  const { difference, interval } = differenceInterval(changed, baseline, level, correlation);
  return interval === null ? null : { difference, interval };
}

function resampled(
  { baseline, changed }: OfBoth<readonly number[]>,
  level: number,
  { resamples, seed }: Settings,
): FoundDifference | null {
  if (Math.min(baseline.length, changed.length) < LEAST_FOR_BOOTSTRAP) return null;
  const { difference, interval } = bootstrapDifference(changed, baseline, { level, resamples, seed });
  return interval === null ? null : { difference, interval };
}
