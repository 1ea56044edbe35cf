import type { Comparison, Reliability, RunnersComparison, SessionSeries } from "../compare/index.js";
import type { Trial } from "../trial/index.js";

/** Whatever is written as JSON: a trial, a comparison of two conditions, how well trials repeat, runners, sessions. */
export type Result = Trial | Comparison | Reliability | RunnersComparison | SessionSeries;
