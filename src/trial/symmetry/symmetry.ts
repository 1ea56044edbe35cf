import type { Interval, SymmetryReference } from "../../statistics/index.js";
import type { Caution, Complete, Fraction } from "../../units/index.js";
import type { Spread } from "../trial.js";

/** A number between the two feet with its interval. */
export interface BetweenFeet {
  readonly value: number;
  readonly interval: Interval;
}

/** How alike the two feet are in one metric. */
export interface Symmetry {
  readonly id: string;
  /** Of `left`, `right` and `difference`. */
  readonly unit: string;
  /** Strides of which both feet have the metric; everything here is of them. */
  readonly n: number;
  readonly left: Spread;
  readonly right: Spread;
  /** Right − left, in the metric's unit. */
  readonly difference: BetweenFeet;
  /** What the index is in per cent of. */
  readonly of: SymmetryReference;
  /** Per cent, positive where the right is the larger in size. */
  readonly index: number;
  readonly interval: Interval;
  /** Right ÷ left. */
  readonly ratio: BetweenFeet;
  /** Per cent of a right angle; near symmetry the index in per cent of the mean is π times this. */
  readonly angle: BetweenFeet;
  /** Those of the trial that make left and right doubtful. */
  readonly cautions: readonly Caution[];
}

/** How the two feet are set against each other. */
export interface SymmetryOptions {
  /** What the index is in per cent of. */
  readonly of?: SymmetryReference | undefined;
  /** Of the intervals. */
  readonly level?: Fraction | undefined;
}

/** Per cent of the mean of both feet; 95 % intervals. */
export const SYMMETRY_DEFAULTS: Complete<SymmetryOptions> = { of: "mean", level: 0.95 };
