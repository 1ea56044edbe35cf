import type { Spread } from "../../trial/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatNumber } from "./formatNumber.js";

/** A mean and its spread in words, with one number of decimals. */
export interface MeasuredCells {
  readonly mean: string;
  /** Mean ± standard deviation; the mean alone where the spread is not known. */
  readonly meanAndSd: string;
  /** Empty where the spread is not known. */
  readonly interval: string;
  /** Writes another value of the same metric, such as one side's mean. */
  readonly write: (value: number) => string;
}

/** Writes the numbers of a spread. */
export function measuredCells({ mean, sd, interval }: Spread): MeasuredCells {
  const decimals = decimalsFor(mean, sd);
  const write = (value: number): string => formatNumber(value, decimals);
  return {
    mean: write(mean),
    meanAndSd: sd === null ? write(mean) : `${write(mean)} ± ${write(sd)}`,
    interval: interval === null ? "" : `${write(interval.low)} to ${write(interval.high)}`,
    write,
  };
}
