import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { effectiveContactTime, halfPeriodStiffness } from "../../models/index.js";
import { type Complete, type Quantity, requireOneOf, withDefaults } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { type SpringMethod, springOf } from "./springOf.js";

/** How the vertical spring is come by: `half-period`, from the time in which the force exceeds body weight. */
export interface VerticalStiffnessOptions {
  readonly method?: SpringMethod | "half-period" | undefined;
}

/** Peak force ÷ drop, both from the force. Source: McMahon & Cheng 1990, J Biomech 23 suppl 1:65. */
export const VERTICAL_STIFFNESS_DEFAULTS: Complete<VerticalStiffnessOptions> = { method: "force" };

/**
 * Gives the stiffness of the vertical spring that the body would bounce on.
 *
 * Formula: `force`: F_max/drop, F_max the peak of the vertical force in contact, drop that of the centre of mass from initial contact to its
 * lowest point, by integration over the stride that begins there, m by force; `sine-wave`: the same ratio from contact and
 * flight times (`springMassFromTimes`); `half-period`: m (π/t_ce)², t_ce the time in which the force exceeds body weight.
 * Units: N, s and kg in; N/m out.
 * Limits: `null` without a later contact of the same side, where the centre of mass does not fall after contact, and by the
 * sine wave without a flight. The methods differ: 27.8, 24.7 and 23.2 kN/m on one synthetic contact; compare values of one.
 * Drop and times depend on the threshold of the contact. A stiffness belongs to its speed and cadence; more is no load.
 * Source: McMahon & Cheng 1990, J Biomech 23 suppl 1:65; Morin et al. 2005, J Appl Biomech 21:167; half period from memory:
 * Cavagna et al. 1988.
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact and the next one of the same side are used, by the sine wave the next one too.
 * @param options - Method; {@link VERTICAL_STIFFNESS_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-value`: no mass, which a whole stride always gives; `out-of-range`: unknown method, contacts not in order within the recording.
 * @example
 * const force = { up: new Float64Array([700, 1400, 700, 0, 700, 1400, 700, 0, 700]) };
 * const stride = { contact: { ...contact, initialContact: 0, toeOff: 0.2 }, nextSameSide: { ...contact, initialContact: 0.8 } };
 * const record = { ...ground, sampleRate: 10, massByForce: 70, force };
 * verticalStiffness(record, stride); // 42000
 * verticalStiffness(record, stride, { method: "half-period" }); // 17272
 */
export function verticalStiffness(
  ground: GroundReaction,
  step: Step,
  options: VerticalStiffnessOptions = VERTICAL_STIFFNESS_DEFAULTS,
): Quantity<"N/m"> | null {
  const { method } = withDefaults(VERTICAL_STIFFNESS_DEFAULTS, options);
  requireOneOf("method", method, ["force", "sine-wave", "half-period"]);
  if (method !== "half-period") return springOf(ground, step, method)?.verticalStiffness ?? null;
  const { initialContact, toeOff } = requireContact(ground, step);
  if (step.nextSameSide === undefined) return null;
  const mass = massForStep(ground, step);
  const weight = (mass * ground.gravity) / Math.hypot(1, ground.grade ?? 0);
  const time = effectiveContactTime(ground.force.up, ground.sampleRate, initialContact, toeOff, weight);
  return time === null ? null : halfPeriodStiffness(mass, time);
}
