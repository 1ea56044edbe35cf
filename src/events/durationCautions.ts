import { median } from "../statistics/index.js";
import type { Caution } from "../units/index.js";
import type { Contact } from "./contact.js";

/** A contact longer than this many medians may be two that were read as one. Common practice. */
const LONG_CONTACT = 1.6;
/** Contacts from which on the median tells what is usual. */
const FEW_CONTACTS = 5;
/** No running or walking foot stays this long on the ground, s. Common practice. */
const LONGEST_CONTACT = 1;
/** Flights shorter than this many times the time that is bridged may have been bridged now and then. */
const NEAR_BRIDGE = 1.7;

/** Says where the lengths of contacts and flights show that flights were missed, or nearly. */
export function durationCautions(
  contacts: readonly Contact[],
  partialContacts: readonly Contact[],
  bridge: number,
): Caution[] {
  if (contacts.length === 0) return [];
  const lengths = contacts.map(({ initialContact, toeOff }) => toeOff - initialContact);
  const usual = median(lengths);
  const limit =
    contacts.length >= FEW_CONTACTS ? Math.min(LONG_CONTACT * usual, LONGEST_CONTACT) : LONGEST_CONTACT;
  const cutLengths = partialContacts.map(({ initialContact, toeOff }) => toeOff - initialContact);
  const long = [...lengths, ...cutLengths].filter((length) => length > limit);
  const cautions: Caution[] = [];
  if (long.length > 0) {
    const longest = Math.max(...long);
    cautions.push({
      code: "long-contact",
      message: `${long.length} of ${contacts.length + partialContacts.length} contacts ${long.length === 1 ? "lasts" : "last"} longer than ${limit.toFixed(2)} s (up to ${longest.toFixed(2)} s, median ${usual.toFixed(2)} s): several contacts may have been read as one, because the flight between them was too short or the force in it too high, or the runner stood still`,
      values: { contacts: long.length, limit, longest, median: usual },
    });
  }
  const flights = flightsOf(contacts);
  const short = flights.filter((flight) => flight < NEAR_BRIDGE * bridge);
  if (short.length > 0) {
    cautions.push({
      code: "short-flights",
      message: `${short.length} of ${flights.length} flights last less than ${(1000 * NEAR_BRIDGE * bridge).toFixed(0)} ms (the shortest ${(1000 * Math.min(...short)).toFixed(0)} ms); shorter than ${(1000 * bridge).toFixed(0)} ms would have been read as part of a contact: lower the shortest flight if contacts are missing`,
      values: { flights: short.length, shortest: Math.min(...short), bridge },
    });
  }
  return cautions;
}

/**
 * Times from each toe-off to the next initial contact on the same plate: feet on different plates may
 * overlap.
 */
function flightsOf(contacts: readonly Contact[]): number[] {
  const left = new Map<number | undefined, number>();
  const flights: number[] = [];
  for (const { plate, initialContact, toeOff } of contacts) {
    const before = left.get(plate);
    if (before !== undefined) flights.push(initialContact - before);
    left.set(plate, toeOff);
  }
  return flights;
}
