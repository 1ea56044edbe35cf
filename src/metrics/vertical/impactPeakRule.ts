import type { Complete, Fraction, Seconds } from "../../units/index.js";

/** When a rise counts as an impact peak. */
export interface ImpactPeakOptions {
  /** Earliest time after initial contact; what comes sooner is the footfall's own vibration or noise. */
  readonly after?: Seconds | undefined;
  /** Latest time, as a fraction of contact time. */
  readonly before?: Fraction | undefined;
  /** Drop that must follow before the force next exceeds the peak, in body weights. */
  readonly drop?: number | undefined;
}

/**
 * Later than 5 ms after contact, before 35 % of it, and followed by a drop of 0.02 body weights. Source: that the impact
 * peak is the first local maximum is common practice; the three numbers are this library's own rule.
 */
export const IMPACT_PEAK_DEFAULTS: Complete<ImpactPeakOptions> = { after: 0.005, before: 0.35, drop: 0.02 };
