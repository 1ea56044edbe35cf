import { type Contact, type Step, stepsOf } from "../../events/index.js";
import type { ToldEvents } from "../sidesByMarkers.js";

/** Ways in which a foot is stated; by the others one foot alone cannot be told. */
const STATED: readonly string[] = ["plates", "recorded events", "markers", "first foot"];

/** The events with all contacts of one foot: the one that is stated, else an unknown one. */
export function ofOneFoot(events: ToldEvents): ToldEvents {
  const { contacts, partialContacts, settings, cautions } = events;
  const [first] = contacts;
  const alike = contacts.every(({ side }) => side === first?.side);
  const stated = STATED.includes(settings.sides) && (alike || settings.sides === "first foot");
  const side = stated && first !== undefined ? first.side : "unknown";
  const ofFoot = ({ singleSupport: _, ...contact }: Contact): Contact => ({ ...contact, side });
  return {
    contacts: contacts.map(ofFoot),
    partialContacts: partialContacts.map(ofFoot),
    settings: { ...settings, sides: stated ? settings.sides : "none" },
    cautions: cautions.filter(({ code }) => !code.startsWith("sides-")),
  };
}

/** The contacts of one foot, each with its next one, which ends the stride. */
export function stepsOfOneFoot({ contacts, partialContacts }: ToldEvents): Step[] {
  const unsided = contacts.map((contact): Contact => ({ ...contact, side: "unknown" }));
  return stepsOf(unsided, partialContacts).map(({ next }, k) => {
    const contact = contacts[k] as Contact;
    return next === undefined ? { contact } : { contact, nextSameSide: contacts[k + 1] as Contact };
  });
}
