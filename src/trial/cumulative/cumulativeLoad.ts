import type { Metric } from "../../metrics/index.js";
import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { metricOf } from "../metricOf.js";
import { requireTrial } from "../requireTrial.js";
import type { NotComputed, Trial } from "../trial.js";
import { divisorOf } from "./divisorOf.js";
import type { CumulativeLoad, CumulativeLoadOptions } from "./load.js";
import { requireLoad, sumOverSteps } from "./sumOverSteps.js";

/** 95 % intervals. */
export const CUMULATIVE_LOAD_DEFAULTS: Complete<CumulativeLoadOptions> = { level: 0.95 };

/**
 * Sums a load over the steps of a kilometre and of a minute: a load that is lower per step can be higher by the distance,
 * where the steps became more.
 *
 * Formula: per kilometre, mean over strides of x ÷ (v T) × 1000; per minute, of x ÷ T × 60; x the mean of both contacts,
 * T the mean of both step times, v the speed; intervals as {@link meanInterval}. Left and right: each foot's part of the
 * sum, x its own contact ÷ 2.
 * Units: the metric's per km and per min, such as N s/km; normalised beside where the mass is known.
 * Limits: loads alone, which the catalogue marks by `perKilometre`; `null` per kilometre without a speed; the reason in
 * place of sums where fewer than 90 % of the contacts have the metric. No feet apart where left and right are relative.
 * A sum of peaks counts every step alike; {@link weightedLoad} does not. It is the sum of what the ground does to the
 * foot, at this speed and surface, not of what a tissue bears, and no dose that harms.
 * Source: definition.
 * @param trial - As `analyseTrial` gives it.
 * @param metric - Id of the catalogue, or an entry of one's own.
 * @param options - {@link CUMULATIVE_LOAD_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no trial, no metric; `out-of-range`: no such metric, no load, the level;
 *   `not-finite`: the level; `unknown-option`.
 * @example
 * const load = cumulativeLoad(trial, "brakingImpulse");
 * "perMinute" in load && load.perMinute.unit // "N s/min"
 */
export function cumulativeLoad(
  trial: Trial,
  metric: string | Metric,
  options: CumulativeLoadOptions = {},
): CumulativeLoad | NotComputed {
  requireTrial(trial);
  const entry = metricOf(metric);
  requireLoad(entry);
  const { level } = withDefaults<CumulativeLoadOptions>(CUMULATIVE_LOAD_DEFAULTS, options);
  requireNumber("level", level, { above: 0, below: 1 });
  const divisor = divisorOf(entry, trial);
  const unit = unitPerBody(entry);
  return sumOverSteps(
    trial,
    entry,
    {
      value: (value) => value,
      unit: entry.unit,
      normalised: divisor === null || unit === null ? null : { unit, divisor },
    },
    level,
  );
}

/** The unit of a value divided by body weight or mass; one that is per distance already is J/kg before that. */
function unitPerBody({ unit, normalised }: Metric): string | null {
  if (normalised === undefined) return null;
  return normalised.by === "mass and distance" ? `${unit}/kg` : normalised.unit;
}
