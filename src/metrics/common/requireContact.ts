import type { Contact, Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { fail } from "../../units/index.js";

/**
 * Checks that a step's contact rises and lies within the recording, and returns it.
 *
 * @param ground - The recording.
 * @param step - The step whose contact is checked.
 * @throws GaitKineticsError `out-of-range`: toe-off not after initial contact, or either outside the recording.
 */
export function requireContact(ground: GroundReaction, step: Step): Contact {
  const { contact } = step;
  const end = (ground.force.up.length - 1) / ground.sampleRate;
  if (contact.initialContact >= 0 && contact.initialContact < contact.toeOff && contact.toeOff <= end)
    return contact;
  fail(
    "out-of-range",
    `the contact is ${contact.initialContact} s to ${contact.toeOff} s; it must rise and lie within the recording, 0 s to ${end} s`,
    { argument: "contact", values: { initialContact: contact.initialContact, toeOff: contact.toeOff, end } },
  );
}
