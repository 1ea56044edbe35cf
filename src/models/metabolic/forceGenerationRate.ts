import {
  type Complete,
  type MetresPerSecondSquared,
  type Quantity,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";

/** What {@link forceGenerationRate} turns the rate into a cost with. */
export interface ForceGenerationRateOptions {
  /** J per N of body weight and contact, measured on this runner at this speed; `null` for no cost. */
  readonly coefficient?: Quantity<"J/N"> | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** No cost, standard gravity: the coefficient is no constant, so none is taken for granted. */
export const FORCE_GENERATION_RATE_DEFAULTS: Complete<ForceGenerationRateOptions> = {
  coefficient: null,
  gravity: STANDARD_GRAVITY,
};

/** How fast a runner's legs must build up force. */
export interface ForceGenerationRate {
  readonly rate: Quantity<"1/s">;
  /** Metabolic power by the stated coefficient; `null` without one. */
  readonly cost: Quantity<"W/kg"> | null;
}

/**
 * Gives the rate at which a runner generates force, and with a stated coefficient the metabolic power that goes with it.
 *
 * Formula: rate = 1/t_c; cost = c g/t_c.
 * Units: s and J/N in; 1/s and W/kg out.
 * Limits: contact time in disguise. The coefficient is no constant: 0.265 J/N at 2.2 m/s and 0.415 at 5.0 m/s in one study
 * (Kipp et al. 2018), so cost is given only where the caller states it. Contact time alone explains about 70 % of the rise of
 * the cost from 2 to 4 m/s.
 * Source: Kram & Taylor 1990, Nature 346:265; Kipp, Grabowski & Kram 2018, J Exp Biol 221:jeb184218 (abstract).
 * @param contactTime - Above 0.
 * @param options - Coefficient and gravity; {@link FORCE_GENERATION_RATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: a number that is not above 0.
 * @example
 * forceGenerationRate(0.25) // { rate: 4, cost: null }
 * forceGenerationRate(0.25, { coefficient: 0.183 }).cost // 7.178468
 */
export function forceGenerationRate(
  contactTime: Seconds,
  options: ForceGenerationRateOptions = FORCE_GENERATION_RATE_DEFAULTS,
): ForceGenerationRate {
  const { coefficient, gravity } = withDefaults(FORCE_GENERATION_RATE_DEFAULTS, options);
  const rate = 1 / requireNumber("contactTime", contactTime, { above: 0, unit: "s" });
  requireNumber("gravity", gravity, { above: 0, unit: "m/s^2" });
  if (coefficient === null) return { rate, cost: null };
  return {
    rate,
    cost: requireNumber("coefficient", coefficient, { above: 0, unit: "J/N" }) * gravity * rate,
  };
}
