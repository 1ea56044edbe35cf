import type { GroundReaction } from "../force/index.js";
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
import type { Contact, Step } from "./contact.js";
import { type CrossingRule, findStretches, type Stretch } from "./crossings.js";
import { dropWithin } from "./dropWithin.js";
import { durationCautions } from "./durationCautions.js";
import { GAITS, type Gait } from "./gait/gait.js";
import { gaitCautions } from "./gait/gaitCautions.js";
import { tellGait } from "./gait/tellGait.js";
import { recordedSides } from "./recordedSides.js";
import { severalInOne } from "./severalInOne.js";
import { partSharedStretches } from "./shared/partSharedStretches.js";
import { type SharedStretches, sharedStretches } from "./sharedStretches.js";
import { type SideMethod, type Sides, tellSides } from "./sides.js";
import { singleSupports } from "./singleSupports.js";
import { stepsOf } from "./stepsOf.js";
import { chooseThreshold, levelAbove, type ThresholdRule } from "./threshold.js";

/** How contacts are told from flight. */
export interface DetectEventsOptions {
  /**
   * Level both events are read at, N; where this and the two below are `null`, the larger of 20 N and the flights' mean + 5
   * SD.
   */
  readonly threshold?: Newtons | null | undefined;
  /** The level as a share of body weight: of the stated mass, else of the one by force from a first pass. */
  readonly thresholdShare?: Fraction | null | undefined;
  /** The level as the flights' mean + this many standard deviations, whatever that is in newtons. */
  readonly noiseFactor?: number | null | undefined;
  /** Level, as a share of the threshold, below which the force must fall before a contact can end. */
  readonly fallShare?: Fraction | undefined;
  /** A shorter drop below the threshold is bridged, s. */
  readonly shortestFlight?: Seconds | undefined;
  /** What is shorter is no contact, s. */
  readonly shortestContact?: Seconds | undefined;
  /** Foot of the first complete contact; `null` for what the recording states, if anything. */
  readonly firstFoot?: Side | null | undefined;
  /** What the recording holds; `auto` tells it from the contacts, with a `Caution` where that is not sure. */
  readonly gait?: Gait | "auto" | undefined;
}

/**
 * Threshold by rule; hysteresis, bridge and shortest contact as chosen for noise of a force treadmill. Common
 * practice.
 */
export const DETECT_EVENTS_DEFAULTS: Complete<DetectEventsOptions> = {
  threshold: null,
  thresholdShare: null,
  noiseFactor: null,
  fallShare: 0.5,
  shortestFlight: 0.03,
  shortestContact: 0.08,
  firstFoot: null,
  gait: "auto",
};

/** Standard deviations of the force in flight that the fall level stays above its mean. */
const FALL_NOISE_FACTOR = 3;

/** Contacts with what they were found by. */
export interface Events {
  readonly contacts: readonly Contact[];
  /**
   * Cut by the recording's ends or by a change of foot that could not be told, part of a foot that stands on two
   * plates which are kept apart, or several contacts that were read as one.
   */
  readonly partialContacts: readonly Contact[];
  readonly settings: {
    readonly threshold: Newtons;
    readonly thresholdRule: ThresholdRule;
    /** As asked for; `null` where the threshold does not come from it. */
    readonly thresholdShare: Fraction | null;
    readonly noiseFactor: number | null;
    readonly fallLevel: Newtons;
    readonly shortestFlight: Seconds;
    readonly shortestContact: Seconds;
    readonly sides: SideMethod;
    /** `null` where there is no contact to tell it from. */
    readonly gait: Gait | null;
    readonly gaitStated: boolean;
  };
  readonly cautions: readonly Caution[];
}

