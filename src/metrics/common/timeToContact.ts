import type { Contact } from "../../events/index.js";
import { fail, type Seconds } from "../../units/index.js";

/**
 * Gives the time from one initial contact to a later one.
 *
 * @param contact - The earlier contact.
 * @param later - The later contact.
 * @param name - What the later one is called in a step, for the message.
 * @throws GaitKineticsError `out-of-range`: it is not later.
 */
export function timeToContact(contact: Contact, later: Contact, name: "next" | "nextSameSide"): Seconds {
  const time = later.initialContact - contact.initialContact;
  if (time > 0) return time;
  fail(
    "out-of-range",
    `${name} begins at ${later.initialContact} s; it must begin after the contact, at ${contact.initialContact} s`,
    { argument: name, values: { initialContact: contact.initialContact, later: later.initialContact } },
  );
}
