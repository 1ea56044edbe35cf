import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Quantity } from "../../units/index.js";
import { FREE_MOMENT_DEFAULTS, type FreeMomentOptions, freeMomentOf } from "./freeMomentOf.js";

/**
 * Gives the angular impulse of the free moment under the foot, whichever way it turns.
 *
 * Formula: ∫ |T| dt on the straight lines between the samples in contact at which the vertical force is at the floor or above;
 * T as in {@link peakFreeMoment}.
 * Units: N, N·m and s in; N·m·s out, 0 or above.
 * Limits: `null` where the contact stays below the floor. Both directions count, so it is no change of angular momentum.
 * Source: definition; the absolute value is this library's rule.
 * @param ground - Force and moment in the library's frame, already filtered; the unfiltered vertical force is held against the floor.
 * @param step - The step to measure; its contact alone is used.
 * @param options - The floor; {@link FREE_MOMENT_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward or rightward force, no centre of pressure or no free
 * moment; `out-of-range`: floor not above 0, the contact does not rise within the recording.
 * @example
 * const still = new Float64Array(3);
 * const force = { up: new Float64Array([700, 700, 700]), forward: still, right: still };
 * const moment = { forward: still, up: new Float64Array([8, 0, -8]), right: still };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.25 };
 * freeMomentImpulse({ ...ground, sampleRate: 8, force, moment }, { contact: whole }); // 1
 */
export function freeMomentImpulse(
  ground: GroundReaction,
  step: Step,
  options: FreeMomentOptions = FREE_MOMENT_DEFAULTS,
): Quantity<"N m s"> | null {
  return freeMomentOf(ground, step, options, "freeMomentImpulse")?.impulse ?? null;
}
