import type { Caution } from "../units/index.js";
import type { Contact } from "./contact.js";
import type { Stretch } from "./crossings.js";
import type { Gait } from "./gait/gait.js";
import type { SeveralInOne } from "./severalInOne.js";

/** Flights shorter than this many times the time that is bridged may have been bridged now and then. */
const NEAR_BRIDGE = 1.7;

/**
 * Says which contacts are left out because they hold several, and where flights show that others nearly do.
 * @param all - How many were seen, complete, cut and left out.
 */
export function durationCautions(
  contacts: readonly Contact[],
  all: number,
  { stretches, long, limit, usual }: SeveralInOne,
  bridge: number,
  gait: Gait | null,
): Caution[] {
  if (gait === null || gait === "jumping" || gait === "standing") return [];
  const cautions: Caution[] = [];
  const several = [...stretches];
  const leftOut = several.filter(({ cut }) => !cut).length;
  // Of one that the ends cut, with no whole one beside it, no length is known.
  if (leftOut > 0 || (several.length > 0 && contacts.length > 0)) {
    const longest = longestOf(several);
    const one = several.length === 1;
    cautions.push({
      code: "long-contact",
      message: `${several.length} of ${all} contacts ${one ? "holds" : "hold"} several in one, by ${one ? "its" : "their"} length or by a drop of the force on the way (up to ${longest.toFixed(2)} s; ${usual === null ? "no other is whole" : `median of the others ${usual.toFixed(2)} s`}): the flight between them was shorter than ${(1000 * bridge).toFixed(0)} ms or the force in it too high, or both feet were on one plate, or the person stood still; ${one ? "it is" : "they are"} left out`,
      values: { contacts: several.length, leftOut, limit, longest, median: usual },
    });
  }
  if (long.length > 0) {
    const longest = longestOf(long);
    cautions.push({
      code: "long-contact-kept",
      message: `${long.length} of ${all} contacts ${long.length === 1 ? "lasts" : "last"} longer than ${limit.toFixed(2)} s (up to ${longest.toFixed(2)} s) without a drop of the force on the way: ${long.length === 1 ? "it counts" : "they count"} as one each, as at a start, a stop or a stumble`,
      values: { contacts: long.length, limit, longest, median: usual },
    });
  }
  if (gait === "walking") return cautions;
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

function longestOf(stretches: readonly Stretch[]): number {
  return stretches.reduce((most, { initialContact, toeOff }) => Math.max(most, toeOff - initialContact), 0);
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
