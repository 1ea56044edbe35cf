import { mean } from "../mean.js";
import { itemsOf } from "./bootstrapReplicates.js";
import { requireStatistic, type Statistic, statisticOf } from "./statistic.js";

/** What leaving out one item after the other tells of a statistic. */
export interface Jackknife {
  /** Of all items. */
  readonly estimate: number;
  /** Without the item at each place. */
  readonly values: readonly number[];
  readonly bias: number;
  readonly standardError: number;
  /** How fast the standard error changes with the estimate, for BCa intervals; 0 where no item matters. */
  readonly acceleration: number;
}

/**
 * Leaves out one item after the other and tells the bias, standard error and acceleration of a statistic.
 *
 * Formula: with θᵢ the statistic without item i and m their mean: bias (n − 1)(m − θ), standard error
 * √[(n − 1)/n Σ (θᵢ − m)²], acceleration Σ (m − θᵢ)³ / {6 [Σ (m − θᵢ)²]^1.5}.
 * Units: those of the statistic; acceleration none.
 * Limits: at least two items, for smooth statistics: of a median it fails.
 * Source: Efron & Tibshirani 1993, An Introduction to the Bootstrap; the acceleration printed for its spatial data (p. 180) comes out.
 * @param items - Values, or records such as pairs, at least two.
 * @param statistic - Takes a list of items, gives a finite number.
 * @throws GaitKineticsError `too-short`: fewer than two items; `not-finite`, `wrong-type`: the statistic of a part.
 * @example
 * jackknife([1, 2, 4, 9], (x) => x.reduce((a, b) => a + b) / x.length).standardError.toFixed(4) // "1.7795"
 */
export function jackknife<T>(items: ArrayLike<T>, statistic: Statistic<T>): Jackknife {
  const list = itemsOf(items);
  requireStatistic(statistic);
  const n = list.length;
  const estimate = statisticOf(statistic, list);
  const values = list.map((_, left) =>
    statisticOf(
      statistic,
      list.filter((_item, place) => place !== left),
    ),
  );
  const centre = mean(values);
  let squares = 0;
  let cubes = 0;
  for (const value of values) {
    squares += (centre - value) ** 2;
    cubes += (centre - value) ** 3;
  }
  return {
    estimate,
    values,
    bias: (n - 1) * (centre - estimate),
    standardError: Math.sqrt(((n - 1) / n) * squares),
    acceleration: squares === 0 ? 0 : cubes / (6 * squares ** 1.5),
  };
}
