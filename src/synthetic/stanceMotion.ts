import type { Direction } from "../recording/index.js";
import { type Stance, stanceForce } from "./stance.js";

/** One number a direction. */
export type Vector = { readonly [D in Direction]: number };

/** Makes a vector of a function of the direction. */
export function vectorOf(value: (direction: Direction) => number): Vector {
  return { forward: value("forward"), up: value("up"), right: value("right") };
}

/** The centre of mass at a contact, and what acts on it beside the foot. */
export interface Motion {
  readonly mass: number;
  /** m. */
  readonly position: Vector;
  /** m/s. */
  readonly velocity: Vector;
  /** Taken off the force's own acceleration, m/s²: gravity, and the mean to the right where the feet differ. */
  readonly against: Vector;
}

/** Gives the travel of the centre of mass in one direction since the contact, m. */
export function travel(stance: Stance, motion: Motion, direction: Direction, time: number): number {
  return (
    motion.velocity[direction] * time +
    stanceForce(stance, direction, time, 2) / motion.mass -
    (motion.against[direction] * time * time) / 2
  );
}

/** Gives the change of velocity in one direction since the contact, m/s. */
export function velocityChange(stance: Stance, motion: Motion, direction: Direction, time: number): number {
  return stanceForce(stance, direction, time, 1) / motion.mass - motion.against[direction] * time;
}
