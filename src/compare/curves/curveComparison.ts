import type { Caution } from "../../units/index.js";
import type { ComponentName } from "../comparison.js";

/** A stretch of stance in which two sets of curves differ beyond the threshold of the whole curve. */
export interface CurveCluster {
  /** Where it begins and ends, per cent of stance; interpolated between points. */
  readonly from: number;
  readonly to: number;
  /** The same from initial contact, s, of the mean stance of both sets; `null` where contact times are not known. */
  readonly fromTime: number | null;
  readonly toTime: number | null;
  /** Largest size of the statistic in it, with its sign. */
  readonly peak: number;
  /** Where that is, per cent of stance. */
  readonly peakAt: number;
  /** Mean difference over it, changed − baseline, in the unit of the curves. */
  readonly difference: number;
  /**
   * Probability of a cluster at least this wide beyond the threshold, anywhere, without a true difference: random
   * field theory.
   */
  readonly p: number;
}

/** Two sets of curves of one component over normalised stance, set against each other point by point. */
export interface CurveComparison {
  readonly schema: "gait-kinetics/curves/1";
  readonly component: ComponentName;
  readonly side: "left" | "right" | "both";
  readonly unit: "N" | "BW";
  /** `paired`: curve k of one set belongs to curve k of the other. */
  readonly test: "two-sample" | "paired";
  /** What a curve is of. */
  readonly of: "contacts" | "runners";
  /** Curves that were tested: contacts, strides of both sides together, or runners. */
  readonly curves: { readonly baseline: number; readonly changed: number };
  /** Of as many curves as independent ones would be worth. */
  readonly degreesOfFreedom: number;
  /** Smoothness of the residuals: full width at half maximum, in points of the curve. */
  readonly fullWidthAtHalfMaximum: number;
  readonly level: number;
  readonly percent: readonly number[];
  readonly baseline: readonly number[];
  readonly changed: readonly number[];
  /** changed − baseline. */
  readonly difference: readonly number[];
  /** Student's t at each point; 0 where the curves hardly spread and none is formed, which a caution says. */
  readonly statistic: readonly number[];
  /** Two-sided threshold for the whole curve by random field theory, or by Bonferroni where that is smaller. */
  readonly threshold: number;
  readonly thresholdRule: "random field" | "Bonferroni";
  /** The same by permutation of whole curves (in blocks, where successive contacts resemble each other). */
  readonly permutationThreshold: number | null;
  /** By the larger of both thresholds. */
  readonly clusters: readonly CurveCluster[];
  readonly cautions: readonly Caution[];
}
