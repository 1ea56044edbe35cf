import type { Interval } from "../../statistics/index.js";
import type { NotComputed, Spread } from "../../trial/index.js";
import type { Caution } from "../../units/index.js";
import type { SmallestDetectableChange } from "../comparison.js";

/** One session held against the baseline that stood when it was recorded. */
export interface SessionValue {
  readonly name: string;
  readonly session: Spread;
  /** `null` while the baseline is being gathered. */
  readonly against: {
    /** Mean of the sessions that make the baseline, and how many they are. */
    readonly baseline: number;
    readonly sessions: number;
    readonly difference: number;
    readonly interval: Interval;
    readonly smallestDetectableChange: SmallestDetectableChange;
    /** Beyond the smallest detectable change, its interval clear of zero; `within` otherwise. */
    readonly place: "above" | "below" | "within";
  } | null;
}

/** One metric over the sessions of one runner. */
export interface SessionMetric {
  readonly id: string;
  readonly unit: string;
  readonly moreLoad: "higher" | "lower" | "none";
  readonly sessions: readonly SessionValue[];
}

/** A series of sessions of one runner against their own baseline. */
export interface SessionSeries {
  readonly schema: "gait-kinetics/sessions/1";
  readonly settings: {
    readonly version: string;
    readonly level: number;
    /** `first`: the first sessions for good; `moving`: the last ones before each session. */
    readonly baseline: "first" | "moving";
    readonly baselineSessions: number;
    readonly speedTolerance: number;
    readonly interval: string;
    /** Filter of all trials. */
    readonly filter: { readonly cutoff: number; readonly order: number } | null;
  };
  /** Those that speak for a component or for work first. */
  readonly metrics: readonly SessionMetric[];
  readonly notCompared: readonly NotComputed[];
  /** For a person: which sessions lie outside, of the metrics that speak for a component or for work; those with any first. */
  readonly sentences: readonly string[];
  readonly cautions: readonly Caution[];
}
