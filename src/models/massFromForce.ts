import { integralBetween } from "../filters/index.js";
import {
  type Complete,
  fail,
  type Hertz,
  type Kilograms,
  type MetresPerSecondSquared,
  type Samples,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../units/index.js";
import { gravityOnSlope } from "./gravityOnSlope.js";
import { requireSpan } from "./requireSpan.js";

/** What {@link massFromForce} divides by. */
export interface MassFromForceOptions {
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
}

/** Standard gravity on the level. Source: ISO 80000-3. */
export const MASS_FROM_FORCE_DEFAULTS: Complete<MassFromForceOptions> = {
  gravity: STANDARD_GRAVITY,
  grade: 0,
};

/**
 * Gives the mass that the ground held up over whole strides.
 *
 * Formula: m = mean(F_up) / (g cos θ), tan θ the grade.
 * Units: N and s in; kg out.
 * Limits: only over whole strides of steady gait; elsewhere the body also gains or loses upward momentum. An offset or a
 * scale error of the force goes into it, which is why it, and no weighed mass, belongs in an integration.
 * Source: law (impulse = change of momentum, which is zero over a stride).
 * @param up - Force normal to the surface, N.
 * @param sampleRate - Above 0.
 * @param from - Start of the first stride, from the first sample.
 * @param to - End of the last stride, above `from`.
 * @param options - Gravity and grade; {@link MASS_FROM_FORCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: the span does not rise within the samples, gravity or grade out of bounds, or
 * the mean force is not upward.
 * @example
 * massFromForce(new Float64Array([686.4655, 686.4655, 686.4655]), 1000, 0, 0.002) // 70
 */
export function massFromForce(
  up: Samples<"N">,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  options: MassFromForceOptions = MASS_FROM_FORCE_DEFAULTS,
): Kilograms {
  const { gravity, grade } = withDefaults(MASS_FROM_FORCE_DEFAULTS, options);
  requireSpan(up, sampleRate, from, to);
  const mass =
    integralBetween(up, sampleRate, from, to) / (to - from) / gravityOnSlope(gravity, grade).normal;
  if (mass > 0) return mass;
  fail(
    "out-of-range",
    `the mean upward force from ${from} s to ${to} s gives ${mass} kg; a mass above 0 is needed`,
    {
      argument: "up",
      where: `${from} s to ${to} s`,
      values: { given: mass },
    },
  );
}
