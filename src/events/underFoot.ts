import type { GroundReaction } from "../force/index.js";
import { fail } from "../units/index.js";
import type { Contact } from "./contact.js";

/**
 * Gives the ground reaction under the foot that makes a contact: that of the contact's own plate where plates
 * are kept apart, else the ground reaction itself.
 *
 * Limits: while both feet are on the ground the sum of all plates is the force on the body, not on a foot:
 * what is said of one foot is measured here, what is said of the body on the sum.
 * Source: definition.
 * @param ground - The recording.
 * @param contact - A contact found on it.
 * @throws GaitKineticsError `out-of-range`: the contact names a plate that the ground reaction does not have.
 * @example
 * underFoot(ground, contact) === ground // true
 */
export function underFoot(ground: GroundReaction, contact: Pick<Contact, "plate">): GroundReaction {
  const { plates } = ground;
  if (contact.plate === undefined || plates === undefined) return ground;
  const plate = plates[contact.plate];
  if (plate !== undefined) return plate;
  fail(
    "out-of-range",
    `the contact is on plate ${contact.plate}; the ground reaction has plates 0 to ${plates.length - 1}: was it found on another recording?`,
    { argument: "contact.plate", values: { given: contact.plate, plates: plates.length } },
  );
}
