import { median } from "../statistics/index.js";
import type { Seconds } from "../units/index.js";
import type { Contact, Step } from "./contact.js";

/** A next contact that comes later than this many median step times means that one was missed in between. Common practice. */
export const LONGEST_STEP = 1.5;

/**
 * Gives each contact its neighbours: the next contact, and the next one of the same foot.
 *
 * Formula: contact k + 1 follows contact k where it is of the other foot and comes within 1.5 median step times;
 * k + 2 is the same foot's next where k + 1 follows k and k + 2 follows k + 1.
 * Units: s.
 * Limits: at the end of a recording, and before a missed contact, a neighbour is absent.
 * Source: common practice.
 * @param contacts - Complete contacts in order of time.
 * @example
 * stepsOf(contacts).length === contacts.length // true
 */
export function stepsOf(contacts: readonly Contact[]): Step[] {
  const limit = LONGEST_STEP * (medianStepTime(contacts) ?? 0);
  const follows = (k: number) => {
    const here = contacts[k];
    const next = contacts[k + 1];
    if (here === undefined || next === undefined) return false;
    const otherFoot = here.side !== next.side || here.side === "unknown";
    return otherFoot && next.initialContact - here.initialContact <= limit;
  };
  return contacts.map((contact, k) => {
    if (!follows(k)) return { contact };
    const next = contacts[k + 1] as Contact;
    return follows(k + 1) ? { contact, next, nextSameSide: contacts[k + 2] as Contact } : { contact, next };
  });
}

/**
 * Gives the median time from one initial contact to the next, s; `null` with fewer than two contacts.
 * @throws GaitKineticsError `not-finite`, `wrong-type`: a time that is no finite number.
 * @example
 * medianStepTime([{ initialContact: 0.125 }, { initialContact: 0.5 }]) // 0.375
 */
export function medianStepTime(contacts: readonly { readonly initialContact: Seconds }[]): Seconds | null {
  const times = contacts
    .slice(1)
    .map(({ initialContact }, k) => initialContact - (contacts[k]?.initialContact ?? Number.NaN));
  return times.length === 0 ? null : median(times);
}
