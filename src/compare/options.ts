import { CATALOGUE, type Metric } from "../metrics/index.js";
import type { SharedCorrelationOptions } from "../statistics/index.js";
import type { Complete, Fraction } from "../units/index.js";

/** A smallest detectable change that somebody else measured, with its source, which is printed beside it. */
export interface SourcedChange {
  /** Zero or more. */
  readonly value: number;
  /** The metric's unit, its normalised unit where that is per body weight or per mass, or `%` of the baseline's mean. */
  readonly unit: string;
  readonly source: string;
  /**
   * Of the error that a smallest detectable change rests on, above zero; left out where it is not known, which counts as enough. With
   * fewer than {@link LEAST_DEGREES_OF_FREEDOM} it counts only where it is larger than what strides ask for.
   */
  readonly degreesOfFreedom?: number | undefined;
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
  /**
   * Margins by metric id, in place of the larger of {@link SIMILAR_MARGIN} and {@link SMALLEST_DETECTABLE_SHARE} of the stride SD, or
   * of the smallest detectable change where one was given.
   */
  readonly margins?: Readonly<Record<string, SourcedChange>> | undefined;
  /** Share of the baseline's mean within which a difference reads `similar`. */
  readonly similarMargin?: Fraction | undefined;
  /** Share of the smaller speed by which the speeds may differ. */
  readonly speedTolerance?: Fraction | undefined;
  /** Whether what a difference in speed alone would do is taken off the differences of the metrics it is known of. */
  readonly speedEffect?: "kept" | "removed" | undefined;
  /** Effects of speed by metric id, per m/s, in place of {@link PUBLISHED_SPEED_EFFECTS}; a fall has the sign −. */
  readonly speedEffects?: Readonly<Record<string, SourcedChange>> | undefined;
  /** Which interval readings are taken from; the other one of a metric that speaks is given as well. */
  readonly method?: "student" | "bootstrap" | undefined;
  /** Resamples of the bootstrap. */
  readonly resamples?: number | undefined;
  /** Seed of the bootstrap: the same seed, the same intervals. */
  readonly seed?: number | undefined;
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
/**
 * Degrees of freedom of a measured error from which its smallest detectable change stands alone. A judgement: with ten a 95 %
 * interval reaches from 0.7 to 1.75 of the error, with two from 0.5 to 6.3.
 */
export const LEAST_DEGREES_OF_FREEDOM = 10;
/**
 * Slow drift, from warming up to fatigue, moves a trial's mean by what its strides hardly show. Without a sourced smallest
 * detectable change the reading interval must therefore be clear of zero by this share of the pooled standard deviation
 * of strides. Measured with {@link THIRDS_LEVEL}: `docs/readings.md` holds the false alarms.
 */
export const SLOW_DRIFT_SHARE = 0.4;
/**
 * Level at which a difference must exceed what the thirds of one and the same trial differ by, where no smallest detectable
 * change is given: Student's t with four degrees of freedom.
 */
export const THIRDS_LEVEL = 0.99;
/** Correlation of successive strides above which more strides are asked for. */
export const CORRELATED_ABOVE = 0.5;
/**
 * Readings free the correlation of successive strides of its bias in short series and take the larger of both trials'
 * for both; the intervals that are shown do neither.
 */
export const READING_CORRELATION: Complete<SharedCorrelationOptions> = { correctBias: true, shared: true };
/**
 * Mass by force ÷ stated mass: trials whose ratios differ by more have forces on different scales, and nothing is read.
 * Masses that differ by more are another load carried, or another runner, which the answer says. A judgement.
 */
export const MASS_RATIO_TOLERANCE = 0.01;
/**
 * Standard deviations between strides that the baseline's mean must be away from zero for a difference to be given in
 * per cent of it. A judgement: nearer than that single strides reach zero or the other side of it, as those of the net
 * forward impulse do, and a share of their mean tells nothing.
 */
export const LEAST_MEAN_FOR_PERCENT = 3;

/** Speeds closer than this share of the smaller are one speed: what it alone would do is not said. A judgement. */
export const SAME_SPEED = 0.005;

/**
 * 99 % intervals for readings; 95 % shown; 20 and 40 strides; speeds within 2 %: they move most loads more than a technique does. Common
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
  speedEffect: "kept",
  speedEffects: {},
  margins: {},
  method: "student",
  resamples: 2000,
  seed: 1,
};

/** Every option, checked. */
export type Settings = Complete<CompareTrialsOptions>;
