import type { Interval } from "../../statistics/index.js";
import type { NotComputed } from "../../trial/index.js";
import type { Caution } from "../../units/index.js";
import type { SourcedChange } from "../options.js";

/** A form of the intraclass correlation: Shrout & Fleiss's name, McGraw & Wong's beside it. */
export interface ReliabilityCorrelation {
  /** Such as `ICC(2,1)`. */
  readonly form: string;
  /** Such as `ICC(A,1)`. */
  readonly alsoCalled: string;
  readonly value: number;
  readonly interval: Interval;
}

/** How well one metric repeats over trials of the same runner or runners. */
export interface MetricReliability {
  readonly id: string;
  readonly unit: string;
  readonly runners: number;
  readonly trials: number;
  readonly mean: number;
  /** Six forms, of which one without a value is left out; empty with a single runner, of whom there is none. */
  readonly correlations: readonly ReliabilityCorrelation[];
  /**
   * Standard error of measurement of one trial's mean: agreement counts what all runners of a trial share, consistency does
   * not. Of a single runner both are the standard deviation between the trials.
   */
  readonly standardError: { readonly agreement: number; readonly consistency: number };
  /** 1.96 √2 times that of agreement, with its interval; per cent of the size of the mean where that is far from zero. */
  readonly smallestDetectableChange: {
    readonly value: number;
    readonly percent: number | null;
    readonly interval: Interval | null;
  };
  /** Of the first two trials of every runner, second − first; `null` with fewer than two runners. */
  readonly limitsOfAgreement: {
    readonly bias: number;
    readonly biasInterval: Interval;
    readonly low: number;
    readonly lowInterval: Interval;
    readonly high: number;
    readonly highInterval: Interval;
  } | null;
}

/**
 * How well every metric repeats; `smallestDetectableChange` goes into `compareTrials` as it is, and holds no metric that did not
 * vary.
 */
export interface Reliability {
  readonly schema: "gait-kinetics/reliability/1";
  readonly settings: { readonly version: string; readonly level: number; readonly design: string };
  readonly metrics: readonly MetricReliability[];
  readonly notCompared: readonly NotComputed[];
  readonly smallestDetectableChange: Readonly<Record<string, SourcedChange>>;
  readonly cautions: readonly Caution[];
}
