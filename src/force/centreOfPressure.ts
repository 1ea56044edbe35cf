import type { Metres } from "../units/index.js";
import type { GroundReaction } from "./groundReaction.js";

/**
 * Gives the mean centre of pressure between two times, weighted by the vertical force.
 *
 * Formula: c_forward = Σ M_right ÷ Σ F_up, c_right = −Σ M_forward ÷ Σ F_up over the samples within.
 * Units: s in; m out, from the frame's origin.
 * Limits: `null` where the moment was not recorded or the span carries no load.
 * Source: definition (moment about the origin of a force acting at the centre of pressure in the plane of the ground).
 * @param ground - Force and moment.
 * @param direction - Along which axis.
 * @param from - Seconds from the first sample.
 * @param to - Seconds from the first sample, later than `from`.
 * @example
 * meanCentreOfPressure(ground, "right", contact.initialContact, contact.toeOff) !== null // true
 */
export function meanCentreOfPressure(
  ground: GroundReaction,
  direction: "forward" | "right",
  from: number,
  to: number,
): Metres | null {
  const moment = direction === "forward" ? ground.moment?.right : ground.moment?.forward;
  if (moment === undefined) return null;
  const { up } = ground.force;
  const first = Math.max(0, Math.ceil(from * ground.sampleRate));
  const last = Math.min(up.length - 1, Math.floor(to * ground.sampleRate));
  let load = 0;
  let turning = 0;
  for (let i = first; i <= last; i++) {
    load += up[i] as number;
    turning += moment[i] as number;
  }
  if (!(load > 0)) return null;
  return (direction === "forward" ? turning : -turning) / load;
}
