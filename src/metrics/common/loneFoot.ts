import { type Step, underFoot } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { requireContact } from "./requireContact.js";

/** The ground reaction under a foot and the part of its contact in which it is this foot's alone. */
export interface LoneFoot {
  readonly foot: GroundReaction;
  readonly from: Seconds;
  readonly to: Seconds;
}

/**
 * Gives the ground reaction under the foot of a step with the time in which it is this foot's: the whole contact or, of feet
 * that share a plate, their single support; `null` where that is not known.
 *
 * @param ground - The recording.
 * @param step - The step to measure.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: the contact does not rise within the recording, or
 * names a plate that it does not have.
 */
export function loneFoot(ground: GroundReaction, step: Step): LoneFoot | null {
  const contact = requireContact(ground, step);
  const foot = underFoot(ground, contact);
  const { initialContact, toeOff, shared, singleSupport } = contact;
  if (!shared) return { foot, from: initialContact, to: toeOff };
  return singleSupport === undefined ? null : { foot, ...singleSupport };
}
