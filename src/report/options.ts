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
}

/** The whole catalogue, and no names. */
export const COMPARISON_REPORT_DEFAULTS: Complete<ComparisonReportOptions> = {
  metrics: CATALOGUE,
  names: null,
};
