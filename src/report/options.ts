import type { CurveComparison } from "../compare/index.js";
import { CATALOGUE, type Metric } from "../metrics/index.js";
import type { Complete } from "../units/index.js";

/** How a trial is reported. */
export interface TrialReportOptions {
  /** Entries that name and order the metrics, own ones included. */
  readonly metrics?: readonly Metric[] | undefined;
  /** What to call the recording, such as its file name. */
  readonly title?: string | null | undefined;
}

/** The whole catalogue, and no name. */
export const TRIAL_REPORT_DEFAULTS: Complete<TrialReportOptions> = { metrics: CATALOGUE, title: null };

/** How a comparison is reported. */
export interface ComparisonReportOptions {
  /** Entries that name and order the metrics, own ones included. */
  readonly metrics?: readonly Metric[] | undefined;
  /** What to call the recordings, such as their file names. */
  readonly names?: { readonly baseline: string; readonly changed: string } | null | undefined;
  /** Whole curves of both set against each other, as `compareCurves` gives them: any components and sides. */
  readonly curves?: readonly CurveComparison[] | undefined;
}

/** The whole catalogue, no names and no comparison of whole curves. */
export const COMPARISON_REPORT_DEFAULTS: Complete<ComparisonReportOptions> = {
  metrics: CATALOGUE,
  names: null,
  curves: [],
};

/** How results over runners, sessions and repeated trials are reported. */
export interface SeriesReportOptions {
  /** Entries that name and order the metrics, own ones included. */
  readonly metrics?: readonly Metric[] | undefined;
}

/** The whole catalogue. */
export const SERIES_REPORT_DEFAULTS: Complete<SeriesReportOptions> = { metrics: CATALOGUE };
