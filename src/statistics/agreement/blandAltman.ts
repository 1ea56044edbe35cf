import {
  type Complete,
  type Fraction,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { requireSameLength } from "../requireSameLength.js";
import { LARGEST, type Values } from "../requireValues.js";
import { standardDeviation } from "../standardDeviation.js";
import { studentTQuantile } from "../studentTQuantile.js";

/** How wide, and how sure. */
export interface BlandAltmanOptions {
  /** Standard deviations on either side of the bias; the paper of 1986 rounds to 2. */
  readonly multiplier?: number | undefined;
  /** Share of repeats the intervals of bias and limits are meant to cover. */
  readonly level?: Fraction | undefined;
  /** Standard error of a limit: the full formula, or the paper's short √(3/n) SD. */
  readonly limitError?: "full" | "short" | undefined;
}

/** 1.96 standard deviations hold 95 of 100 differences that are normal; the full formula costs nothing more. */
export const BLAND_ALTMAN_DEFAULTS: Complete<BlandAltmanOptions> = {
  multiplier: 1.96,
  level: 0.95,
  limitError: "full",
};

/** Bias and limits of agreement, each with its interval. */
export interface BlandAltman {
  readonly n: number;
  /** Mean of first − second. */
  readonly bias: number;
  /** Standard deviation of the differences. */
  readonly sd: number;
  readonly biasInterval: Interval;
  /** Limits of agreement. */
  readonly low: number;
  readonly lowInterval: Interval;
  readonly high: number;
  readonly highInterval: Interval;
}

/**
 * Gives the limits between which the differences of two measurements of one thing lie, after Bland and Altman.
 *
 * Formula: d ± 1.96 s, d and s mean and standard deviation of first − second. Intervals by Student's t with n − 1 degrees of
 * freedom: d ± t s/√n; each limit ± t s √[1/n + 1.96²/(2 (n − 1))], or ± t s √(3/n) for `"short"`.
 * Units: those of the values.
 * Limits: at least two pairs, of different subjects; differences that do not grow with the size measured and are
 * roughly normal. The intervals of the limits are wide with few pairs: that is why they are given.
 * Source: Bland & Altman 1986, Lancet 327:307.
 * @param first - One measurement each.
 * @param second - The other, in the same order; subtracted.
 * @param options - {@link BLAND_ALTMAN_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `not-finite`, `wrong-type`, `unequal-lengths`: no two lists of as many finite numbers;
 *   `out-of-range`: an option outside its range; `unknown-option`.
 * @example
 * blandAltman([10, 12, 15, 11], [9, 13, 13, 12]).bias // 0.25
 */
export function blandAltman(first: Values, second: Values, options: BlandAltmanOptions = {}): BlandAltman {
  const { multiplier, level, limitError } = withDefaults<BlandAltmanOptions>(BLAND_ALTMAN_DEFAULTS, options);
  requireNumber("multiplier", multiplier, { above: 0, to: LARGEST });
  requireNumber("level", level, { above: 0, below: 1 });
  requireOneOf("limitError", limitError, ["full", "short"]);
  requireSameLength(first, second, 2);
  const differences = Array.from(first, (value, i) => value - (second[i] as number));
  const n = differences.length;
  const bias = mean(differences);
  const sd = standardDeviation(differences);
  const t = studentTQuantile((1 + level) / 2, n - 1);
  const share = limitError === "short" ? 3 / n : 1 / n + multiplier ** 2 / (2 * (n - 1));
  const about = (centre: number, reach: number): Interval => ({
    low: centre - reach,
    high: centre + reach,
    level,
  });
  const reach = t * sd * Math.sqrt(share);
  const low = bias - multiplier * sd;
  const high = bias + multiplier * sd;
  return {
    n,
    bias,
    sd,
    biasInterval: about(bias, (t * sd) / Math.sqrt(n)),
    low,
    lowInterval: about(low, reach),
    high,
    highInterval: about(high, reach),
  };
}
