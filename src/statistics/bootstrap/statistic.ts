import { fail } from "../../units/index.js";
import { LARGEST } from "../requireValues.js";
import { shown } from "../shown.js";

/** A number computed from a list of items. */
export type Statistic<T> = (sample: readonly T[]) => number;

/** Checks that a statistic can be called, before anything is drawn. */
export function requireStatistic(statistic: unknown): void {
  if (typeof statistic === "function") return;
  fail("wrong-type", `statistic is ${shown(statistic)}; a function that gives a number is needed`, {
    argument: "statistic",
  });
}

/** The statistic of a sample, which must be a finite number. */
export function statisticOf<T>(statistic: Statistic<T>, sample: readonly T[]): number {
  return finite(statistic(sample));
}

/** What a caller's function gave, which must be a finite number. */
export function finite(value: unknown): number {
  if (typeof value !== "number") {
    fail("wrong-type", `the statistic gave ${shown(value)}; it must give a number`, {
      argument: "statistic",
    });
  }
  if (!(Math.abs(value) <= LARGEST)) {
    fail(
      "not-finite",
      `the statistic gave ${value} for a resample; it must be finite for each, and within ±${LARGEST}`,
      {
        argument: "statistic",
      },
    );
  }
  return value;
}
