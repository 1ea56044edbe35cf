import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Newtons } from "../../units/index.js";
import { verticalImpulse } from "./verticalImpulse.js";

/**
 * Gives the mean vertical force over a contact.
 *
 * Formula: vertical impulse / contact time.
 * Units: N and s in; N out.
 * Limits: in steady running it is body weight × step time / contact time: no reading is taken from it.
 * Source: law (impulse = mean force × time).
 * @param ground - Force in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `missing-channel`: both feet shared a plate; `out-of-range`: the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array([0, 1000, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * meanVerticalForce({ ...ground, sampleRate: 4, force }, { contact: whole }); // 500
 */
export function meanVerticalForce(ground: GroundReaction, step: Step): Newtons {
  return verticalImpulse(ground, step) / (step.contact.toeOff - step.contact.initialContact);
}
