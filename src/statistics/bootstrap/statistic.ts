import { fail } from "../../units/index.js";

/** A number computed from a list of items. */
export type Statistic<T> = (sample: readonly T[]) => number;

/** The statistic of a sample, which must be a finite number. */
export function statisticOf<T>(statistic: Statistic<T>, sample: readonly T[]): number {
  return finite(statistic(sample));
}

/** What a caller's function gave, which must be a finite number. */
export function finite(value: unknown): number {
  if (typeof value !== "number") {
    fail("wrong-type", `the statistic gave ${String(value)}; it must give a number`, {
      argument: "statistic",
    });
  }
  if (!Number.isFinite(value)) {
    fail("not-finite", `the statistic gave ${value} for a resample; it must be finite for each`, {
      argument: "statistic",
    });
  }
  return value;
}
