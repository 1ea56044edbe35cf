import { type FlightNoise, flightNoise, type GroundReaction } from "../force/index.js";
import type { Side } from "../recording/index.js";
import {
  type Caution,
  type Complete,
  type Fraction,
  type Newtons,
  requireNumber,
  requireOneOf,
  type Seconds,
  withDefaults,
} from "../units/index.js";
import type { Contact } from "./contact.js";
import { type CrossingRule, findStretches, type Stretch } from "./crossings.js";
import { durationCautions } from "./durationCautions.js";
import { type SharedStretches, sharedStretches } from "./sharedStretches.js";
import { type SideMethod, tellSides } from "./sides.js";

/** How contacts are told from flight. */
export interface DetectEventsOptions {
  /** Level both events are read at, N; `null` for the larger of 20 N and the flights' mean + 5 SD. */
  readonly threshold?: Newtons | null | undefined;
  /** Level, as a share of the threshold, below which the force must fall before a contact can end. */
  readonly fallShare?: Fraction | undefined;
  /** A shorter drop below the threshold is bridged, s. */
  readonly shortestFlight?: Seconds | undefined;
  /** What is shorter is no contact, s. */
  readonly shortestContact?: Seconds | undefined;
  /** Foot of the first complete contact; `null` for what the recording states, if anything. */
  readonly firstFoot?: Side | null | undefined;
}

/**
 * Threshold by rule; hysteresis, bridge and shortest contact as chosen for noise of a force treadmill. Common
 * practice.
 */
export const DETECT_EVENTS_DEFAULTS: Complete<DetectEventsOptions> = {
  threshold: null,
  fallShare: 0.5,
  shortestFlight: 0.03,
  shortestContact: 0.08,
  firstFoot: null,
};

/** Least threshold, N. Common practice. */
export const LEAST_THRESHOLD: Newtons = 20;
/** Standard deviations of the force in flight that the threshold stays above its mean. */
export const THRESHOLD_NOISE_FACTOR = 5;

/** Standard deviations of the force in flight that the fall level stays above its mean. */
const FALL_NOISE_FACTOR = 3;

/** Contacts with what they were found by. */
export interface Events {
  readonly contacts: readonly Contact[];
  /** Cut by the recording's ends, or part of a foot that stands on two plates which are kept apart. */
  readonly partialContacts: readonly Contact[];
  readonly settings: {
    readonly threshold: Newtons;
    readonly fallLevel: Newtons;
    readonly shortestFlight: Seconds;
    readonly shortestContact: Seconds;
    readonly sides: SideMethod;
  };
  readonly cautions: readonly Caution[];
}

/**
 * Finds initial contacts and toe-offs by a force threshold, complete contacts and those that the recording or
 * the gap between two plates cuts apart.
 *
 * Formula: initial contact where the vertical force rises through the threshold, toe-off where it last falls
 * through it, linear between samples; a contact ends only once the force was below the fall level (half the
 * threshold) and stayed below the threshold for 30 ms; shorter than 80 ms is no contact.
 * Units: N in; s from the first sample out.
 * Limits: where plates are kept apart, contacts are found on each, at one threshold for all that clears the
 * noise of each, and told in order of initial contact; one foot across two of them makes two partial contacts;
 * two feet on one plate at a time make one contact. A
 * threshold below four standard deviations of the noise in flight moves events by tens of milliseconds
 * unseen, so the default is five above the mean; on a low-passed copy, whose successive samples resemble each
 * other, five come to some 4.3 of the true deviation. Contacts that were read as one are told by their
 * length, in a `Caution`.
 * Source: force threshold with linear interpolation, common practice; hysteresis and durations chosen on
 * synthetic truth.
 * @param ground - Force with offset and drift removed.
 * @param options - {@link DETECT_EVENTS_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: threshold not above 0, share outside (0, 1], negative durations.
 * @example
 * detectEvents(ground).settings.threshold // 20
 */
