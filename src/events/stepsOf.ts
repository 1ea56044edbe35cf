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
  const limit = LONGEST_STEP * medianStepTime(contacts);
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
 * Gives the median time from one initial contact to the next, s; NaN with fewer than two contacts.
 * @example
 * medianStepTime([{ initialContact: 0.1 }, { initialContact: 0.44 }]) // 0.34
 */
export function medianStepTime(contacts: readonly { readonly initialContact: number }[]): number {
  const times = new Float64Array(Math.max(0, contacts.length - 1));
  for (let k = 0; k < times.length; k++) {
    times[k] = (contacts[k + 1]?.initialContact as number) - (contacts[k]?.initialContact as number);
  }
  times.sort();
  const middle = times.length / 2;
  if (times.length === 0) return Number.NaN;
  if (times.length % 2 === 1) return times[Math.floor(middle)] as number;
  return ((times[middle - 1] as number) + (times[middle] as number)) / 2;
}
