import type { Contact, Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { fail } from "../../units/index.js";

/**
 * Checks that a step's contact rises within the recording and holds a sample, and returns it.
 *
 * @param ground - The recording.
 * @param step - The step whose contact is checked.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: toe-off not after initial contact, either outside the recording, or no sample
 * between them.
 */
export function requireContact(ground: GroundReaction, step: Step): Contact {
  const contact = step?.contact;
  if (typeof contact?.initialContact !== "number" || typeof contact.toeOff !== "number") {
    fail("wrong-type", "the step holds no contact; { contact } is needed, such as one of detectContacts", {
      argument: "step",
    });
  }
  const { initialContact, toeOff } = contact;
  const { sampleRate } = ground;
  const end = (ground.force.up.length - 1) / sampleRate;
  const rises = initialContact >= 0 && initialContact < toeOff && toeOff <= end;
  if (rises && Math.ceil(initialContact * sampleRate) <= toeOff * sampleRate) return contact;
  fail(
    "out-of-range",
    `the contact is ${initialContact} s to ${toeOff} s; it must rise within the recording, 0 s to ${end} s, and hold a sample`,
    { argument: "contact", values: { initialContact, toeOff, end, sampleRate } },
  );
}
