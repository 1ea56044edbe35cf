import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { type Complete, fail, withDefaults } from "../../units/index.js";
import type { NotComputed, Trial } from "../trial.js";
import { SYMMETRY_DEFAULTS, type Symmetry, type SymmetryOptions } from "./symmetry.js";
import { symmetryOf } from "./symmetryOf.js";

/** How the two feet are set against each other, and in which metrics. */
export interface SymmetriesOptions extends SymmetryOptions {
  /** Ids of the catalogue, or entries of one's own. */
  readonly metrics?: readonly (string | Metric)[] | undefined;
}

/** The whole catalogue; else as {@link SYMMETRY_DEFAULTS}. */
export const SYMMETRIES_DEFAULTS: Complete<SymmetriesOptions> = {
  metrics: CATALOGUE,
  of: "mean",
  level: 0.95,
};

/** How alike the two feet are, and of which metrics that cannot be said. */
export interface Symmetries {
  readonly metrics: readonly Symmetry[];
  readonly notComputed: readonly NotComputed[];
}

/**
 * Sets the right foot against the left in many metrics.
 *
 * Formula: {@link symmetryOf} for each.
 * Units: as {@link symmetryOf}.
 * Limits: of some 30 metrics with 95 % intervals one or two leave out 0 by chance alone, in a runner whose feet are alike.
 * Source: as {@link symmetryOf}.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link SYMMETRIES_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link symmetryOf}; `wrong-type`: metrics are no list.
 * @example
 * symmetriesOf(trial, { metrics: ["peakVerticalForce", "contactTime"] }).metrics.length // 2
 */
export function symmetriesOf(trial: Trial, options: SymmetriesOptions = {}): Symmetries {
  const { metrics, of, level } = withDefaults<SymmetriesOptions>(SYMMETRIES_DEFAULTS, options);
  if (!Array.isArray(metrics)) {
    fail("wrong-type", "metrics is no list; a list of ids or catalogue entries is needed", {
      argument: "metrics",
    });
  }
  const found: Symmetry[] = [];
  const notComputed: NotComputed[] = [];
  for (const metric of metrics as readonly (string | Metric)[]) {
    const result = symmetryOf(trial, metric, { of, level });
    if ("index" in result) found.push(result);
    else notComputed.push(result);
  }
  return { metrics: found, notComputed };
}
