import { CATALOGUE, type Metric } from "../../metrics/index.js";
import type { Trial } from "../../trial/index.js";
import type { Complete, Fraction } from "../../units/index.js";
import type { SourcedChange } from "../options.js";

/** One session of a runner: what was recorded in it in one condition. */
export interface Session {
  /** Such as a date, each once; sessions stand in the order given, whatever their names. */
  readonly name: string;
  readonly trials: Trial | readonly Trial[];
}

/** How sessions are held against their baseline. */
export interface CompareSessionsOptions {
  /** `moving`: the last sessions before each; `first`: the first ones for good. */
  readonly baseline?: "moving" | "first" | undefined;
  /** How many make the baseline. */
  readonly baselineSessions?: number | undefined;
  /** Entries of the catalogue, own ones included; those marked primary get sentences. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Smallest detectable changes by metric id, in place of that of the baseline's own sessions. */
  readonly smallestDetectableChange?: Readonly<Record<string, SourcedChange>> | undefined;
  /** Share of further sessions that an interval is meant to hold where nothing changed. */
  readonly level?: Fraction | undefined;
  /** Share of the smaller speed by which speeds may differ before it is said. */
  readonly speedTolerance?: Fraction | undefined;
}

/** Baseline sessions from which their own variation can be told: with two, Student's t at 95 % is 12.7. */
export const LEAST_SESSIONS_FOR_SPREAD = 3;

/**
 * The five sessions before each, 95 %: judgements. With five, an interval reaches 3.0 standard deviations between sessions; with
 * three, 5.0; with ten, 2.4.
 */
export const COMPARE_SESSIONS_DEFAULTS: Complete<CompareSessionsOptions> = {
  baseline: "moving",
  baselineSessions: 5,
  metrics: CATALOGUE,
  smallestDetectableChange: {},
  level: 0.95,
  speedTolerance: 0.02,
};

/** Every option, checked. */
export type SessionsSettings = Complete<CompareSessionsOptions>;
