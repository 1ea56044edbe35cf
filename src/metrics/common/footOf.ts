import { type Step, underFoot } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { fail } from "../../units/index.js";

/**
 * Gives the ground reaction under the foot of a step; the whole one where the step holds no contact, which
 * `requireContact` then refuses.
 *
 * @param ground - The recording.
 * @param step - The step to measure.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate in this contact; `out-of-range`: the contact names a
 * plate that the recording does not have.
 */
export function footOf(ground: GroundReaction, step: Step): GroundReaction {
  if (step?.contact == null) return ground;
  if (!step.contact.shared) return underFoot(ground, step.contact);
  fail(
    "missing-channel",
    "the force under one foot was not recorded: both feet shared a plate in double support",
    { argument: "step" },
  );
}
