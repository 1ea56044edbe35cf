import type { Complete, Fraction } from "../../units/index.js";

/** How curves are set against each other. */
export interface CurveTestOptions {
  /** Share of pairs of sets without a true difference in which a cluster may be found, above 0, at most 0.3. */
  readonly level?: Fraction | undefined;
  /** Most permutations; all there are where these are fewer. */
  readonly permutations?: number | undefined;
  /** Whole number from 0 to 4294967295. */
  readonly seed?: number | undefined;
}

/** A false alarm in at most one of twenty; a thousand permutations. Common practice. */
export const CURVE_TEST_DEFAULTS: Complete<CurveTestOptions> = { level: 0.05, permutations: 1000, seed: 1 };

/**
 * Fewest curves in each set of successive contacts or strides: fewer tell nothing of how alike successive ones are.
 */
export const LEAST_SUCCESSIVE_CURVES = 5;

/** Fewest runners in each set. */
export const LEAST_MEAN_CURVES = 3;
