import { CATALOGUE, type Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import type { Complete, Fraction } from "../../units/index.js";

/** A runner's repeated trials, without any change between them. */
export interface RunnerTrials {
  /** Name or number. */
  readonly runner: string;
  /** In the order of time, the same number for every runner. */
  readonly trials: readonly Trial[];
}

/** Of which metrics, and how sure. */
export interface ReliabilityOptions {
  /** Entries of the catalogue, own ones included. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Share of repeats that intervals are meant to cover. */
  readonly level?: Fraction | undefined;
  /** Share of the smaller speed by which a runner's speeds may differ. */
  readonly speedTolerance?: Fraction | undefined;
}

/** The whole catalogue, 95 %, and speeds within 2 % as in a comparison. */
export const RELIABILITY_DEFAULTS: Complete<ReliabilityOptions> = {
  metrics: CATALOGUE,
  level: 0.95,
  speedTolerance: 0.02,
};
