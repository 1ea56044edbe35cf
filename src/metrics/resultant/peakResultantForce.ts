import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the largest size of the whole force under the foot, all three components together.
 *
 * Formula: max √(F_forward² + F_up² + F_right²) over the samples in contact.
 * Units: N out.
 * Limits: the largest sample. It is hardly more than the peak vertical force, since the others are small when that is
 * large: a horizontal force of a tenth of it adds 0.5 %.
 * Source: definition; common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward or no rightward force; `out-of-range`: the
 * contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array([0, 12, 0]), forward: new Float64Array([0, -3, 0]), right: new Float64Array([0, 4, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.25 };
 * peakResultantForce({ ...ground, sampleRate: 8, force }, { contact: whole }); // 13
 */
export function peakResultantForce(ground: GroundReaction, step: Step): Newtons {
  const foot = footOf(ground, step);
  const forward = requireForce(foot, "forward", "peakResultantForce");
  const right = requireForce(foot, "right", "peakResultantForce");
  const { initialContact, toeOff } = requireContact(foot, step);
  const { up } = foot.force;
  const last = Math.floor(toeOff * foot.sampleRate);
  let largest = 0;
  for (let i = Math.ceil(initialContact * foot.sampleRate); i <= last; i++) {
    const f = forward[i] as number;
    const u = up[i] as number;
    const r = right[i] as number;
    const square = f * f + u * u + r * r;
    if (square > largest) largest = square;
  }
  return Math.sqrt(largest);
}
