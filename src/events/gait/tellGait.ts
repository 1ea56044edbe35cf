import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import { median } from "../../statistics/index.js";
import type { Stretch } from "../crossings.js";
import { underFoot } from "../underFoot.js";
import {
  type Gait,
  LEAST_WALKING_CONTACT,
  LONGEST_FLIGHT,
  LONGEST_RUNNING_FLIGHT,
  QUIET,
  WALKING_PEAK_TO_MEAN,
} from "./gait.js";

/** A gait and what speaks for it. */
export interface ToldGait {
  readonly gait: Gait;
  readonly sure: boolean;
  /** A part of a sentence. */
  readonly why: string;
}

/**
 * Two plates loaded together for more than this share of the shorter contact are two feet that land as one; in walking feet
 * share about a fifth of a contact. A judgement.
 */
const TWO_FOOTED = 0.5;
/** Mean force of a contact over body weight, W × step ÷ contact time: above 1 with flights, below 1 with double support. */
const FLIGHT_FORCE = 1.05;
const DOUBLE_SUPPORT_FORCE = 0.95;
/** Contacts that are certainly of running by their length alone, s. Common practice. */
const SHORT_CONTACT = 0.35;
/** Where more of the body weight than this is borne on average, no foot is missing. One foot bears half. */
const BOTH_FEET = 0.75;
/** So few short contacts far apart are rather jumps. */
const FEW_HOPS = 4;
/** More peaks than this in one contact are of steps. */
const FEW_LANDINGS = 2;
/** What is shorter is not taken for somebody standing, s. */
const SHORTEST_STANCE = 1;

/**
 * Tells the gait. Double support is walking and flight is running: duty factor above and below 0.5 (common practice). Flights
 * longer than runners have, or two feet that land as one, are jumps. Contacts without neighbours are told by their length, by
 * their mean force (above body weight only where flights follow) and by the trough between the two peaks of walking.
 *
 * @param ground - The copy that events are read from.
 * @param stretches - In order of initial contact.
 * @returns `null` without any stretch.
 */
export function tellGait(ground: GroundReaction, stretches: readonly Stretch[]): ToldGait | null {
  if (stretches.length === 0) return null;
  if (stretches.some(({ shared }) => shared)) {
    return { gait: "walking", sure: true, why: "both feet pass the load from one to the other" };
  }
  const { overlaps, landTogether, flights } = neighboursOf(stretches);
  const pairs = overlaps + landTogether + flights.length;
  if (overlaps > 0 && 2 * overlaps >= pairs) {
    return { gait: "walking", sure: true, why: "contacts overlap (double support)" };
  }
  if (landTogether > 0 && 2 * landTogether >= pairs) {
    if (flights.length === 0) return standingOf(ground, stretches);
    // With flights as short as runners have, one foot may have crossed from plate to plate each time.
    const sure = median(flights) > LONGEST_RUNNING_FLIGHT;
    return { gait: "jumping", sure, why: "both feet land and leave together" };
  }
  const complete = stretches.filter(({ cut, drop }) => !cut && drop !== "whole");
  const flight = flights.length === 0 ? null : median(flights);
  if (complete.length === 0) {
    if (flight === null) return standingOf(ground, stretches);
    return flight > LONGEST_RUNNING_FLIGHT
      ? { gait: "jumping", sure: true, why: flightWords(flight) }
      : { gait: "running", sure: false, why: "there is a short flight, and no complete contact" };
  }
  const walkers = complete.filter((stretch) => looksLikeWalking(ground, stretch)).length;
  if (2 * walkers > complete.length) {
    return { gait: "walking", sure: true, why: "contacts are long, with a trough between two peaks" };
  }
  const contact = median(complete.map(lengthOf));
  if (flight !== null && flight > LONGEST_RUNNING_FLIGHT) {
    return contact >= LEAST_WALKING_CONTACT
      ? { gait: "jumping", sure: true, why: flightWords(flight) }
      : hopsOrOneFoot(ground, complete, flight);
  }
  if (flight !== null && contact < LEAST_WALKING_CONTACT) {
    return { gait: "running", sure: true, why: "flights part the contacts" };
  }
  return withoutNeighbours(ground, complete, contact);
}

/** What follows each other: double supports, feet that land as one, flights, s. */
function neighboursOf(stretches: readonly Stretch[]): {
  overlaps: number;
  landTogether: number;
  flights: number[];
} {
  let overlaps = 0;
  let landTogether = 0;
  const flights: number[] = [];
  for (let k = 0; k + 1 < stretches.length; k++) {
    const here = stretches[k] as Stretch;
    const next = stretches[k + 1] as Stretch;
    const common = Math.min(here.toeOff, next.toeOff) - next.initialContact;
    if (common > 0) {
      if (common > TWO_FOOTED * Math.min(lengthOf(here), lengthOf(next))) landTogether++;
      else overlaps++;
    } else if (-common <= (here.plate === next.plate ? LONGEST_FLIGHT : LONGEST_RUNNING_FLIGHT)) {
      // After more time between two plates a step may have fallen beside them.
      flights.push(-common);
    }
  }
  return { overlaps, landTogether, flights };
}

function flightWords(flight: number): string {
  return `a flight of ${flight.toFixed(2)} s is longer than runners have`;
}

