import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { forceGenerationRate } from "../../models/index.js";
import { type Complete, type Quantity, withDefaults } from "../../units/index.js";
import { contactTime } from "../timing/contactTime.js";

/** What turns the rate of generating force into a cost. */
export interface ForceGenerationCostOptions {
  /** J per N of body weight and contact, measured on this runner near this speed; `null` for no cost. */
  readonly coefficient?: Quantity<"J/N"> | null | undefined;
}

/** No cost: the coefficient is no constant, so none is taken for granted. */
export const FORCE_GENERATION_COST_DEFAULTS: Complete<ForceGenerationCostOptions> = { coefficient: null };

/**
 * Gives the metabolic power that goes with generating force in time for a contact, by a coefficient that the caller states.
 *
 * Formula: c g/t_c.
 * Units: s and J/N in; W/kg out.
 * Limits: `null` without a coefficient, so a trial gives it only through an entry of one's own, as below. Contact time in disguise: the force
 * is not in it, and a longer contact always looks cheaper, so no reading may be taken from it. The coefficient rises with speed: 0.265 J/N at
 * 2.2 m/s and 0.415 at 5.0 m/s in one study (Kipp et al. 2018).
 * Source: Kram & Taylor 1990, Nature 346:265; Kipp, Grabowski & Kram 2018, J Exp Biol 221:jeb184218 (abstract).
 * @param ground - Its gravity is read.
 * @param step - The step to measure; its contact alone is used.
 * @param options - Coefficient; {@link FORCE_GENERATION_COST_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `out-of-range`: coefficient not above 0, the contact does not rise within the
 * recording.
 * @example
 * const first = { ...contact, initialContact: 0.25, toeOff: 0.5 };
 * forceGenerationCost(ground, { contact: first }, { coefficient: 0.3 }); // 11.76798
 * const compute = (ground, step) => forceGenerationCost(ground, step, { coefficient: 0.3 });
 * const entry = { ...metricById("forceGenerationCost"), needs: [], compute };
 * analyseTrial(ground, { metrics: [entry] }).summary.metrics.forceGenerationCost.unit; // "W/kg"
 */
export function forceGenerationCost(
  ground: GroundReaction,
  step: Step,
  options: ForceGenerationCostOptions = FORCE_GENERATION_COST_DEFAULTS,
): Quantity<"W/kg"> | null {
  const { coefficient } = withDefaults(FORCE_GENERATION_COST_DEFAULTS, options);
  return forceGenerationRate(contactTime(ground, step), { coefficient, gravity: ground.gravity }).cost;
}
