import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { pushAndBrakeTimes } from "../../models/index.js";
import { type Quantity, withDefaults } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { requireSpeed } from "../common/requireSpeed.js";
import { strideTime } from "../timing/strideTime.js";
import { STEP_WORK_DEFAULTS, type StepWorkOptions } from "./workOfStep.js";

/**
 * Gives how much longer a contact pushes than it brakes: 1 for a bounce that is the same forward and backward in time, as a
 * spring's is.
 *
 * Formula: t_push/t_brake, the times in contact in which E_ext rises and falls; E_ext as in {@link positiveExternalWork}.
 * Units: N, s, kg and m/s in; a number without unit out.
 * Limits: `null` without a later contact of the same side, and where E_ext never falls in contact. All rises and falls count,
 * also those of an impact. In runners the push lasts longer up to 14 km/h and about as long above. It describes the bounce
 * and measures no elastic return.
 * Source: Cavagna 2006, J Exp Biol 209:4051 (abstract).
 * @param ground - Force in the library's frame; speed, surface, grade and gravity are read.
 * @param step - The step to measure; its contact and the next one of the same side are used.
 * @param options - Air drag; {@link STEP_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `missing-value`: speed or surface not
 * stated; `out-of-range`: speed not above 0, contacts not in order within the recording; `not-finite`: drag.
 * @example
 * const force = { up: new Float64Array([0, 700, 1400, 700, 0, 700, 1400, 700, 0]), forward: new Float64Array(9) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.4 }, nextSameSide: { ...contact, initialContact: 0.8 } };
 * pushToBrakeTimeRatio({ ...ground, sampleRate: 10, massByForce: 70, force, speed: 3, surface: "belt" }, stride); // 1
 */
export function pushToBrakeTimeRatio(
  ground: GroundReaction,
  step: Step,
  options: StepWorkOptions = STEP_WORK_DEFAULTS,
): Quantity<"1"> | null {
  const { drag } = withDefaults(STEP_WORK_DEFAULTS, options);
  requireForce(ground, "forward", "pushToBrakeTimeRatio");
  const speed = requireSpeed(ground, "pushToBrakeTimeRatio");
  const { initialContact, toeOff } = requireContact(ground, step);
  const stride = strideTime(ground, step);
  if (stride === null) return null;
  const { gravity, grade } = ground;
  const mass = massForStep(ground, step);
  const end = initialContact + stride;
  const { push, brake } = pushAndBrakeTimes(ground, initialContact, toeOff, end, speed, {
    mass,
    gravity,
    grade,
    drag,
  });
  return brake > 0 ? push / brake : null;
}
