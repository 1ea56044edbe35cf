import { integralBetween } from "../filters/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../force/index.js";
import type { Side } from "../recording/index.js";
import { median } from "../statistics/index.js";
import type { Caution } from "../units/index.js";
import type { Contact } from "./contact.js";
import type { Stretch } from "./crossings.js";
import { type RecordedSides, recordedSides } from "./recordedSides.js";
import { medianStepTime } from "./stepsOf.js";
import { underFoot } from "./underFoot.js";

/** How left and right were told apart. */
export type SideMethod =
  | "plates"
  | "recorded events"
  | "centre of pressure"
  | "first foot"
  | "mediolateral force"
  | "alternation"
  | "none";

/** The foot of every stretch and how it was told. */
export interface Sides {
  readonly sides: readonly Contact["side"][];
  readonly method: SideMethod;
  readonly cautions: readonly Caution[];
}

/** Share of contacts whose own evidence must agree with the side they are given. */
const LEAST_AGREEMENT = 0.8;
/** Voices of a foot that the recording names against one of a contact's own evidence. */
const NAMED_VOTE = 1000;
/** So few contacts on plates cannot show by their times that a step between them fell beside the plates. */
const FEW_CONTACTS = 3;
/** After more than this many median step times a contact was missed, or the runner stumbled or paused. */
const IRREGULAR = 1.4;
/** After a pause of this many median step times the number of contacts that passed is not known. */
const PAUSE = 2.5;
/** A time that is a whole number of median step times within this share tells how many contacts passed. */
const CLEAR = 0.25;

/**
 * Tells left from right. What the recording itself names, the foot of a belt or of a marked event, is taken.
 * Else feet alternate in time, a missed or doubled contact counted by the time that passed; which of the two
 * feet is which is voted by all contacts since the last irregular step: the stated first foot where there is
 * one, else the centre of pressure against that of its neighbours (the right foot lands to the right), else
 * the sign of the net mediolateral impulse (the right foot's stance pushes the body to the left). Without any
 * of these the labels alternate from "right" and only tell the two feet apart; a single contact stays
 * "unknown".
 * @param complete - Index of the first complete stretch, which the stated first foot belongs to; −1 for none.
 * @param several - Stretches that hold more contacts than one, whose place and push speak for no foot.
 */
export function tellSides(
  ground: GroundReaction,
  stretches: readonly Stretch[],
  firstFoot: Side | null,
  complete: number,
  several: ReadonlySet<Stretch>,
): Sides {
  const named = recordedSides(ground, stretches);
  const { parity, segment, counted } = alternation(stretches, several);
  const places = stretches.map((stretch) => {
    const { initialContact, toeOff } = stretch;
    // The middle half; of a foot that shares its plate, the middle third, clear of most double supports.
    const clear = (toeOff - initialContact) / (stretch.shared ? 3 : 4);
    const foot = underFoot(ground, stretch);
    return meanCentreOfPressure(foot, "right", initialContact + clear, toeOff - clear);
  });
  const placed = places.every((place) => place !== null) && stretches.length > 1;
  const pushed = pushes(ground, stretches);
  const evidence = placed ? sideways(places as number[]) : pushed;
  const method: SideMethod =
    firstFoot !== null && complete >= 0
      ? "first foot"
      : evidence === null
        ? "alternation"
        : placed
          ? "centre of pressure"
          : "mediolateral force";

  // One vote per segment: is an even parity the right foot? Each contact has one voice, so that no odd value
  // outweighs the rest.
  const votes = new Map<number, number>();
  if (evidence !== null) {
    evidence.forEach((value, k) => {
      const s = segment[k] as number;
      votes.set(s, (votes.get(s) ?? 0) + Math.sign(parity[k] === 0 ? value : -value));
    });
  }
  if (method === "first foot") {
    const own = segment[complete] as number;
    const stated = (firstFoot === "right") === (parity[complete] === 0) ? 1 : -1;
    // Evidence that contradicts what was stated is taken to point the other way throughout.
    if ((votes.get(own) ?? 0) * stated < 0) for (const [s, vote] of votes) votes.set(s, -vote);
    votes.set(own, stated);
  }
  // Feet that are named outvote what is inferred for the others of their segment.
  named?.sides.forEach((side, k) => {
    if (side === null) return;
    const s = segment[k] as number;
    votes.set(s, (votes.get(s) ?? 0) + NAMED_VOTE * ((side === "right") === (parity[k] === 0) ? 1 : -1));
  });
  // A segment without a clear vote goes on as the one before it.
  let evenIsRight = true;
  const sides = stretches.map((_, k): Side => {
    const vote = votes.get(segment[k] as number) ?? 0;
    if (vote !== 0) evenIsRight = vote > 0;
    return named?.sides[k] ?? (evenIsRight === (parity[k] === 0) ? "right" : "left");
  });
  if (named !== null) {
    return { sides, method: named.by, cautions: namedCautions(named, sides, stretches, firstFoot, complete) };
  }
  if (sides.length === 1 && method !== "first foot") return { sides: ["unknown"], method, cautions: [] };
  const cautions = cautionsOf(method, sides, evidence, placed ? pushed : null, counted);
  if (ground.plates !== undefined && stretches.length <= FEW_CONTACTS && method !== "first foot") {
    cautions.push({
      code: "sides-uncertain",
      message: `left and right of ${stretches.length} contacts were told as if no step had fallen beside the plates; state the foot of each plate to be sure`,
      values: { contacts: stretches.length },
    });
  }
  return { sides, method, cautions };
}

/**
 * Parity of each stretch by the number of step times that passed, and the segment between irregular steps it
 * belongs to. `counted`: whether every time that passed tells how many contacts did.
 */
