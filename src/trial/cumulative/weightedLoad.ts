import type { Metric } from "../../metrics/index.js";
import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { metricOf } from "../metricOf.js";
import { requireTrial } from "../requireTrial.js";
import type { NotComputed, Trial } from "../trial.js";
import { divisorOf } from "./divisorOf.js";
import type { CumulativeLoad, CumulativeLoadOptions } from "./load.js";
import { requireLoad, sumOverSteps } from "./sumOverSteps.js";

/** How peaks are weighted before they are summed. */
export interface WeightedLoadOptions extends CumulativeLoadOptions {
  /** Power that each peak is raised to, 1 to 30; must be stated. */
  readonly exponent?: number | null | undefined;
  /** Where the exponent is from, which is printed beside the sum. */
  readonly source?: string | null | undefined;
}

/** No exponent: none holds for every tissue, so it must be stated. 95 % intervals. */
export const WEIGHTED_LOAD_DEFAULTS: Complete<WeightedLoadOptions> = {
  exponent: null,
  source: null,
  level: 0.95,
};

/** Peaks raised to a power and summed over the steps of a kilometre and of a minute. */
export interface WeightedLoad extends CumulativeLoad {
  readonly exponent: number;
  /** As stated; `null` where none was. */
  readonly source: string | null;
  /** What the exponent means and what it does not, one sentence. */
  readonly meaning: string;
  /** The peak that, the same at every step, would sum to as much, in the metric's unit. */
  readonly equivalentPeak: number;
}

/**
 * Sums peaks over the steps of a kilometre and of a minute, each raised to a power, so that few high peaks can weigh more
 * than many low ones.
 *
 * Formula: per kilometre, mean over strides of p ÷ (v T) × 1000; per minute, of p ÷ T × 60; p the mean of both contacts'
 * peaks to the power b, T the mean of both step times, v the speed. Equivalent peak: (sum per minute ÷ steps per
 * minute)^(1/b), exact where every peak is the same.
 * Units: the metric's to the power b, per km and per min, such as N^4/km; normalised, such as BW^4/km, where the mass is
 * known.
 * Limits: the exponent weights as the fatigue of a material does: with b, a peak twice as high counts as 2ᵇ peaks. It is
 * a weighting, not damage: the force at the foot is not the stress in a tissue, tissue repairs itself, and no exponent is
 * known for a living runner; state one with its source, and try others beside it. With b 1 it is
 * {@link cumulativeLoad}. Compare sums of one exponent only. Peaks of force or moment alone (N, N m), none of them
 * negative; of an entry of one's own in N it is taken on trust that it is a peak. Else as {@link cumulativeLoad}.
 * Source: cycles to failure fall as stress to the power −b (Basquin 1910), and parts of a life add up (Palmgren 1924; Miner
 * 1945, J. Appl. Mech. 12:A159), all for materials and from memory.
 * @param trial - As `analyseTrial` gives it.
 * @param metric - Id of the catalogue, or an entry of one's own.
 * @param options - The exponent, which must be stated; {@link WEIGHTED_LOAD_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-value`: no exponent; `wrong-type`: no trial, no metric, a source that is no text;
 *   `out-of-range`: no such metric, no peak of force or moment, a negative value, the exponent, the level; `not-finite`:
 *   the exponent or the level; `unknown-option`.
 * @example
 * const load = weightedLoad(trial, "peakVerticalForce", { exponent: 4 });
 * "perMinute" in load && load.perMinute.unit // "N^4/min"
 */
export function weightedLoad(
  trial: Trial,
  metric: string | Metric,
  options: WeightedLoadOptions,
): WeightedLoad | NotComputed {
  requireTrial(trial);
  const entry = metricOf(metric);
  const { exponent, source, level } = withDefaults<WeightedLoadOptions>(WEIGHTED_LOAD_DEFAULTS, options);
  if (exponent === null) {
    fail(
      "missing-value",
      "exponent is not stated, and none holds for every tissue: state a power from 1 to 30",
      {
        argument: "exponent",
      },
    );
  }
  const power = requireNumber("exponent", exponent, { from: 1, to: 30 });
  requireNumber("level", level, { above: 0, below: 1 });
  if (source !== null && typeof source !== "string") {
    fail("wrong-type", `source is ${typeof source}; a text is needed`, { argument: "source" });
  }
  requireLoad(entry);
  requirePeaks(entry, trial);
  const divisor = divisorOf(entry, trial);
  const { normalised } = entry;
  const raised = (unit: string) =>
    power === 1 ? unit : `${unit.includes(" ") ? `(${unit})` : unit}^${power}`;
  const load = sumOverSteps(
    trial,
    entry,
    {
      value: (value) => value ** power,
      unit: raised(entry.unit),
      normalised:
        divisor === null || normalised === undefined
          ? null
          : { unit: raised(normalised.unit), divisor: divisor ** power },
    },
    level,
  );
  if (!("perMinute" in load)) return load;
  return {
    ...load,
    exponent: power,
    source,
    meaning: `Each ${entry.name} counts by its power of ${power}, as in the fatigue of a material, where one twice as high counts as ${Number((2 ** power).toPrecision(3))}; a weighting, not damage: the force at the foot is not the stress in a tissue.`,
    equivalentPeak: (load.perMinute.mean / load.stepsPerMinute) ** (1 / power),
  };
}

/** Loads of the catalogue in N that are no peaks. */
const NO_PEAKS: readonly string[] = ["meanVerticalForce"];

/** Refuses what is no peak of force or moment, and values that have no power. */
function requirePeaks({ id, unit }: Metric, trial: Trial): void {
  if (unit !== "N" && unit !== "N m") {
    fail("out-of-range", `${id} is in ${unit}; a peak of force or moment is needed, in N or N m`, {
      argument: "metric",
      values: { given: id, unit },
    });
  }
  if (NO_PEAKS.includes(id)) {
    fail("out-of-range", `${id} is a mean over the contact; a peak of force or moment is needed`, {
      argument: "metric",
      values: { given: id },
    });
  }
  const index = trial.steps.findIndex(({ values }) => (values[id] ?? 0) < 0);
  if (index >= 0) {
    fail(
      "out-of-range",
      `${id} is negative at contact ${index + 1}; peaks to be raised to a power must be 0 or more`,
      {
        argument: "metric",
        where: `contact ${index + 1}`,
        values: { given: trial.steps[index]?.values[id] ?? null },
      },
    );
  }
}
