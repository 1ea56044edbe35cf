import { type Contact, underFoot } from "../events/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../force/index.js";
import { mean } from "../statistics/index.js";
import type { Metres, Seconds } from "../units/index.js";
import { aloneOnPlate } from "./aloneOnPlate.js";

/** Contacts that follow one another by more are of two passes over the plates, s. No step lasts longer; common practice. */
const LONGEST_STEP: Seconds = 1.6;

/** How far and how fast the feet move on in the frame of the force. */
export interface MeanStep {
  readonly forward: Metres;
  readonly right: Metres;
  readonly time: Seconds;
}

/** The mean way of the centre of pressure from one contact to the next, and the mean time; `null` without two such contacts. */
export function meanStep(ground: GroundReaction, contacts: readonly Contact[]): MeanStep | null {
  const places = contacts.map((contact) => {
    const { from, to } = aloneOnPlate(contact);
    const along = (direction: "forward" | "right") =>
      meanCentreOfPressure(underFoot(ground, contact), direction, from, to);
    return { at: contact.initialContact, forward: along("forward"), right: along("right") };
  });
  const steps = places.slice(1).flatMap((next, k): MeanStep[] => {
    const here = places[k] as (typeof places)[number];
    const time = next.at - here.at;
    if (here.forward === null || next.forward === null || time > LONGEST_STEP) return [];
    return [{ time, forward: next.forward - here.forward, right: (next.right ?? 0) - (here.right ?? 0) }];
  });
  if (steps.length === 0) return null;
  const typical = (part: keyof MeanStep) => mean(steps.map((step) => step[part]));
  return { forward: typical("forward"), right: typical("right"), time: typical("time") };
}
