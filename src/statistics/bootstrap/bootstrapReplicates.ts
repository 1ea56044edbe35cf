import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { requireList } from "../requireList.js";
import { resampleIndices } from "./resampleIndices.js";
import { requireStatistic, type Statistic, statisticOf } from "./statistic.js";

/** Where the resamples come from. */
export interface BootstrapOptions {
  /** How many, up to 1 000 000; not looked at where `indices` are given. */
  readonly resamples?: number | undefined;
  /** Fixes the resamples; not looked at where `indices` are given. */
  readonly seed?: number | undefined;
  /** Resamples drawn elsewhere: rows of places from 0. */
  readonly indices?: readonly ArrayLike<number>[] | null | undefined;
}

/**
 * 4000 resamples: the ends of a 95 % interval then move by some hundredths of its width with the seed. Source: this library's
 * choice.
 */
export const BOOTSTRAP_DEFAULTS: Complete<BootstrapOptions> = { resamples: 4000, seed: 1, indices: null };

/**
 * Gives the values that a statistic takes over resamples drawn with replacement.
 *
 * Formula: statistic of the items at each row of places; places as {@link resampleIndices}, or as given.
 * Units: those of the statistic.
 * Limits: items must be independent of each other: runners, or trials. Strides in their order are not; take
 * {@link blockBootstrap}.
 * Source: Efron & Tibshirani 1993, An Introduction to the Bootstrap; given places of a NumPy run give its replicates.
 * @param items - Values, or records such as pairs, at least two.
 * @param statistic - Takes a list of items, gives a finite number.
 * @param options - {@link BOOTSTRAP_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two items or a row without places; `out-of-range`: a place outside the list,
 *   an option outside its range; `not-finite`: the statistic of a resample; `wrong-type`, `unknown-option`.
 * @example
 * bootstrapReplicates([1, 2, 4], (x) => x[0], { indices: [[2, 0, 0], [1, 1, 1]] }) // [4, 2]
 */
export function bootstrapReplicates<T>(
  items: ArrayLike<T>,
  statistic: Statistic<T>,
  options: BootstrapOptions = {},
): number[] {
  const { resamples, seed, indices } = withDefaults<BootstrapOptions>(BOOTSTRAP_DEFAULTS, options);
  const list = itemsOf(items);
  requireStatistic(statistic);
  if (indices === null) {
    return resampleIndices(list.length, resamples, seed).map((row) =>
      statisticOf(statistic, drawn(list, row)),
    );
  }
  requireList("indices", indices, "rows of places");
  if (indices.length === 0) fail("too-short", "indices hold no row", { argument: "indices" });
  return Array.from(indices, (row, i) => {
    requirePlaces(row, i, list.length);
    return statisticOf(statistic, drawn(list, row));
  });
}

/** The items as a list. */
export function itemsOf<T>(items: ArrayLike<T>): readonly T[] {
  requireList("items", items, "items");
  if (items.length < 2) {
    fail("too-short", `items hold ${items.length}; at least 2 are needed`, {
      argument: "items",
      values: { given: items.length, least: 2 },
    });
  }
  return Array.from(items);
}

function drawn<T>(list: readonly T[], row: ArrayLike<number>): T[] {
  return Array.from(row, (place) => list[place] as T);
}

function requirePlaces(row: ArrayLike<number>, i: number, n: number): void {
  requireList(`indices[${i}]`, row, "places");
  if (row.length === 0) fail("too-short", `indices[${i}] holds no place`, { argument: `indices[${i}]` });
  for (let k = 0; k < row.length; k++) {
    requireNumber(`indices[${i}][${k}]`, row[k], { from: 0, below: n, whole: true });
  }
}
