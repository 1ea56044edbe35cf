import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Metres } from "../../units/index.js";
import { type LandingDistanceOptions, landingOf } from "./landingOf.js";

/**
 * Gives how far ahead of the centre of mass the foot lands.
 *
 * Formula: centre of pressure − centre of mass at first touch, in the frame that moves with the ground; the centre of mass
 * from the force over the stride that begins with this contact (`landingFromForce`), or as it was measured. First touch is
 * where the rise of the unfiltered vertical force leaves zero; the foot's place is the centre of pressure at the foot level,
 * carried back with the belt.
 * Units: N, N·m, s and m/s in; m out.
 * Limits: `null` without a later contact of the same side, a centre of pressure or a surface, on a belt of unknown speed,
 * without flight, and where the forward force of the stride is more than 1 % of the vertical beyond the grade. The absolute
 * value belongs to the rule for the toe of the force and to the foot level: on an open treadmill recording a line in place
 * of the curve moves it by −14 mm, 600 N in place of 250 N by +18 mm. Trust it to about 20 mm, and 1.4 mm more for each
 * newton of mean forward force; a difference between conditions by one rule is steadier, 3 to 4 mm on synthetic runs. Not
 * with a hand on a rail, a pram or a leash, nor on a bend. The event threshold must be below the foot level. It is no distance to a hip, a knee or an ankle.
 * Source: conservation of angular momentum about the centre of mass; held against synthetic truth and markers.
 * @param ground - Force and moment, filtered or not; surface, speed, grade, height and a measured centre of mass are read.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @param options - Foot level, toe; {@link LANDING_DISTANCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: contacts not in order within the recording, an option
 * out of bounds; `missing-value`: a foot level in body weights beside a measured centre of mass, and no mass.
 * @example
 * const belt = { ...ground, surface: "belt", speed: 3 } as const;
 * touchdownDistance(belt, steps[0]) > 0.1 // true
 */
export function touchdownDistance(
  ground: GroundReaction,
  step: Step,
  options: LandingDistanceOptions = {},
): Metres | null {
  const landing = landingOf(ground, step, options);
  return landing.refused === undefined ? landing.touchdown : null;
}