/**
 * Finds initial contacts and toe-offs by a force threshold, complete contacts and those that are none: cut by the recording
 * or by the gap between two plates, or several in one.
 *
 * Formula: initial contact where the vertical force rises through the threshold, toe-off where it last falls
 * through it, linear between samples; a contact ends only once the force was below the fall level (half the
 * threshold) and stayed below the threshold for 30 ms; shorter than 80 ms is no contact. Both feet of a walker on
 * one plate: the vertical force under each is what divides the line between the ways of the two feet as the centre of
 * pressure does, these ways carried on from single support.
 * Units: N in; s from the first sample out.
 * Limits: where plates are kept apart, contacts are found on each, at one threshold for all that clears the
 * noise of each, and told in order of initial contact; one foot across two of them makes two partial contacts.
 * Two feet on one plate are parted only where the centre of pressure
 * was recorded along `right` and passes regularly from side to side; on synthetic walks whose feet roll, with noise, events lie
 * 1 ± 1 ms off where it was recorded along `forward` as well and 2 ± 2 ms where not (no open recording was at hand). A
 * threshold below four standard deviations of the noise in flight moves events by tens of milliseconds
 * unseen, so the default is five above the mean; on a low-passed copy, whose successive samples resemble each
 * other, five come to some 4.3 of the true deviation. Several contacts that were read as one are left out, with a
 * `Caution`: where the force falls below the fall level between two loads of like size, or below half of them in what lasts
 * longer than 1.6 medians of five or more others; what lasts 1 s in running or 3 s in walking; both feet of a walker that
 * could not be parted.
 * Jumping and standing have contacts of the body: no sides, no steps.
 * Source: force threshold with linear interpolation, common practice; hysteresis and durations chosen on
 * synthetic truth; duty factor 0.5 between walking and running, common practice; parting by the centre of pressure, statics.
 * @param ground - Force with offset and drift removed.
 * @param options - {@link DETECT_EVENTS_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: threshold or noise factor not above 0, share of body weight outside (0, 1), fall share outside (0, 1], negative durations, an unknown gait;
 * `conflict`: two rules for the threshold; `missing-value`: a share of a body weight that is not known, a noise factor without flights.
 * @example
 * detectEvents(ground).settings.threshold // 20
 * detectEvents(ground).settings.gait // "running"
 */
