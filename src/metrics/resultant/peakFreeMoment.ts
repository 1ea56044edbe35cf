import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { NewtonMetres } from "../../units/index.js";
import { FREE_MOMENT_DEFAULTS, type FreeMomentOptions, freeMomentOf } from "./freeMomentOf.js";

/**
 * Gives the largest free moment under the foot: how hard the ground twists it about the vertical.
 *
 * Formula: max |T| over the samples in contact at which the vertical force is at the floor or above; T = M_up −
 * (c_right F_forward − c_forward F_right), c the centre of pressure.
 * Units: N and N·m in; N·m out, 0 or above.
 * Limits: `null` where the contact stays below the floor. The sign, which differs between papers, is left out. The filter's
 * cutoff moves it more than any other metric where the platform vibrates: 26 N·m behind 50 Hz and 10 N·m behind 20 Hz on one
 * treadmill. An error of the centre of pressure by 5 mm is 1 N·m at 200 N of horizontal force. Published values are often divided by
 * body weight × height: 5.9 × 10⁻³ of it is 7.1 N·m for 70 kg and 1.75 m.
 * Source: definition; its absolute peak as in Milner et al. 2006 and Pohl et al. 2008, J Biomech 41:1160 (abstract).
 * @param ground - Force and moment in the library's frame, already filtered; the unfiltered vertical force is held against the floor.
 * @param step - The step to measure; its contact alone is used.
 * @param options - The floor; {@link FREE_MOMENT_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward or rightward force, no centre of pressure or no free
 * moment; `out-of-range`: floor not above 0, the contact does not rise within the recording.
 * @example
 * const still = new Float64Array(3);
 * const force = { up: new Float64Array([0, 700, 0]), forward: still, right: still };
 * const moment = { forward: still, up: new Float64Array([0, -6, 0]), right: still };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.25 };
 * peakFreeMoment({ ...ground, sampleRate: 8, force, moment }, { contact: whole }); // 6
 */
export function peakFreeMoment(
  ground: GroundReaction,
  step: Step,
  options: FreeMomentOptions = FREE_MOMENT_DEFAULTS,
): NewtonMetres | null {
  return freeMomentOf(ground, step, options, "peakFreeMoment")?.peak ?? null;
}
