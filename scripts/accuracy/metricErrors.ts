import { CATALOGUE } from "../../src/metrics/index.js";
import { type Errors, errorsOf } from "./errors.js";

/** Values of one contact, and what they truly were, by metric id. */
export interface HeldValues {
  readonly values: Readonly<Record<string, number | null>>;
  readonly truth: Readonly<Record<string, number | null>>;
}

/** How far a metric lies off. */
export interface MetricErrors extends Errors {
  readonly id: string;
  /** The metric that the errors are shares of. */
  readonly shareOf: string;
  readonly unit: string;
  readonly n: number;
  /** Of the truth that the errors are shares of. */
  readonly mean: number;
}

/** Errors of every metric that has both a value and a truth, in the order of the catalogue. */
export function metricErrors(pairs: readonly HeldValues[]): MetricErrors[] {
  return CATALOGUE.flatMap(({ id, unit }): MetricErrors[] => {
    const errors = pairs.flatMap(({ values, truth }) => {
      const [value, right] = [values[id] ?? null, truth[id] ?? null];
      return value === null || right === null ? [] : [value - right];
    });
    if (errors.length === 0) return [];
    // A difference of two impulses is near zero: its errors are shares of one of them.
    const shareOf = id === "netForwardImpulse" ? "brakingImpulse" : id;
    const shares = pairs.flatMap(({ truth }) => truth[shareOf] ?? []);
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    return [{ id, shareOf, unit, n: errors.length, mean, ...errorsOf(errors) }];
  });
}
