import { CATALOGUE, type Metric } from "../metrics/index.js";
import type { SharedCorrelationOptions } from "../statistics/index.js";
import { type Complete, type Fraction, fail, requireNumber, withDefaults } from "../units/index.js";

/** A smallest detectable change that somebody else measured, with its source, which is printed beside it. */
export interface SourcedChange {
  /** Zero or more. */
  readonly value: number;
  /** The metric's unit, its normalised unit where that is per body weight or per mass, or `%` of the baseline's mean. */
  readonly unit: string;
  readonly source: string;
}

/** How two trials are compared. */
export interface CompareTrialsOptions {
  /** Entries to compare, own ones included; those marked primary speak for their component. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Level of the intervals that are shown. */
  readonly shownLevel?: Fraction | undefined;
  /** Level of the intervals that readings are taken from. */
  readonly readingLevel?: Fraction | undefined;
  /** Fewest strides, in each trial, for a reading. */
  readonly minimumStrides?: number | undefined;
  /** Fewest strides where successive ones resemble each other: correlation above {@link CORRELATED_ABOVE}. */
  readonly minimumStridesCorrelated?: number | undefined;
  /** Smallest detectable changes by metric id, in place of {@link SMALLEST_DETECTABLE_SHARE} of the stride SD. */
  readonly smallestDetectableChange?: Readonly<Record<string, SourcedChange>> | undefined;
  /** Share of the baseline's mean within which a difference reads `similar`. */
  readonly similarMargin?: Fraction | undefined;
  /** Share of the smaller speed by which the speeds may differ. */
  readonly speedTolerance?: Fraction | undefined;
}

/**
 * Share of the baseline's mean inside which a whole interval reads `similar`. A judgement: no study says how much load
 * is alike. It decides `similar` alone and is never a minimum for `lower` or `higher`.
 */
export const SIMILAR_MARGIN = 0.1;
/**
 * Share of the pooled standard deviation of strides that a difference must exceed where no smallest detectable change is
 * given. A judgement: it stands in for what strides cannot show, the variation from trial to trial.
 */
export const SMALLEST_DETECTABLE_SHARE = 0.8;
/** Correlation of successive strides above which more strides are asked for. */
export const CORRELATED_ABOVE = 0.5;
/**
 * Readings free the correlation of successive strides of its bias in short series and take the larger of both trials'
 * for both; the intervals that are shown do neither. Of comparisons without any true difference, three independent
 * components and 20, 30, 40 or 80 strides, at most 1.4 in a hundred then raise a false alarm where strides do not
 * correlate, 2.4 at a correlation of 0.3, 2.9 at 0.6 (4000 simulated comparisons each).
 */
export const READING_CORRELATION: Complete<SharedCorrelationOptions> = { correctBias: true, shared: true };
/** Share of a trial's contacts that must have a metric for it to be compared. */
export const LEAST_SHARE_OF_CONTACTS = 0.9;
/** Stated mass against mass by force: trials whose ratios differ by more have forces on different scales. */
export const MASS_RATIO_TOLERANCE = 0.01;

/**
 * 99 % intervals for readings, so that three components together raise a false alarm in about three comparisons of a
 * hundred; 95 % shown; 20 and 40 strides; speeds within 2 %: they move most loads more than a technique does. Common
 * practice and judgements, as each says.
 */
export const COMPARE_TRIALS_DEFAULTS: Complete<CompareTrialsOptions> = {
  metrics: CATALOGUE,
  shownLevel: 0.95,
  readingLevel: 0.99,
  minimumStrides: 20,
  minimumStridesCorrelated: 40,
  smallestDetectableChange: {},
  similarMargin: SIMILAR_MARGIN,
  speedTolerance: 0.02,
};

/** Every option, checked. */
export type Settings = Complete<CompareTrialsOptions>;

/** Completes and checks the options. */
export function settingsOf(options: CompareTrialsOptions): Settings {
  const settings = withDefaults<CompareTrialsOptions>(COMPARE_TRIALS_DEFAULTS, options);
  requireNumber("shownLevel", settings.shownLevel, { above: 0, below: 1 });
  requireNumber("readingLevel", settings.readingLevel, { above: 0, below: 1 });
  requireNumber("minimumStrides", settings.minimumStrides, { from: 2, whole: true });
  requireNumber("minimumStridesCorrelated", settings.minimumStridesCorrelated, { from: 2, whole: true });
  requireNumber("similarMargin", settings.similarMargin, { from: 0 });
  requireNumber("speedTolerance", settings.speedTolerance, { from: 0 });
  for (const [id, change] of Object.entries(settings.smallestDetectableChange))
    requireSourced(id, change, settings.metrics);
  return settings;
}

function requireSourced(
  id: string,
  { value, unit, source }: SourcedChange,
  metrics: readonly Metric[],
): void {
  const argument = `smallestDetectableChange.${id}`;
  const metric = metrics.find((entry) => entry.id === id);
  if (metric === undefined) {
    fail("out-of-range", `${argument}: "${id}" is none of the metrics compared`, {
      argument,
      values: { given: id, allowed: metrics.map((entry) => entry.id) },
    });
  }
  requireNumber(argument, value, { from: 0, unit });
  if (typeof source !== "string" || source.trim() === "") {
    fail("missing-value", `${argument} names no source; a change that somebody measured needs one`, {
      argument,
    });
  }
  const { normalised } = metric;
  const allowed = [
    metric.unit,
    "%",
    ...(normalised !== undefined && normalised.by !== "mass and distance" ? [normalised.unit] : []),
  ];
  if (!allowed.includes(unit)) {
    fail("unit-mismatch", `${argument} is in ${unit}; it must be in ${allowed.join(" or ")}`, {
      argument,
      values: { given: unit, allowed },
    });
  }
}
