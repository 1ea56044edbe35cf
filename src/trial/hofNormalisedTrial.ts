import { type HofQuantity, hofNormalised } from "../models/index.js";
import { type Complete, fail, type Metres, requireNumber, withDefaults } from "../units/index.js";
import { requireTrial } from "./requireTrial.js";
import type { Spread, Trial } from "./trial.js";

/** What a trial is made dimensionless by. */
export interface HofNormalisedTrialOptions {
  /** Greater trochanter to ground; it has no default. */
  readonly legLength?: Metres | null | undefined;
}

/** No leg length is taken for granted. */
export const HOF_NORMALISED_TRIAL_DEFAULTS: Complete<HofNormalisedTrialOptions> = { legLength: null };

/** A trial's means without units. */
export interface HofNormalisedTrial {
  readonly legLength: Metres;
  /** Speed ÷ √(g L), the root of the Froude number; `null` where the speed is not known. */
  readonly speed: number | null;
  /** By metric id, with what each was taken as; metrics of other units, or without a value, are absent. */
  readonly metrics: Readonly<Record<string, (Spread & { readonly quantity: HofQuantity }) | undefined>>;
}

/** What a unit is the unit of. `steps/min` are a frequency, each minute 60 s. */
const QUANTITIES: Readonly<
  Record<string, { readonly quantity: HofQuantity; readonly factor: number } | undefined>
> = {
  m: { quantity: "length", factor: 1 },
  s: { quantity: "time", factor: 1 },
  "steps/min": { quantity: "frequency", factor: 1 / 60 },
  N: { quantity: "force", factor: 1 },
  "N m": { quantity: "moment", factor: 1 },
  "N s": { quantity: "impulse", factor: 1 },
};

/**
 * Makes the means of a trial dimensionless, so that walkers of different size compare at one speed in the same form.
 *
 * Formula: as {@link hofNormalised}, of each metric's mean, standard deviation and interval; cadence as steps per second.
 * Units: a leg length in m; numbers without units out.
 * Limits: lengths, times, frequencies, forces, moments and impulses; the others of the list have no metric here. Mass as stated, else by
 * force; forces and impulses are left out where neither is known. It takes out size, no difference of build.
 * Source: Hof 1996, Gait Posture 4:222 (list from memory, each form checked by its dimensions).
 * @param trial - As `analyseTrial` gives it.
 * @param options - The leg length, above 0.
 * @throws GaitKineticsError `wrong-type`: no trial; `missing-value`: no leg length; `out-of-range`, `not-finite`: one that is none.
 * @example
 * hofNormalisedTrial(trial, { legLength: 0.92 }).metrics.contactTime.quantity // "time"
 */
export function hofNormalisedTrial(
  trial: Trial,
  options: HofNormalisedTrialOptions = HOF_NORMALISED_TRIAL_DEFAULTS,
): HofNormalisedTrial {
  requireTrial(trial);
  const settings = withDefaults(HOF_NORMALISED_TRIAL_DEFAULTS, options);
  if (settings.legLength === null) {
    fail("missing-value", "a dimensionless trial needs the leg length, which was not stated", {
      argument: "legLength",
    });
  }
  const legLength = requireNumber("legLength", settings.legLength, { above: 0, below: 2, unit: "m" });
  const { gravity, mass, speed } = trial.settings;
  const body = { legLength, gravity, ...(mass !== null && { mass }) };
  const metrics: Record<string, Spread & { quantity: HofQuantity }> = {};
  for (const [id, summary] of Object.entries(trial.summary.metrics)) {
    const of = summary === undefined ? undefined : QUANTITIES[summary.unit];
    if (summary === undefined || of === undefined) continue;
    const { quantity, factor } = of;
    if (mass === null && (quantity === "force" || quantity === "moment" || quantity === "impulse")) continue;
    const plain = (value: number): number => hofNormalised(quantity, factor * value, body);
    const { n, mean, sd, interval } = summary;
    metrics[id] = {
      quantity,
      n,
      mean: plain(mean),
      sd: sd === null ? null : plain(sd),
      interval:
        interval === null
          ? null
          : { low: plain(interval.low), high: plain(interval.high), level: interval.level },
    };
  }
  return { legLength, speed: speed === null ? null : hofNormalised("speed", speed, body), metrics };
}