export function detectEvents(ground: GroundReaction, options: DetectEventsOptions = {}): Events {
  const settings = withDefaults<DetectEventsOptions>(DETECT_EVENTS_DEFAULTS, options);
  const fallShare = requireNumber("fallShare", settings.fallShare, { above: 0, to: 1 });
  const shortestFlight = requireNumber("shortestFlight", settings.shortestFlight, { from: 0, unit: "s" });
  const shortestContact = requireNumber("shortestContact", settings.shortestContact, { from: 0, unit: "s" });
  if (settings.firstFoot !== null) requireOneOf("firstFoot", settings.firstFoot, ["left", "right"]);
  const stated = requireOneOf("gait", settings.gait, ["auto", ...GAITS]);

  const chosen = chooseThreshold(ground, settings, () =>
    firstSteps(detectEvents(ground, { ...options, thresholdShare: null })),
  );
  const { threshold } = chosen;
  // A force that stays above the fall level in flight would never end a contact.
  const inFlight = Math.max(0, ...chosen.noises.map((plate) => levelAbove(plate, FALL_NOISE_FACTOR)));
  const fallLevel = Math.min(threshold, Math.max(fallShare * threshold, inFlight));
  const whole = stretchesOf(ground, { threshold, fallLevel, shortestFlight, shortestContact });
  const parted =
    stated === "auto" || stated === "walking"
      ? partSharedStretches(ground, whole, threshold)
      : { stretches: whole, cautions: [], reasons: [] };
  const { stretches } = parted;
  const shared = sharedStretches(ground, stretches);
  const together = shared.sure ? null : tellGait(ground, stretches);
  const certain = together?.sure === true ? together.gait : null;
  const lands = stated === "auto" ? certain : stated;
  // Two feet of a jump, or of somebody standing, load two plates together as well.
  const across = lands === "jumping" || lands === "standing" ? NOBODY_ACROSS : shared;
  const feet = stretches.filter((_, k) => !across.lesser.has(k));
  const told = tellGait(ground, feet);
  const gait = stated === "auto" ? (told?.gait ?? null) : stated;

  const isPart = (stretch: Stretch) => across.parts.has(stretches.indexOf(stretch));
  const several = severalInOne(stretches, gait, isPart, ground.plates !== undefined);
  const isPartial = (stretch: Stretch) => stretch.cut || isPart(stretch) || several.stretches.has(stretch);

  const sides = sidesOf(ground, feet, gait, {
    foot: settings.firstFoot ?? ground.firstFoot ?? null,
    at: feet.findIndex((stretch) => !isPartial(stretch)),
    several: several.stretches,
  });
  const supports = gait === "walking" ? singleSupports(feet, sides.sides) : [];
  const contacts: Contact[] = [];
  const partialContacts: Contact[] = [];
  stretches.forEach((stretch, k) => {
    const { initialContact, toeOff, plate, level = threshold } = stretch;
    const foot = feet.indexOf(stretches[footOf(k, across)] as Stretch);
    const singleSupport = across.lesser.has(k) ? null : (supports[foot] ?? null);
    (isPartial(stretch) ? partialContacts : contacts).push({
      side: sides.sides[foot] as Contact["side"],
      initialContact,
      toeOff,
      threshold: level,
      ...(plate !== undefined && { plate }),
      ...(stretch.shared && { shared: stretch.shared }),
      ...(singleSupport !== null && { singleSupport }),
    });
  });
  return {
    contacts,
    partialContacts,
    settings: {
      threshold,
      thresholdRule: chosen.rule,
      thresholdShare: settings.thresholdShare,
      noiseFactor: settings.noiseFactor,
      fallLevel,
      shortestFlight,
      shortestContact,
      sides: sides.method,
      gait,
      gaitStated: stated !== "auto",
    },
    cautions: [
      ...chosen.cautions,
      ...parted.cautions,
      ...across.cautions,
      ...gaitCautions(
        told,
        stated,
        parted.reasons,
        stretches.some(({ untold }) => untold),
      ),
      ...durationCautions(contacts, stretches.length, several, shortestFlight, gait),
      ...(contacts.length > 1 ? sides.cautions : []),
    ],
  };
}

function firstSteps({ contacts, partialContacts }: Events): Step[] {
  return stepsOf(contacts, partialContacts);
}

const NOBODY_ACROSS: SharedStretches = {
  parts: /* @__PURE__ */ new Set(),
  lesser: /* @__PURE__ */ new Map(),
  cautions: [],
  sure: false,
};

/** The feet of a gait of steps; of jumps and standing what the recording itself names. */
function sidesOf(
  ground: GroundReaction,
  stretches: readonly Stretch[],
  gait: Gait | null,
  first: { readonly foot: Side | null; readonly at: number; readonly several: ReadonlySet<Stretch> },
): Sides {
  if (gait !== "jumping" && gait !== "standing") {
    return tellSides(ground, stretches, first.foot, first.at, first.several);
  }
  const named = recordedSides(ground, stretches);
  return {
    sides: stretches.map((_, k) => named?.sides[k] ?? "unknown"),
    method: named?.by ?? "none",
    cautions: [],
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
  const on = (up: Float64Array) =>
    findStretches(up, sampleRate, rule).map((stretch): Stretch => {
      const drop = dropWithin(up, sampleRate, stretch, rule);
      return drop == null ? stretch : { ...stretch, drop };
    });
  if (plates === undefined) return on(ground.force.up);
  return plates
    .flatMap(({ force }, plate) => on(force.up).map((stretch): Stretch => ({ ...stretch, plate })))
    .sort((a, b) => a.initialContact - b.initialContact || a.toeOff - b.toeOff);
}
