import { CATALOGUE, type Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import type { Complete, Fraction } from "../../units/index.js";
import { SIMILAR_MARGIN, type SourcedChange } from "../options.js";

/** A runner in both conditions; of several trials in the order of time. */
export interface PairedRunner {
  /** Name or number, each once. */
  readonly runner: string;
  readonly baseline: Trial | readonly Trial[];
  readonly changed: Trial | readonly Trial[];
}

/** A runner of one group. */
export interface GroupRunner {
  /** Name or number, each once in both groups together. */
  readonly runner: string;
  readonly trials: Trial | readonly Trial[];
}

/** Two groups of different runners. */
export interface RunnerGroups {
  readonly baseline: readonly GroupRunner[];
  readonly changed: readonly GroupRunner[];
}

/** How runners are compared. */
export interface CompareRunnersOptions {
  /** Entries to compare, own ones included; those marked primary speak for their component. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Level of the intervals that are shown. */
  readonly shownLevel?: Fraction | undefined;
  /** Level of the intervals that readings are taken from. */
  readonly readingLevel?: Fraction | undefined;
  /** Fewest runners, of independent groups in each, for a reading; at least two. */
  readonly minimumRunners?: number | undefined;
  /** Share of the baseline's mean within which a difference reads `similar`. */
  readonly similarMargin?: Fraction | undefined;
  /** Margins by metric id, in place of `similarMargin`; in the unit the metric is compared in, or in % of the baseline's mean. */
  readonly margins?: Readonly<Record<string, SourcedChange>> | undefined;
  /** Share of the smaller speed by which speeds may differ: a runner's own, and the mean of all. */
  readonly speedTolerance?: Fraction | undefined;
}

/**
 * Runners that a reading needs. A judgement: with five, Student's t at 99 % is 4.6 standard errors, which only large changes
 * exceed, and each runner is a fifth of the answer.
 */
export const MINIMUM_RUNNERS = 6;

/** As in a comparison of two trials, and {@link MINIMUM_RUNNERS}. */
export const COMPARE_RUNNERS_DEFAULTS: Complete<CompareRunnersOptions> = {
  metrics: CATALOGUE,
  shownLevel: 0.95,
  readingLevel: 0.99,
  minimumRunners: MINIMUM_RUNNERS,
  similarMargin: SIMILAR_MARGIN,
  margins: {},
  speedTolerance: 0.02,
};

/** Every option, checked. */
export type RunnersSettings = Complete<CompareRunnersOptions>;
