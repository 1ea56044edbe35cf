import { median } from "../statistics/index.js";
import type { Seconds } from "../units/index.js";
import type { Contact, Step } from "./contact.js";
import { type Span, spanBetween } from "./spanBetween.js";

/** A next contact that comes later than this many median step times means that one was missed in between. Common practice. */
export const LONGEST_STEP = 1.5;

/**
 * Gives each contact its neighbours: the next contact, and the next one of the same foot.
 *
 * Formula: contact k + 1 follows contact k where it is of the other foot and comes within 1.5 median step times, with no
 * contact that was left out between them; k + 2 is the same foot's next where k + 1 follows k and k + 2 follows k + 1.
 * Units: s.
 * Limits: at the end of a recording, and before a missed contact, a neighbour is absent.
 * Source: common practice.
 * @param contacts - Complete contacts in order of time.
 * @param leftOut - Partial contacts, across which nothing follows.
 * @example
 * stepsOf(contacts).length === contacts.length // true
 */
export function stepsOf(contacts: readonly Contact[], leftOut: readonly Span[] = []): Step[] {
  const limit = LONGEST_STEP * usualStepTime(contacts, leftOut);
  const follows = (k: number) => {
    const here = contacts[k];
    const next = contacts[k + 1];
    if (here === undefined || next === undefined) return false;
    const otherFoot = here.side !== next.side || here.side === "unknown";
    const soon = next.initialContact - here.initialContact <= limit;
    return otherFoot && soon && !spanBetween(here, next, leftOut);
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

/** Median over the steps that no contact was left out of; over all of them where there is no other. */
function usualStepTime(contacts: readonly Span[], leftOut: readonly Span[]): Seconds {
  const whole = contacts.slice(1).flatMap((next, k) => {
    const here = contacts[k] as Span;
    return spanBetween(here, next, leftOut) ? [] : [next.initialContact - here.initialContact];
  });
  return whole.length > 0 ? median(whole) : (medianStepTime(contacts) ?? 0);
}
