import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Metres } from "../../units/index.js";
import { type LandingDistanceOptions, landingOf } from "./landingOf.js";

/**
 * Gives how far the centre of mass is ahead of the foot when it leaves the ground.
 *
 * Formula: centre of mass − centre of pressure at last touch, in the frame that moves with the ground; as
 * {@link touchdownDistance}, read backward from the end of the contact. Both together and the travel of the centre of
 * pressure under the foot are the travel of the centre of mass over the ground in contact.
 * Units: N, N·m, s and m/s in; m out.
 * Limits: as {@link touchdownDistance}, but the force falls slowly at the end of a contact: on the open recording a line in
 * place of the curve moves it by −36 mm, 600 N in place of 250 N by +34 mm. Trust its absolute value to about 40 mm; a
 * difference between conditions by one rule is steadier. Noise of 2 N moves a single last touch by 1 to 2 ms, the distance
 * by 4 mm.
 * Source: conservation of angular momentum about the centre of mass; held against synthetic truth and markers.
 * @param ground - Force and moment, filtered or not; surface, speed, grade, height and a measured centre of mass are read.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @param options - Foot level, toe; {@link LANDING_DISTANCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: contacts not in order within the recording, an option
 * out of bounds; `missing-value`: a foot level in body weights beside a measured centre of mass, and no mass.
 * @example
 * const belt = { ...ground, surface: "belt", speed: 3 } as const;
 * takeOffDistance(belt, steps[0]) > touchdownDistance(belt, steps[0]) // true
 */
export function takeOffDistance(
  ground: GroundReaction,
  step: Step,
  options: LandingDistanceOptions = {},
): Metres | null {
  const landing = landingOf(ground, step, options);
  return landing.refused === undefined ? landing.takeOff : null;
}
