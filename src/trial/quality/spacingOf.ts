import { type Contact, stepsOf } from "../../events/index.js";
import { median } from "../../statistics/index.js";
import type { Seconds } from "../../units/index.js";

/** Contacts from which on their spacing tells what is usual. */
export const FEW_CONTACTS = 4;
/** No stride of a person who walks or runs lasts longer, s. Common practice. */
export const LONGEST_STRIDE: Seconds = 1.6;

/** From one contact to the next. */
export interface Spacing {
  readonly steps: readonly { readonly at: Seconds; readonly time: Seconds }[];
  /** Median time from initial contact to the next, s, over those that no contact was left out of. */
  readonly usual: Seconds;
  /** Median time from toe-off to the next initial contact of the same, s. */
  readonly gap: Seconds;
}

/** How contacts are spaced in time. */
export function spacingOf(contacts: readonly Contact[], leftOut: readonly Contact[]): Spacing {
  const unsided = contacts.map((contact): Contact => ({ ...contact, side: "unknown" }));
  const neighbours = stepsOf(unsided, leftOut);
  const steps = contacts.slice(1).map((next, k) => {
    const before = contacts[k] as Contact;
    return {
      at: next.initialContact,
      time: next.initialContact - before.initialContact,
      gap: next.initialContact - before.toeOff,
      followed: neighbours[k]?.next !== undefined,
    };
  });
  const followed = steps.filter((step) => step.followed);
  const counted = leftOut.length > 0 && followed.length > 0 ? followed : steps;
  return {
    steps,
    usual: median(counted.map(({ time }) => time)),
    gap: median(counted.map(({ gap }) => gap)),
  };
}
