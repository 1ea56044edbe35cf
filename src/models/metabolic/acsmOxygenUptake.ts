import {
  type Complete,
  type MetresPerSecond,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../../units/index.js";
import {
  type MetabolicEstimate,
  type MetabolicGait,
  rangeCautions,
  type ValidRange,
} from "./metabolicEstimate.js";

/** What {@link acsmOxygenUptake} takes for granted. */
export interface AcsmOxygenUptakeOptions {
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
}

/** Level. */
export const ACSM_OXYGEN_UPTAKE_DEFAULTS: Complete<AcsmOxygenUptakeOptions> = { grade: 0 };

/** Oxygen uptake by {@link acsmOxygenUptake}, with the three terms it is the sum of. */
export interface AcsmOxygenUptake extends MetabolicEstimate {
  readonly unit: "ml/kg/min";
  readonly gait: MetabolicGait;
  /** ml/kg/min each. */
  readonly parts: { readonly resting: number; readonly horizontal: number; readonly vertical: number };
}

/** Factors of the equations, and the speeds in m/min that they were made for. */
const GAITS: Readonly<Record<MetabolicGait, { horizontal: number; vertical: number; speed: ValidRange }>> = {
  running: { horizontal: 0.2, vertical: 0.9, speed: { unit: "m/min", from: 134, to: null } },
  walking: { horizontal: 0.1, vertical: 1.8, speed: { unit: "m/min", from: 50, to: 100 } },
};

/**
 * Predicts the steady oxygen uptake of running or walking from speed and grade, for a person of no particular technique.
 *
 * Formula: running 3.5 + 0.2 S + 0.9 S G, walking 3.5 + 0.1 S + 1.8 S G; S speed in m/min, G grade. Gross: the 3.5 are rest.
 * Units: m/s in; ml of oxygen per kg and minute out.
 * Limits: running above 134 m/min (2.23 m/s), walking at 50 to 100 m/min; level or uphill. Outside, the result carries a
 * caution. It knows speed and grade alone: a change of technique or of force does not show in it.
 * Source: American College of Sports Medicine, Guidelines for Exercise Testing and Prescription.
 * @param gait - Which equation.
 * @param speed - Over the surface, from 0.
 * @param options - Grade; {@link ACSM_OXYGEN_UPTAKE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: no such gait, a speed below 0, a grade outside −1 to 1.
 * @example
 * acsmOxygenUptake("running", 3).value // 39.5
 * acsmOxygenUptake("walking", 1.34, { grade: 0.1 }).value // 26.012
 */
export function acsmOxygenUptake(
  gait: MetabolicGait,
  speed: MetresPerSecond,
  options: AcsmOxygenUptakeOptions = ACSM_OXYGEN_UPTAKE_DEFAULTS,
): AcsmOxygenUptake {
  const { grade } = withDefaults(ACSM_OXYGEN_UPTAKE_DEFAULTS, options);
  const factors = GAITS[requireOneOf("gait", gait, ["running", "walking"])];
  const perMinute = 60 * requireNumber("speed", speed, { from: 0, unit: "m/s" });
  requireNumber("grade", grade, { from: -1, to: 1, hint: "0.05 is 5 %, uphill positive" });
  const uphill: ValidRange = { unit: "1", from: 0, to: null };
  const parts = {
    resting: 3.5,
    horizontal: factors.horizontal * perMinute,
    vertical: factors.vertical * perMinute * grade,
  };
  return {
    equation: `ACSM Guidelines, ${gait}`,
    gait,
    value: parts.resting + parts.horizontal + parts.vertical,
    unit: "ml/kg/min",
    parts,
    range: { speed: factors.speed, grade: uphill },
    cautions: [
      ...rangeCautions(`ACSM ${gait}`, "speed", perMinute, factors.speed),
      ...rangeCautions(`ACSM ${gait}`, "grade", grade, uphill),
    ],
  };
}
