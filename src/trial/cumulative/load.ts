import type { Fraction } from "../../units/index.js";
import type { NotComputed, Spread } from "../trial.js";

/** A sum per kilometre or per minute: mean over strides with its spread and interval. */
export interface LoadSum extends Spread {
  readonly unit: string;
  readonly normalised?: Spread & { readonly unit: string };
  /** What the left foot has of the sum; absent where the feet are not told apart. */
  readonly left?: Spread;
  /** What the right foot has of the sum. */
  readonly right?: Spread;
}

/** A load summed over the steps of a kilometre and of a minute. */
export interface CumulativeLoad {
  readonly id: string;
  /** Over the strides that the sums are of; `null` without a speed. */
  readonly stepsPerKilometre: number | null;
  readonly stepsPerMinute: number;
  /** `null` where the length of a step is not known; then the reason is in `noKilometre`. */
  readonly perKilometre: LoadSum | null;
  readonly noKilometre: NotComputed | null;
  readonly perMinute: LoadSum;
}

/** How a load is summed. */
export interface CumulativeLoadOptions {
  /** Of the intervals. */
  readonly level?: Fraction | undefined;
}
