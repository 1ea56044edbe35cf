import {
  type Complete,
  type Fraction,
  fail,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import type { Interval } from "../meanInterval.js";
import { requireValues, type Values } from "../requireValues.js";
import { studentTQuantile } from "../studentTQuantile.js";

/** How sure, and whether the interval may be narrower than the known variances alone make it. */
export interface RandomEffectsMeanOptions {
  /** Share of repeats the interval is meant to cover. */
  readonly level?: Fraction | undefined;
  /**
   * `never`: values that happen to lie closer together than their own variances allow do not narrow the interval.
   * `by chance`: they do, as in the plain form of Hartung, Knapp, Sidik and Jonkman.
   */
  readonly narrower?: "never" | "by chance" | undefined;
}

/** 95 %; the careful form. */
export const RANDOM_EFFECTS_MEAN_DEFAULTS: Complete<RandomEffectsMeanOptions> = {
  level: 0.95,
  narrower: "never",
};

/** The mean of a population of which each value is a noisy sight of one member. */
export interface RandomEffectsMean {
  readonly mean: number;
  readonly standardError: number;
  /** Number of values less one. */
  readonly degreesOfFreedom: number;
  /** Variance of the true values between members, 0 or more: what their own variances do not explain. */
  readonly betweenVariance: number;
  readonly interval: Interval;
  /** What each value counts in the mean, 1 together. */
  readonly shares: readonly number[];
}

/**
 * Gives the mean of values that each have a variance of their own, such as the changes of many runners, each known from
 * that runner's strides, with the variance of the true values between them.
 *
 * Formula: wᵢ = 1/(vᵢ + τ²), μ = Σ wᵢ yᵢ/Σ wᵢ; τ² by restricted maximum likelihood, the fixed point of
 * τ² = Σ wᵢ² [(yᵢ − μ)² − vᵢ]/Σ wᵢ² + 1/Σ wᵢ, 0 or more; interval μ ± t √(q/Σ wᵢ), q = Σ wᵢ (yᵢ − μ)²/(k − 1), at least 1
 * unless `narrower` allows less, t Student's quantile with k − 1 degrees of freedom. With equal vᵢ it is Student's interval of the
 * values, made no narrower than the vᵢ alone make it.
 * Units: those of the values; variances in their square.
 * Limits: the vᵢ are taken as known and the true values as normal. With fewer than some five values the interval is wide, as it
 * must be: nothing else tells how much members differ.
 * Source: restricted likelihood of Patterson & Thompson 1971, interval of Hartung 1999 and Sidik & Jonkman 2002, Knapp & Hartung
 * 2003, Stat. Med. 22:2693, all from memory; held to the published analysis of thirteen vaccine trials (Viechtbauer 2010, J. Stat.
 * Softw. 36(3), from memory) and to restricted likelihoods maximised by SciPy.
 * @param values - One a member, at least two.
 * @param variances - Of each value, squared standard errors, 0 or more, in the same order.
 * @param options - {@link RANDOM_EFFECTS_MEAN_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`, `unequal-lengths`, `not-finite`, `wrong-type`: no two lists of as many finite numbers;
 *   `out-of-range`: a variance below 0, or an option outside its range; `unknown-option`.
 * @example
 * randomEffectsMean([-3, -5, -1, -4], [1, 1, 1, 1]).mean.toFixed(2) // "-3.25"
 */
export function randomEffectsMean(
  values: Values,
  variances: Values,
  options: RandomEffectsMeanOptions = {},
): RandomEffectsMean {
  const { level, narrower } = withDefaults<RandomEffectsMeanOptions>(RANDOM_EFFECTS_MEAN_DEFAULTS, options);
  requireBoth(values, variances);
  requireNumber("level", level, { above: 0, below: 1 });
  requireOneOf("narrower", narrower, ["never", "by chance"]);
  const y = Array.from(values);
  const own = Array.from(variances);
  const df = y.length - 1;
  const plain = y.reduce((sum, value) => sum + value / y.length, 0);
  const spread = y.reduce((sum, value) => sum + (value - plain) ** 2 / df, 0);
  const scale = spread + Math.max(...own);
  if (scale === 0) {
    const interval = { low: plain, high: plain, level };
    const shares = y.map(() => 1 / y.length);
    return { mean: plain, standardError: 0, degreesOfFreedom: df, betweenVariance: 0, interval, shares };
  }
  // A value without any variance of its own would take all the weight where τ² is 0.
  const v = own.map((variance) => Math.max(variance, 1e-12 * scale));
  const betweenVariance = restricted(y, v, spread, scale);
  const { weights, sum, mean } = weighted(y, v, betweenVariance);
  const q = y.reduce((total, value, i) => total + (weights[i] as number) * (value - mean) ** 2, 0) / df;
  const standardError = Math.sqrt((narrower === "never" ? Math.max(1, q) : q) / sum);
  const reach = studentTQuantile((1 + level) / 2, df) * standardError;
  return {
    mean,
    standardError,
    degreesOfFreedom: df,
    betweenVariance,
    interval: { low: mean - reach, high: mean + reach, level },
    shares: weights.map((weight) => weight / sum),
  };
}

function requireBoth(values: Values, variances: Values): void {
  requireValues("values", values, 2);
  requireValues("variances", variances, 2);
  if (values.length !== variances.length) {
    fail(
      "unequal-lengths",
      `values holds ${values.length} numbers and variances ${variances.length}; each value has one variance`,
      { argument: "variances", values: { values: values.length, variances: variances.length } },
    );
  }
  Array.from(variances).forEach((variance, i) => {
    if (variance >= 0) return;
    fail("out-of-range", `variances holds ${variance} at place ${i}; a variance is 0 or more`, {
      argument: "variances",
      where: `place ${i}`,
    });
  });
}

interface Weighted {
  readonly weights: readonly number[];
  readonly sum: number;
  readonly mean: number;
}

function weighted(y: readonly number[], v: readonly number[], between: number): Weighted {
  const weights = v.map((variance) => 1 / (variance + between));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return {
    weights,
    sum,
    mean: y.reduce((total, value, i) => total + (weights[i] as number) * value, 0) / sum,
  };
}

/** Most rounds of the fixed point: 10⁴ random cases took at most some hundreds. */
const MOST_ROUNDS = 5000;

/** τ² of the restricted likelihood, from the spread of the values downwards. */
function restricted(y: readonly number[], v: readonly number[], spread: number, scale: number): number {
  let between = spread;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { weights, sum, mean } = weighted(y, v, between);
    let upper = 0;
    let lower = 0;
    for (let i = 0; i < y.length; i++) {
      const square = (weights[i] as number) ** 2;
      upper += square * (((y[i] as number) - mean) ** 2 - (v[i] as number));
      lower += square;
    }
    const next = Math.max(0, upper / lower + 1 / sum);
    const step = Math.abs(next - between);
    between = next;
    if (step <= 1e-14 * scale) break;
  }
  return between;
}