export function detectEvents(ground: GroundReaction, options: DetectEventsOptions = {}): Events {
  const settings = withDefaults<DetectEventsOptions>(DETECT_EVENTS_DEFAULTS, options);
  const fallShare = requireNumber("fallShare", settings.fallShare, { above: 0, to: 1 });
  const shortestFlight = requireNumber("shortestFlight", settings.shortestFlight, { from: 0, unit: "s" });
  const shortestContact = requireNumber("shortestContact", settings.shortestContact, { from: 0, unit: "s" });
  if (settings.firstFoot !== null) requireOneOf("firstFoot", settings.firstFoot, ["left", "right"]);
  const cautions: Caution[] = [];

  const plates = ground.plates ?? [ground];
  const noises = plates.map(flightNoise).filter((plate) => plate !== null);
  const noise = noisiest(noises, THRESHOLD_NOISE_FACTOR);
  const aboveNoise = noise === null ? 0 : levelAbove(noise, THRESHOLD_NOISE_FACTOR);
  const threshold =
    settings.threshold === null
      ? Math.max(LEAST_THRESHOLD, aboveNoise)
      : requireNumber("threshold", settings.threshold, { above: 0, unit: "N" });
  if (noise !== null && threshold > LEAST_THRESHOLD && settings.threshold === null) {
    cautions.push({
      code: "threshold-raised",
      message: `the contact threshold is ${threshold.toFixed(1)} N instead of ${LEAST_THRESHOLD} N, to stay clear of the force in flight (mean ${noise.mean.toFixed(1)}, SD ${noise.sd.toFixed(1)} N); contact times read shorter`,
      values: { threshold, mean: noise.mean, sd: noise.sd },
    });
  }
  if (noise !== null && settings.threshold !== null && threshold < aboveNoise) {
    cautions.push({
      code: "threshold-in-noise",
      message: `the contact threshold of ${threshold} N lies within the force in flight (mean ${noise.mean.toFixed(1)}, SD ${noise.sd.toFixed(1)} N); events may be tens of milliseconds off, ${aboveNoise.toFixed(0)} N would clear it`,
      values: { threshold, mean: noise.mean, sd: noise.sd },
    });
  }

  // A force that stays above the fall level in flight would never end a contact.
  const inFlight = Math.max(0, ...noises.map((plate) => levelAbove(plate, FALL_NOISE_FACTOR)));
  const fallLevel = Math.min(threshold, Math.max(fallShare * threshold, inFlight));
  const rule = { threshold, fallLevel, shortestFlight, shortestContact };
  const stretches = stretchesOf(ground, rule);
  const firstFoot = settings.firstFoot ?? ground.firstFoot ?? null;
  const shared = sharedStretches(ground, stretches);
  const feet = stretches.filter((_, k) => !shared.lesser.has(k));
  const whole = stretches.find(({ cut }, k) => !cut && !shared.parts.has(k));
  const firstComplete = whole === undefined ? -1 : feet.indexOf(whole);
  const told = tellSides(ground, feet, firstFoot, firstComplete);
  const contacts: Contact[] = [];
  const partialContacts: Contact[] = [];
  stretches.forEach(({ initialContact, toeOff, cut, plate }, k) => {
    const side = told.sides[feet.indexOf(stretches[footOf(k, shared)] as Stretch)] as Contact["side"];
    const on = plate !== undefined && { plate };
    (cut || shared.parts.has(k) ? partialContacts : contacts).push({
      side,
      initialContact,
      toeOff,
      threshold,
      ...on,
    });
  });
  cautions.push(...shared.cautions);
  cautions.push(...durationCautions(contacts, partialContacts, shortestFlight));
  return {
    contacts,
    partialContacts,
    settings: { threshold, fallLevel, shortestFlight, shortestContact, sides: told.method },
    cautions: contacts.length > 1 ? [...cautions, ...told.cautions] : cautions,
  };
}

/** The stretch that tells the foot: its own, or that of the greater part. */
function footOf(k: number, { lesser }: Pick<SharedStretches, "lesser">): number {
  const greater = lesser.get(k);
  return greater === undefined ? k : footOf(greater, { lesser });
}

/** The stretches of every plate in order of initial contact. */
function stretchesOf(ground: GroundReaction, rule: CrossingRule): Stretch[] {
  const { plates, sampleRate } = ground;
  if (plates === undefined) return findStretches(ground.force.up, sampleRate, rule);
  return plates
    .flatMap(({ force }, plate) =>
      findStretches(force.up, sampleRate, rule).map((stretch): Stretch => ({ ...stretch, plate })),
    )
    .sort((a, b) => a.initialContact - b.initialContact || a.toeOff - b.toeOff);
}

function levelAbove({ mean, sd }: FlightNoise, factor: number): number {
  return mean + factor * sd;
}

function noisiest(noises: readonly FlightNoise[], factor: number): FlightNoise | null {
  return noises.reduce<FlightNoise | null>(
    (worst, noise) =>
      worst === null || levelAbove(noise, factor) > levelAbove(worst, factor) ? noise : worst,
    null,
  );
}
