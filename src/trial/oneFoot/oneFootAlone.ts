import type { Contact } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { massFromForce } from "../../models/index.js";
import type { Caution, Fraction, Seconds } from "../../units/index.js";
import { hasSteps } from "../gait.js";
import { FEW_CONTACTS, LONGEST_STRIDE, spacingOf } from "../quality/spacingOf.js";
import type { ToldEvents } from "../sidesByMarkers.js";

/** No step of a runner has a longer flight, s: 0.25 s are a height of 77 mm. A judgement. */
const LONGEST_FLIGHT: Seconds = 0.25;
/** Where the ground carries more of the stated mass than this, no foot is missing. One foot carries half. */
const BOTH_FEET: Fraction = 0.75;

/**
 * Says where one foot alone seems to have been recorded: the contacts come too far apart for steps, and the ground does not
 * carry the stated mass. Contacts whose feet the recording itself names, some left and some right, are of both.
 */
export function oneFootAlone(ground: GroundReaction, events: ToldEvents): Caution | null {
  const { contacts, partialContacts, settings } = events;
  if (contacts.length < FEW_CONTACTS || !hasSteps(settings.gait) || namesBoth(events)) return null;
  const { usual, gap } = spacingOf(contacts, partialContacts);
  if (usual > LONGEST_STRIDE || gap <= LONGEST_FLIGHT) return null;
  const carried = carriedShare(ground, contacts);
  if (carried !== null && carried > BOTH_FEET) return null;
  return {
    code: "one-foot",
    message: `the contacts come ${usual.toFixed(2)} s apart with ${gap.toFixed(2)} s between them (median), longer than the flight of any step: every second contact seems to be missing, as where one foot alone was recorded; so all of them are taken to be of one foot, and what belongs to the whole body or to a step is not computed, nor is the mass by force${carried === null ? "; or the runner jumps: a stated mass would tell" : `. The ground carries ${(100 * carried).toFixed(0)} % of the stated mass`}`,
    values: { stepTime: usual, gap, ...(carried !== null && { carried }) },
  };
}

/** Whether every foot is named by plate, mark or marker, and both are. */
function namesBoth({ contacts, settings, cautions }: ToldEvents): boolean {
  const named =
    settings.sides === "plates" || settings.sides === "recorded events" || settings.sides === "markers";
  if (!named || cautions.some(isPartlyNamed)) return false;
  const [first] = contacts;
  return contacts.some(({ side }) => side !== first?.side);
}

/** Whether some contacts have their foot by alternation from the named ones. */
function isPartlyNamed({ code, values }: Caution): boolean {
  return code === "sides-unknown" || (code === "sides-uncertain" && values?.named !== undefined);
}

/** Share of the stated mass that the force carries from the first contact to the last; `null` where none is stated. */
function carriedShare(
  { force, sampleRate, subject, gravity, grade }: GroundReaction,
  contacts: readonly Contact[],
): Fraction | null {
  if (subject.mass === undefined) return null;
  const from = contacts[0]?.initialContact ?? 0;
  const to = contacts.at(-1)?.initialContact ?? 0;
  return massFromForce(force.up, sampleRate, from, to, { gravity, grade }) / subject.mass;
}
