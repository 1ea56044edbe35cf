import { type Contact, underFoot } from "../events/index.js";
import { integralBetween } from "../filters/index.js";
import type { GroundReaction } from "../force/index.js";
import { PLAUSIBLE_BOUNDS } from "../recording/index.js";
import { fail, type Kilograms, type Newtons } from "../units/index.js";

/** Mean vertical force of a contact in weights of the heaviest person: above what sprinting and landing take. A judgement. */
const LARGEST_MEAN = 5;

/**
 * Refuses a force that carries more than any person weighs, over whole strides or, without one, within contacts.
 * @param byForce - Mass by force; `null` without a whole stride.
 * @throws GaitKineticsError `out-of-range`.
 */
export function refuseImplausibleForce(
  ground: GroundReaction,
  contacts: readonly Contact[],
  byForce: Kilograms | null,
): void {
  const { gravity } = ground;
  const largest = PLAUSIBLE_BOUNDS.mass.below as number;
  const carried =
    byForce ??
    contacts.reduce((most, contact) => Math.max(most, meanForce(ground, contact)), 0) /
      (gravity * LARGEST_MEAN);
  if (carried <= largest) return;
  const what =
    byForce === null
      ? `the vertical force carries ${kilograms(LARGEST_MEAN * carried)} kg on average over a contact; a person weighs less than ${largest} kg, and no contact carries ${LARGEST_MEAN} times that`
      : `the mean vertical force over whole strides carries ${kilograms(carried)} kg; a person weighs less than ${largest} kg`;
  fail("out-of-range", `${what}: is the force in N?`, {
    argument: "ground",
    where: "up",
    values: { carried: byForce === null ? LARGEST_MEAN * carried : carried, allowed: largest },
  });
}

function meanForce(ground: GroundReaction, contact: Contact): Newtons {
  const { initialContact: from, toeOff: to } = contact;
  const { force, sampleRate } = underFoot(ground, contact);
  return integralBetween(force.up, sampleRate, from, to) / (to - from);
}

function kilograms(mass: Kilograms): string {
  return mass < 1e6 ? mass.toFixed(0) : mass.toPrecision(3);
}
