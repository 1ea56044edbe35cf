import { type Contact, underFoot } from "../events/index.js";
import { timeNormalise } from "../filters/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Direction } from "../recording/index.js";

/** Points of a time-normalised curve: 0 to 100 % of stance in whole per cent. */
export const CURVE_POINTS = 101;

/** One component of the force under the foot over one contact, evenly spaced from initial contact to toe-off. */
export function stanceCurve(
  ground: GroundReaction,
  direction: Direction,
  contact: Contact,
  points: number,
): Float64Array {
  const samples = underFoot(ground, contact).force[direction] as Float64Array;
  return timeNormalise(samples, ground.sampleRate, contact.initialContact, contact.toeOff, points);
}

/**
 * Contacts that have a curve: the force under a foot that shares its plate is not known over the whole of its
 * contact.
 */
export function wholeContacts(contacts: readonly Contact[]): Contact[] {
  return contacts.filter(({ shared }) => shared !== true);
}
