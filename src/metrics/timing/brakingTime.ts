import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Seconds } from "../../units/index.js";
import { brakingToPropulsion } from "../common/brakingToPropulsion.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";

/**
 * Gives the time from initial contact to the last turn of the forward force from braking to propulsion.
 *
 * Formula: t₊ − initial contact, t₊ the last crossing of the forward force from − to +, linear between
 * samples.
 * Units: s out.
 * Limits: `null` where the force never turns from − to +. With {@link propulsiveTime} it adds up to contact
 * time, so a short forward spike at contact counts as braking time.
 * Source: common practice.
 * @param ground - Force in the library's frame, already filtered.
 * @param step - The step to measure; its contact alone is used.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no forward force; `out-of-range`:
 * the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array(5), forward: new Float64Array([0, -9, 0, 9, 0]) };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.5 };
 * brakingTime({ ...ground, sampleRate: 8, force }, { contact: whole }); // 0.25
 */
export function brakingTime(ground: GroundReaction, step: Step): Seconds | null {
  const forward = requireForce(footOf(ground, step), "forward", "brakingTime");
  const { initialContact, toeOff } = requireContact(ground, step);
  const crossing = brakingToPropulsion(forward, ground.sampleRate, initialContact, toeOff);
  return crossing === null ? null : crossing - initialContact;
}
