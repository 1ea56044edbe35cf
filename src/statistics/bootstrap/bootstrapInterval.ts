import {
  type Complete,
  type Fraction,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import { normalProbability } from "../distributions/normalProbability.js";
import { normalQuantile } from "../distributions/normalQuantile.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { quantile } from "../quantile.js";
import { standardDeviation } from "../standardDeviation.js";
import { type BootstrapOptions, bootstrapReplicates, itemsOf } from "./bootstrapReplicates.js";
import { jackknife } from "./jackknife.js";
import { requireStatistic, type Statistic, statisticOf } from "./statistic.js";

/** How the interval is read from the replicates. */
export type BootstrapKind = "percentile" | "normal" | "bca";

/** As {@link BootstrapOptions}, with the kind of interval and its level. */
export interface BootstrapIntervalOptions extends BootstrapOptions {
  readonly kind?: BootstrapKind | undefined;
  /** Share of repeats the interval is meant to cover. */
  readonly level?: Fraction | undefined;
}

/** Bias-corrected and accelerated: it follows the skewness of the statistic. Otherwise as `BOOTSTRAP_DEFAULTS`. */
export const BOOTSTRAP_INTERVAL_DEFAULTS: Complete<BootstrapIntervalOptions> = {
  resamples: 4000,
  seed: 1,
  indices: null,
  kind: "bca",
  level: 0.95,
};

/** A statistic with its bootstrap interval. */
export interface BootstrapInterval {
  /** Of the items themselves. */
  readonly estimate: number;
  readonly kind: BootstrapKind;
  readonly resamples: number;
  /** `null` where the resamples were given. */
  readonly seed: number | null;
  /** Standard deviation of the replicates. */
  readonly standardError: number;
  /** Mean of the replicates less the estimate. */
  readonly bias: number;
  /** `null` of `bca` where all replicates lie on one side of the estimate. */
  readonly interval: Interval | null;
  /** Of `bca`: the normal quantile of the share of replicates below the estimate, and the jackknife's acceleration. */
  readonly correction?: { readonly bias: number; readonly acceleration: number };
}

/**
 * Gives the interval of any statistic of independent items by the bootstrap.
 *
 * Formula: `percentile`: quantiles (1 ∓ level)/2 of the replicates; `normal`: estimate − bias ± z × their standard
 * deviation; `bca`: quantiles Φ(z₀ + (z₀ + z)/[1 − a (z₀ + z)]) of them, z₀ the normal quantile of the share of replicates below
 * the estimate (ties by half), a the {@link jackknife}'s acceleration.
 * Units: those of the statistic.
 * Limits: items independent of each other: strides in their order are not; take {@link blockBootstrap}. With few items
 * every kind is too narrow.
 * Source: Efron 1987, J. Am. Stat. Assoc. 82:171; Efron & Tibshirani 1993, An Introduction to the Bootstrap, whose examples it
 * gives; given resamples of a NumPy run give its interval to 12 digits.
 * @param items - Values, or records such as pairs, at least two.
 * @param statistic - Takes a list of items, gives a finite number.
 * @param options - {@link BOOTSTRAP_INTERVAL_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two items or resamples; `out-of-range`: a place outside the list, an option
 *   outside its range; `not-finite`: the statistic of a resample; `wrong-type`, `unknown-option`.
 * @example
 * bootstrapInterval([3, 5, 4, 8, 6, 5], (x) => Math.max(...x), { kind: "percentile" }).interval?.high // 8
 */
export function bootstrapInterval<T>(
  items: ArrayLike<T>,
  statistic: Statistic<T>,
  options: BootstrapIntervalOptions = {},
): BootstrapInterval {
  const { kind, level, ...from } = withDefaults<BootstrapIntervalOptions>(
    BOOTSTRAP_INTERVAL_DEFAULTS,
    options,
  );
  requireOneOf("kind", kind, ["percentile", "normal", "bca"]);
  requireNumber("level", level, { above: 0, below: 1 });
  requireStatistic(statistic);
  const estimate = statisticOf(statistic, itemsOf(items));
  const replicates = bootstrapReplicates(items, statistic, from);
  const standardError = standardDeviation(replicates);
  const bias = mean(replicates) - estimate;
  const common = {
    estimate,
    kind,
    resamples: replicates.length,
    seed: from.indices === null ? from.seed : null,
    standardError,
    bias,
  };
  const between = (low: number, high: number): Interval => ({
    low: quantile(replicates, low),
    high: quantile(replicates, high),
    level,
  });
  if (kind === "percentile") return { ...common, interval: between((1 - level) / 2, (1 + level) / 2) };
  const z = normalQuantile((1 + level) / 2);
  if (kind === "normal") {
    const centre = estimate - bias;
    return {
      ...common,
      interval: { low: centre - z * standardError, high: centre + z * standardError, level },
    };
  }
  const { acceleration } = jackknife(items, statistic);
  const share = shareBelow(replicates, estimate);
  if (share === 0 || share === 1) return { ...common, interval: null };
  const z0 = normalQuantile(share);
  const corrected = (at: number) => normalProbability(z0 + (z0 + at) / (1 - acceleration * (z0 + at)));
  return {
    ...common,
    interval: between(corrected(-z), corrected(z)),
    correction: { bias: z0, acceleration },
  };
}

function shareBelow(replicates: readonly number[], estimate: number): number {
  let count = 0;
  for (const value of replicates) count += value < estimate ? 1 : value === estimate ? 0.5 : 0;
  return count / replicates.length;
}
