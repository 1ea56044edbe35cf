import { type Kilograms, type Quantity, requireNumber, type Seconds } from "../../units/index.js";

/**
 * Gives the vertical stiffness of a runner from the effective contact time, as half a period of a mass on a spring.
 *
 * Formula: k = m (π/t_ce)², t_ce the time in which the vertical force exceeds body weight.
 * Units: kg and s in; N/m out.
 * Limits: the true bounce is no sine, so it differs from peak force ÷ drop: 23.2 against 27.8 kN/m on one synthetic contact.
 * Compare values of one form only.
 * Source: law of the mass on a spring; its use from memory: Cavagna et al. 1988; figure legend of Cavagna et al. 2005, J Exp
 * Biol 208:2333.
 * @param mass - Above 0.
 * @param effectiveContactTime - Above 0; see `effectiveContactTime`.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: either is not above 0.
 * @example
 * halfPeriodStiffness(70, 0.1726) // 23190.8
 */
export function halfPeriodStiffness(mass: Kilograms, effectiveContactTime: Seconds): Quantity<"N/m"> {
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  requireNumber("effectiveContactTime", effectiveContactTime, { above: 0, unit: "s" });
  const frequency = Math.PI / effectiveContactTime;
  return mass * frequency * frequency;
}
