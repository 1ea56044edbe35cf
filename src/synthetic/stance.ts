import type { Direction, Side } from "../recording/index.js";
import { halfSine, type IntegralOrder, raisedCosine } from "./pulses.js";

/** One contact of the model in SI units; every force is zero outside 0 to `contactTime`. */
export interface Stance {
  readonly side: Side;
  /** To the next contact, s. */
  readonly stepTime: number;
  readonly contactTime: number;
  readonly impactAmplitude: number;
  readonly impactTime: number;
  /** Height of the second raised cosine, N: what the impulse of the step asks for. */
  readonly mainAmplitude: number;
  readonly brakingAmplitude: number;
  /** Where braking turns into propulsion, s. */
  readonly crossTime: number;
  /** Peak of the propulsive half sine, N: what the impulse of the step asks for. */
  readonly propulsiveAmplitude: number;
  readonly lateralAmplitude: number;
  readonly lateralTime: number;
  readonly medialAmplitude: number;
  readonly copRoll: number;
  readonly copWidth: number;
  readonly freeMomentAmplitude: number;
}

/** 1 for a right foot, whose outside is to the right; −1 for a left one. */
export function outward(side: Side): 1 | -1 {
  return side === "right" ? 1 : -1;
}

/**
 * Gives one component of the model's force at a time from the contact, N, or its first or second integral, N·s, N·s².
 *
 * Formula: up, two raised cosines, the first of half width t₁ about t₁, the second over the whole contact; forward, a
 * negative half sine to the crossing, then a positive one; right, a lateral half sine, then a medial one.
 */
export function stanceForce(
  stance: Stance,
  direction: Direction,
  time: number,
  order: IntegralOrder = 0,
): number {
  const { contactTime, crossTime, lateralTime } = stance;
  if (direction === "up") {
    return (
      raisedCosine(order, time, 0, stance.impactTime, stance.impactAmplitude) +
      raisedCosine(order, time, 0, contactTime / 2, stance.mainAmplitude)
    );
  }
  if (direction === "forward") {
    return (
      halfSine(order, time, crossTime, contactTime - crossTime, stance.propulsiveAmplitude) -
      halfSine(order, time, 0, crossTime, stance.brakingAmplitude)
    );
  }
  return (
    outward(stance.side) *
    (halfSine(order, time, 0, lateralTime, stance.lateralAmplitude) -
      halfSine(order, time, lateralTime, contactTime - lateralTime, stance.medialAmplitude))
  );
}

/** Share of the contact at which the centre of pressure has reached the toes. */
export const ROLL_END = 0.85;

/** Gives the travel of the centre of pressure along the foot since the contact, m. */
export function copTravel({ copRoll, contactTime }: Stance, time: number): number {
  const share = Math.min(time / contactTime / ROLL_END, 1);
  return (copRoll * (1 - Math.cos(Math.PI * share))) / 2;
}

/** Gives the free moment at a time from the contact, N·m about `up`: it turns the toes inwards. */
export function stanceFreeMoment(stance: Stance, time: number): number {
  return outward(stance.side) * halfSine(0, time, 0, stance.contactTime, stance.freeMomentAmplitude);
}
