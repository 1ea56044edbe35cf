import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { halfSineAgreement } from "../../models/index.js";
import type { Fraction } from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";

/**
 * Says how closely the vertical force of a contact follows a half sine of the same duration and impulse.
 *
 * Formula: R² = 1 − Σ(Fᵢ − Sᵢ)² / Σ(Fᵢ − F̄)² over the samples in contact, S(t) = (π/2) F̄_c sin(π (t −
 * t₀)/t_c), F̄_c the mean force over the contact.
 * Units: N and s in; a number without unit out, 1 for a perfect half sine, below 0 where a constant fits
 * better.
 * Limits: `null` where the force does not change in contact. It describes the shape of the bounce; it does
 * not show that tendons stored or gave back energy. An impact peak lowers it.
 * Source: half sine with the peak (π/2) × mean force from Morin et al. 2005, J Appl Biomech 21:167; R² is
 * common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `wrong-type`: no contact; `out-of-range`: the contact does not rise within the
 * recording.
 * @example
 * const force = { up: new Float64Array([0, 1, 2, 1, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 1 };
 * halfSineFit({ ...ground, sampleRate: 4, force }, { contact: whole }); // 0.92545
 */
export function halfSineFit(ground: GroundReaction, step: Step): Fraction | null {
  const { initialContact, toeOff } = requireContact(ground, step);
  return halfSineAgreement(footOf(ground, step).force.up, ground.sampleRate, initialContact, toeOff);
}
