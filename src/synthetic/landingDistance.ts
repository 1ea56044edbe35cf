import { integrate } from "./integrate.js";
import { copTravel, ROLL_END, type Stance, stanceForce } from "./stance.js";
import { type Motion, travel } from "./stanceMotion.js";

/**
 * Gives how far ahead of the centre of mass the foot must land so that the force leaves the runner's angular momentum about
 * the right axis as it was at the contact.
 *
 * Formula: ∫ (d + r − x) F_up dt + ∫ h F_forward dt = 0 over the contact; d the landing distance, r the travel of the
 * centre of pressure, x that of the centre of mass over the ground, h its height.
 */
export function landingDistance(stance: Stance, motion: Motion): number {
  const { contactTime, crossTime, impactTime } = stance;
  const moment = (time: number): number => {
    const over = travel(stance, motion, "forward", time) - copTravel(stance, time);
    const height = motion.position.up + travel(stance, motion, "up", time);
    return over * stanceForce(stance, "up", time) - height * stanceForce(stance, "forward", time);
  };
  const breaks = [0, 2 * impactTime, crossTime, ROLL_END * contactTime, contactTime];
  return integrate(moment, breaks) / stanceForce(stance, "up", contactTime, 1);
}
