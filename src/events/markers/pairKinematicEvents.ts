import type { Side } from "../../recording/index.js";
import {
  type Caution,
  type Complete,
  fail,
  requireFiniteSamples,
  requireNumber,
  type Seconds,
  withDefaults,
} from "../../units/index.js";

/** Events of one foot, as every detector without force gives them. */
export interface FootEvents {
  readonly method: string;
  readonly side: Side | "unknown";
  readonly initialContacts: readonly Seconds[];
  readonly toeOffs: readonly Seconds[];
}

/** One time that one foot is on the ground, told without force: no level of force was crossed. */
export interface KinematicContact {
  readonly side: Side | "unknown";
  readonly initialContact: Seconds;
  readonly toeOff: Seconds;
  /** How both were told. */
  readonly method: string;
}

/** Which initial contact and toe-off belong together. */
export interface PairKinematicEventsOptions {
  /** What is shorter is no contact, s. */
  readonly shortestContact?: Seconds | undefined;
  /** What is longer is no contact, s. */
  readonly longestContact?: Seconds | undefined;
  /** Added to all times, s: of the markers' first frame less that of the force's first sample, on one clock. */
  readonly delay?: Seconds | undefined;
}

/** Shortest as with a force threshold; longest that of slow walking. Common practice. */
export const PAIR_KINEMATIC_EVENTS_DEFAULTS: Complete<PairKinematicEventsOptions> = {
  shortestContact: 0.08,
  longestContact: 1.5,
  delay: 0,
};

/** Contacts with what found no partner. */
export interface PairedEvents {
  /** Of all feet, in order of their initial contact. */
  readonly contacts: readonly KinematicContact[];
  /** Initial contacts without a toe-off; a recording that ends in contact has one a foot. */
  readonly unpairedContacts: number;
  /** Toe-offs without an initial contact; a recording that starts in contact has one a foot. */
  readonly unpairedToeOffs: number;
  readonly cautions: readonly Caution[];
}

/**
 * Pairs initial contacts and toe-offs of one or both feet into contacts, in order of time.
 *
 * Formula: an initial contact and the first toe-off of that foot after it belong together, unless another initial contact of
 * the foot comes between, or the time between them is no contact's.
 * Units: s.
 * Limits: what has no partner is left out and counted; more of it than a recording's two ends explain is a `Caution`.
 * Source: definition.
 * @param feet - Events by foot; two entries of one side are refused.
 * @param options - {@link PAIR_KINEMATIC_EVENTS_DEFAULTS} where left out.
 * @throws GaitKineticsError `conflict`: a side given twice; `out-of-range`, `not-finite`, `wrong-type`: options or times.
 * @example
 * const left = { method: "footage", side: "left", initialContacts: [0.5, 1.25], toeOffs: [0.75, 1.5] }
 * pairKinematicEvents([left]).contacts.length // 2
 * pairKinematicEvents([left], { delay: 0.25 }).contacts[0].initialContact // 0.75
 */
export function pairKinematicEvents(
  feet: readonly FootEvents[],
  options: PairKinematicEventsOptions = {},
): PairedEvents {
  const settings = withDefaults<PairKinematicEventsOptions>(PAIR_KINEMATIC_EVENTS_DEFAULTS, options);
  const shortest = requireNumber("shortestContact", settings.shortestContact, { from: 0, unit: "s" });
  const longest = requireNumber("longestContact", settings.longestContact, { above: shortest, unit: "s" });
  const delay = requireNumber("delay", settings.delay, { unit: "s" });
  const twice = feet.find((foot, k) => feet.findIndex(({ side }) => side === foot.side) < k);
  if (twice !== undefined) {
    fail("conflict", `two feet are called "${twice.side}"; give each foot once, with its side`, {
      argument: "feet",
    });
  }
  const paired = feet.map((foot) => pairFoot(foot, shortest, longest, delay));
  const contacts = paired
    .flatMap((foot) => foot.contacts)
    .sort((a, b) => a.initialContact - b.initialContact);
  return {
    contacts,
    unpairedContacts: paired.reduce((sum, foot) => sum + foot.unpairedContacts, 0),
    unpairedToeOffs: paired.reduce((sum, foot) => sum + foot.unpairedToeOffs, 0),
    cautions: paired.flatMap((foot) => foot.cautions),
  };
}

function pairFoot(foot: FootEvents, shortest: number, longest: number, delay: number): PairedEvents {
  requireFiniteSamples("initialContacts", Float64Array.from(foot.initialContacts));
  requireFiniteSamples("toeOffs", Float64Array.from(foot.toeOffs));
  const starts = [...foot.initialContacts].sort((a, b) => a - b);
  const ends = [...foot.toeOffs].sort((a, b) => a - b);
  const contacts = starts.flatMap((start, k): KinematicContact[] => {
    const end = ends.find((time) => time > start);
    const next = starts[k + 1];
    if (end === undefined || (next !== undefined && next < end)) return [];
    const length = end - start;
    if (length < shortest || length > longest) return [];
    return [{ side: foot.side, initialContact: start + delay, toeOff: end + delay, method: foot.method }];
  });
  const unpairedContacts = starts.length - contacts.length;
  const unpairedToeOffs = ends.length - contacts.length;
  const cautions: Caution[] = [];
  if (unpairedContacts > 1 || unpairedToeOffs > 1) {
    cautions.push({
      code: "unpaired-events",
      message: `${foot.side} foot: ${unpairedContacts} of ${starts.length} initial contacts and ${unpairedToeOffs} of ${ends.length} toe-offs have no partner within ${shortest} to ${longest} s; the ends of a recording explain one of each`,
      where: foot.side,
      values: { unpairedContacts, unpairedToeOffs },
    });
  }
  return { contacts, unpairedContacts, unpairedToeOffs, cautions };
}
