import { type MetresPerSecondSquared, requireNumber } from "../units/index.js";

/** The parts of gravity in the frame of a slope, m/s²: both positive uphill. */
export interface GravityParts {
  /** Pressing on the surface: g cos θ. */
  readonly normal: MetresPerSecondSquared;
  /** Pulling back along it: g sin θ. */
  readonly along: MetresPerSecondSquared;
}

/**
 * Splits gravity into the part normal to a slope and the part along it.
 *
 * Formula: g cos θ and g sin θ with tan θ the grade.
 *
 * @param gravity - m/s², above 0.
 * @param grade - Rise over run, uphill positive, −1 to 1.
 * @throws GaitKineticsError `wrong-type`, `not-finite`, `out-of-range`: gravity not above 0, grade outside −1 to 1.
 */
export function gravityOnSlope(gravity: number, grade: number): GravityParts {
  if (!(gravity > 0 && gravity < Number.POSITIVE_INFINITY)) {
    requireNumber("gravity", gravity, { above: 0, unit: "m/s^2" });
  }
  if (!(grade >= -1 && grade <= 1)) {
    requireNumber("grade", grade, { from: -1, to: 1, hint: "0.05 is 5 %, uphill positive" });
  }
  const normal = gravity / Math.sqrt(1 + grade * grade);
  return { normal, along: normal * grade };
}
