import type { Kilograms, MetresPerSecondSquared, Newtons } from "./quantity.js";

/** Standard gravity, exact by definition. Source: ISO 80000-3; CGPM 1901. */
export const STANDARD_GRAVITY: MetresPerSecondSquared = 9.80665;

/**
 * Gives the weight of a mass.
 *
 * Formula: W = m g. Units: kg and m/s² in; N out.
 * @example
 * bodyWeight(70) // 686.4655
 */
export function bodyWeight(mass: Kilograms, gravity: MetresPerSecondSquared = STANDARD_GRAVITY): Newtons {
  return mass * gravity;
}