function lengthOf({ initialContact, toeOff }: Stretch): number {
  return toeOff - initialContact;
}

/**
 * As long as one foot of a walker stays, with less at the middle than at the two peaks, and not bearing more than body weight
 * on average. Where no mass tells, what is quiet at the middle is somebody standing.
 */
function looksLikeWalking(ground: GroundReaction, stretch: Stretch): boolean {
  if (lengthOf(stretch) < LEAST_WALKING_CONTACT || stretch.untold) return false;
  const { mean, peak, deviation } = loadOf(ground, stretch);
  const share = bodyWeights(ground, mean);
  return (
    peak < WALKING_PEAK_TO_MEAN * mean &&
    deviation >= QUIET * mean &&
    (share === null ? !isQuiet(ground, stretch) : share < DOUBLE_SUPPORT_FORCE)
  );
}

/** Whether the force stays even at the middle of a stretch, clear of stepping on and off. */
function isQuiet(ground: GroundReaction, stretch: Stretch): boolean {
  const quarter = lengthOf(stretch) / 4;
  const middle = {
    ...stretch,
    initialContact: stretch.initialContact + quarter,
    toeOff: stretch.toeOff - quarter,
  };
  const { mean, deviation } = loadOf(ground, middle);
  return deviation < QUIET * mean;
}

/** Short contacts far apart: of hops, which bear the body weight on average, or of one foot of a runner, which bears half. */
function hopsOrOneFoot(ground: GroundReaction, complete: readonly Stretch[], flight: number): ToldGait {
  const [first, last] = [complete[0], complete.at(-1)];
  const from = first?.initialContact ?? 0;
  const to = last?.initialContact ?? 0;
  const impulse = to > from ? integralBetween(ground.force.up, ground.sampleRate, from, to) : 0;
  const share = to > from ? bodyWeights(ground, impulse / (to - from)) : null;
  const why = flightWords(flight);
  if (share !== null && share > BOTH_FEET) return { gait: "jumping", sure: true, why };
  if (complete.length < FEW_HOPS) return { gait: "jumping", sure: false, why };
  return {
    gait: "running",
    sure: false,
    why: `${why}: one foot alone was recorded, or these are hops${share === null ? ", which a stated mass would tell" : ""}`,
  };
}

/** One contact at a time, as over a single plate. */
function withoutNeighbours(ground: GroundReaction, complete: readonly Stretch[], contact: number): ToldGait {
  const seconds = `contacts last ${contact.toFixed(2)} s`;
  const shares = complete.flatMap((stretch) => bodyWeights(ground, loadOf(ground, stretch).mean) ?? []);
  const share = shares.length === 0 ? null : median(shares);
  if (contact < LEAST_WALKING_CONTACT) {
    const bears = share !== null && share > FLIGHT_FORCE;
    return { gait: "running", sure: contact < SHORT_CONTACT || bears, why: seconds };
  }
  if (contact >= SHORTEST_STANCE) return standingOf(ground, complete);
  if (share !== null && share > FLIGHT_FORCE) {
    return { gait: "running", sure: false, why: `${seconds} and bear more than body weight` };
  }
  return { gait: "walking", sure: false, why: seconds };
}

/**
 * Nobody leaves the ground: standing where the force is quiet, contacts of running that run into one another where it peaks
 * again and again, a landing where it does so once or twice, else perhaps a walk with both feet on one plate.
 */
function standingOf(ground: GroundReaction, stretches: readonly Stretch[]): ToldGait {
  if (stretches.every((stretch) => isQuiet(ground, stretch))) {
    return { gait: "standing", sure: true, why: "the force stays even" };
  }
  const peaks = Math.max(...stretches.map((stretch) => loadOf(ground, stretch).peaks));
  return {
    gait: peaks > FEW_LANDINGS ? "running" : peaks > 0 ? "jumping" : "walking",
    sure: false,
    why: "the force varies, and nobody is seen to leave the ground",
  };
}

/** Mean, largest and standard deviation of the vertical force of a stretch, N, and how often it rises far above the mean. */
function loadOf(
  ground: GroundReaction,
  stretch: Stretch,
): { mean: number; peak: number; deviation: number; peaks: number } {
  const { up } = underFoot(ground, stretch).force;
  const { sampleRate } = ground;
  const { initialContact, toeOff } = stretch;
  const first = Math.ceil(initialContact * sampleRate);
  const last = Math.min(up.length - 1, Math.floor(toeOff * sampleRate));
  const mean = integralBetween(up, sampleRate, initialContact, toeOff) / (toeOff - initialContact);
  let peak = 0;
  let squares = 0;
  let peaks = 0;
  let above = false;
  for (let i = first; i <= last; i++) {
    const value = up[i] as number;
    if (value > peak) peak = value;
    squares += (value - mean) ** 2;
    if (value > WALKING_PEAK_TO_MEAN * mean && !above) peaks++;
    above = value > WALKING_PEAK_TO_MEAN * mean;
  }
  return { mean, peak, deviation: Math.sqrt(squares / Math.max(1, last - first + 1)), peaks };
}

/** A force as a share of the stated body weight; `null` where none is stated. */
function bodyWeights({ subject, gravity, grade = 0 }: GroundReaction, force: number): number | null {
  return subject.mass === undefined ? null : (force * Math.hypot(1, grade)) / (subject.mass * gravity);
}
