import type { Contact } from "../../events/index.js";

/**
 * Says which sign of the rightward force points to the body's midline: −1 under a right foot, 1 under a left foot, `null`
 * where the side is not known.
 *
 * @param contact - The contact.
 */
export function medialSign(contact: Contact): 1 | -1 | null {
  if (contact.side === "unknown") return null;
  return contact.side === "left" ? 1 : -1;
}
