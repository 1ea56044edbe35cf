import {
  type Complete,
  type Fraction,
  fail,
  type Quantity,
  requireNumber,
  withDefaults,
} from "../../units/index.js";

/** What {@link apparentEfficiency} takes for granted. */
export interface ApparentEfficiencyOptions {
  /** Oxygen uptake to take off, such as that of quiet standing; 0 for the gross efficiency. */
  readonly restingUptake?: Quantity<"ml/kg/min"> | undefined;
  /** Energy set free by a millilitre of oxygen; it depends on what is burnt. */
  readonly oxygenEnergy?: Quantity<"J/ml"> | undefined;
}

/** Gross, 20.9 J/ml. Source: common practice. */
export const APPARENT_EFFICIENCY_DEFAULTS: Complete<ApparentEfficiencyOptions> = {
  restingUptake: 0,
  oxygenEnergy: 20.9,
};

/** Mechanical over metabolic power, and what they were. */
export interface ApparentEfficiency {
  readonly efficiency: Fraction;
  readonly mechanicalPower: Quantity<"W/kg">;
  readonly metabolicPower: Quantity<"W/kg">;
  /** `gross`: rest included. */
  readonly basis: "gross" | "net";
  readonly oxygenEnergy: Quantity<"J/ml">;
}

/**
 * Sets the positive mechanical power of a gait against the metabolic power of its measured oxygen uptake.
 *
 * Formula: W⁺/t ÷ [(V̇ − V̇_rest) e/60], e the energy of a millilitre of oxygen.
 * Units: W/kg and ml/kg/min in; a share of one and W/kg out.
 * Limits: steady and aerobic effort. Measured uptake only: a predicted one makes this a number about the equation. It is
 * apparent: springs give back part of the positive work, and work of limbs against each other is missing, so it is no
 * efficiency of muscle. In running 0.40 to 0.80 is usual (from memory).
 * Source: definition; 20.9 J/ml is common practice.
 * @param mechanicalPower - Positive external work ÷ time ÷ mass, from 0.
 * @param oxygenUptake - Measured, above `restingUptake`.
 * @param options - Rest, energy; {@link APPARENT_EFFICIENCY_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: a number out of bounds.
 * @example
 * apparentEfficiency(4.5, 39.5).efficiency // 0.32705
 */
export function apparentEfficiency(
  mechanicalPower: Quantity<"W/kg">,
  oxygenUptake: Quantity<"ml/kg/min">,
  options: ApparentEfficiencyOptions = APPARENT_EFFICIENCY_DEFAULTS,
): ApparentEfficiency {
  const { restingUptake, oxygenEnergy } = withDefaults(APPARENT_EFFICIENCY_DEFAULTS, options);
  requireNumber("mechanicalPower", mechanicalPower, { from: 0, unit: "W/kg" });
  requireNumber("oxygenUptake", oxygenUptake, { above: 0, unit: "ml/kg/min" });
  requireNumber("restingUptake", restingUptake, { from: 0, unit: "ml/kg/min" });
  requireNumber("oxygenEnergy", oxygenEnergy, { from: 15, to: 25, unit: "J/ml" });
  if (restingUptake >= oxygenUptake) {
    fail(
      "out-of-range",
      `restingUptake is ${restingUptake} ml/kg/min; it must be below oxygenUptake, ${oxygenUptake} ml/kg/min`,
      { argument: "restingUptake", values: { given: restingUptake, below: oxygenUptake } },
    );
  }
  const metabolicPower = ((oxygenUptake - restingUptake) * oxygenEnergy) / 60;
  return {
    efficiency: mechanicalPower / metabolicPower,
    mechanicalPower,
    metabolicPower,
    basis: restingUptake === 0 ? "gross" : "net",
    oxygenEnergy,
  };
}