function alternation(
  stretches: readonly Stretch[],
  several: ReadonlySet<Stretch>,
): {
  parity: number[];
  segment: number[];
  counted: boolean;
} {
  const step = stepTimeOf(stretches, several);
  const parity = [0];
  const segment = [0];
  let counted = true;
  for (let k = 1; k < stretches.length; k++) {
    const before = stretches[k - 1] as Stretch;
    const here = stretches[k] as Stretch;
    // A stretch that the start cuts has no initial contact of its own: time runs from toe-off to toe-off
    // there.
    const passed =
      (before.cut ? here.toeOff - before.toeOff : here.initialContact - before.initialContact) / step;
    const steps = before.cut ? Math.max(1, Math.round(passed)) : Math.round(passed);
    parity.push(((parity[k - 1] as number) + steps) % 2);
    segment.push((segment[k - 1] as number) + (passed > IRREGULAR ? 1 : 0));
    if (passed > PAUSE || (passed > IRREGULAR && Math.abs(passed - Math.round(passed)) > CLEAR))
      counted = false;
  }
  return { parity, segment, counted };
}

/** Median over steps that begin with a single whole contact; over all of them where there is none. */
function stepTimeOf(stretches: readonly Stretch[], several: ReadonlySet<Stretch>): number {
  const whole = stretches.filter(({ cut }) => !cut);
  const steps = whole.slice(1).flatMap((next, k) => {
    const here = whole[k] as Stretch;
    return several.has(here) ? [] : [next.initialContact - here.initialContact];
  });
  return steps.length > 0 ? median(steps) : (medianStepTime(whole) ?? medianStepTime(stretches) ?? 1);
}

/** How far to the right of its neighbours each place lies. */
function sideways(places: readonly number[]): number[] {
  return places.map((place, k) => {
    const neighbours = [places[k - 1], places[k + 1]].filter((value) => value !== undefined);
    return place - neighbours.reduce((sum, value) => sum + value, 0) / neighbours.length;
  });
}

/** Net push of the ground to the left during each stretch, N·s: positive speaks for the right foot. */
function pushes(ground: GroundReaction, stretches: readonly Stretch[]): number[] | null {
  const { right } = ground.force;
  if (right === undefined || stretches.length < 2) return null;
  const net = stretches.map((stretch) => {
    const foot = underFoot(ground, stretch).force.right ?? right;
    const { initialContact, toeOff, shared } = stretch;
    const third = shared ? (toeOff - initialContact) / 3 : 0;
    return -integralBetween(foot, ground.sampleRate, initialContact + third, toeOff - third);
  });
  return sideways(net);
}

/** Cautions where the recording names the feet of some contacts only, or not the foot that was stated. */
function namedCautions(
  { sides: named, by }: RecordedSides,
  sides: readonly Side[],
  stretches: readonly Stretch[],
  firstFoot: Side | null,
  complete: number,
): Caution[] {
  const cautions: Caution[] = [];
  const contacts = stretches.filter(({ cut }) => !cut).length;
  const inferred = named.filter((side, k) => side === null && stretches[k]?.cut === false).length;
  if (inferred > 0) {
    cautions.push({
      code: "sides-uncertain",
      message: `the ${by} name the foot of ${contacts - inferred} of ${contacts} contacts; the others were told by alternation`,
      values: { named: contacts - inferred, contacts },
    });
  }
  if (firstFoot !== null && complete >= 0 && sides[complete] !== firstFoot) {
    cautions.push({
      code: "sides-uncertain",
      message: `the first foot is stated as ${firstFoot}, but the ${by} say ${sides[complete]}; the ${by} were followed`,
    });
  }
  return cautions;
}

function cautionsOf(
  method: SideMethod,
  sides: readonly Side[],
  evidence: readonly number[] | null,
  second: readonly number[] | null,
  counted: boolean,
): Caution[] {
  const cautions: Caution[] = [];
  const advice = method === "first foot" ? "check the first foot that is stated" : "state the first foot";
  const agreement = evidence === null || sides.length < 2 ? 1 : agreementOf(sides, evidence);
  if (agreement < LEAST_AGREEMENT) {
    cautions.push({
      code: "sides-uncertain",
      message: `left and right are uncertain: ${method === "first foot" ? "what was recorded" : `the ${method}`} agrees with the side given for ${Math.round(100 * agreement)} % of the contacts; ${advice}`,
      values: { agreement },
    });
  } else if (second !== null && sides.length > 1 && agreementOf(sides, second) < 1 - LEAST_AGREEMENT) {
    cautions.push({
      code: "sides-uncertain",
      message: `left and right are uncertain: the mediolateral force speaks against the ${method}, as where the feet cross the midline or an axis points the other way; ${advice}`,
      values: { agreement: agreementOf(sides, second) },
    });
  }
  if (method === "mediolateral force") {
    cautions.push({
      code: "sides-from-force",
      message:
        "left and right were told by the sign of the mediolateral impulse, which is weak evidence; state the first foot to be sure",
    });
  }
  if (method === "alternation" || (!counted && evidence === null)) {
    cautions.push({
      code: "sides-relative",
      message:
        method === "alternation"
          ? "nothing recorded tells left from right: the two feet are told apart by alternation, and which is called right is arbitrary; state the first foot"
          : "after a pause or an irregular step nothing tells left from right: the labels behind it may be exchanged",
    });
  }
  return cautions;
}

/** Share of contacts whose own evidence speaks for the side they were given. */
function agreementOf(sides: readonly Side[], evidence: readonly number[]): number {
  return sides.filter((side, k) => (side === "right") === (evidence[k] as number) > 0).length / sides.length;
}
