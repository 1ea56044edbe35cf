import { type Step, underFoot } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";

/**
 * Gives the ground reaction under the foot of a step; the whole one where the step holds no contact, which
 * `requireContact` then refuses.
 *
 * @param ground - The recording.
 * @param step - The step to measure.
 * @throws GaitKineticsError `out-of-range`: the contact names a plate that the recording does not have.
 */
export function footOf(ground: GroundReaction, step: Step): GroundReaction {
  return step?.contact == null ? ground : underFoot(ground, step.contact);
}
