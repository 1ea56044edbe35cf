import { type Events, underFoot } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import { fail, type Seconds } from "../units/index.js";

/** No running contact with a flight on either side fits into less. */
const SHORT_RECORDING: Seconds = 0.5;
/** Largest values that a runner's force has in body weights or in kN; a platform that nobody stands on reads less. */
const LARGEST_RATIO = 10;
const LEAST_RATIO = 0.5;
/** In newtons, a force that stays this near to its mean is a platform's noise. In body weights a step changes it by as much. */
const LEAST_CHANGE = 0.3;

/**
 * Refuses a recording without a complete contact, and says why there is none.
 * @throws GaitKineticsError `no-contact`.
 */
export function refuseNoContact(ground: GroundReaction, events: Events): void {
  const { contacts, partialContacts, settings } = events;
  if (contacts.length > 0) return;
  const { threshold, shortestContact } = settings;
  let least = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  // Of plates kept apart the most loaded one, since contacts are looked for on each.
  for (const { force } of ground.plates ?? [ground]) {
    const [low, high] = extremesOf(force.up);
    if (high > largest) [least, largest] = [low, high];
  }
  const { length } = partialContacts;
  const several = events.cautions.find(({ code }) => code === "long-contact")?.values;
  const fused = typeof several?.leftOut === "number" ? several.leftOut : 0;
  const where = `the recording's ends${ground.plates === undefined ? "" : " or part of a foot across two plates"}`;
  const seen = length === 1 ? "the only contact seen is" : `the ${length} contacts seen are`;
  const none =
    fused === 0 ? `cut by ${where}` : fused === length ? SEVERAL : `cut by ${where}, or ${SEVERAL}`;
  const long =
    fused === 0 ? "" : ` (${length === 1 ? "" : "up to "}${Number(several?.longest).toFixed(2)} s long)`;
  const cut = length === 0 ? "" : `${seen} ${none}${long}; `;
  // A recording shorter than a contact or two says nothing of the platform.
  const short = ground.force.up.length < SHORT_RECORDING * ground.sampleRate;
  const why = short
    ? "; the recording is too short to hold one"
    : noContactBecause(least, largest, settings, fused > 0 || cutAlone(ground, events));
  const parted = events.cautions.find(({ code }) => code === "feet-not-parted");
  const feet = parted === undefined ? "" : `; ${parted.message}`;
  fail(
    "no-contact",
    `no complete contact was found: ${cut}the vertical force reaches ${largest.toFixed(1)} N and a contact must rise above and fall below ${threshold.toFixed(1)} N and last ${shortestContact} s or longer${why}${fused > 0 ? flightsTooShort(settings) : ""}${feet}`,
    { argument: "ground", values: { least, largest, threshold, partialContacts: length } },
  );
}

/** Behind "the contacts seen are". */
const SEVERAL = "several in one";

/** What parts contacts in running, and what to do where it does not. */
function flightsTooShort({ gait, shortestFlight }: Events["settings"]): string {
  return gait === "running"
    ? `; flights are too short or not seen: a drop of less than ${shortestFlight} s is bridged and ends no contact. If the person ran, state a smaller shortestFlight`
    : "";
}

/** Whether all that is seen are contacts that are cut, none of them several in one with flights too short to end it. */
function cutAlone(ground: GroundReaction, { partialContacts, settings }: Events): boolean {
  return (
    partialContacts.length > 0 &&
    partialContacts.every((contact) => {
      const { force, sampleRate } = underFoot(ground, contact);
      const from = Math.ceil(contact.initialContact * sampleRate);
      const inside = force.up.subarray(from, Math.floor(contact.toeOff * sampleRate) + 1);
      return !inside.some((value) => value < settings.fallLevel);
    })
  );
}

function extremesOf(samples: Float64Array): [least: number, largest: number] {
  let least = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  for (const value of samples) {
    if (value < least) least = value;
    if (value > largest) largest = value;
  }
  return [least, largest];
}

function noContactBecause(
  least: number,
  largest: number,
  { threshold, shortestFlight }: Events["settings"],
  cut: boolean,
): string {
  if (least > threshold) {
    return `; it never falls below ${least.toFixed(0)} N: nobody leaves the ground, or the platform was not zeroed`;
  }
  if (largest < threshold) {
    const ratio =
      largest >= LEAST_RATIO &&
      largest <= LARGEST_RATIO &&
      largest - least >= LEAST_CHANGE &&
      least > -LEAST_RATIO;
    return ratio ? "; is it in body weights or kN? Forces are taken in N" : "";
  }
  return cut
    ? ""
    : `; it rises and falls, but stays up for less, or stays down for less than the ${shortestFlight} s that end a contact: is the sampling rate right?`;
}
