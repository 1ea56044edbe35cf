import { requireNumber, type Seconds } from "../units/index.js";
import { stanceForce } from "./stance.js";
import { type Vector, vectorOf } from "./stanceMotion.js";
import type { TrueContact } from "./truth.js";

/**
 * Gives the true force of a synthetic contact at a time.
 *
 * Formula: of {@link syntheticRun}. Units: s from the recording's first sample in; N out.
 * Limits: zero before and after the contact; other contacts are not added.
 * Source: form of the vertical force, Clark, Ryan & Weyand 2017, J. Exp. Biol. 220:247; half sines, common practice.
 * @param contact - One of a run's truth.
 * @param time - Any finite number.
 * @throws GaitKineticsError `not-finite`, `wrong-type`: the time is no finite number.
 * @example
 * forceAt(syntheticRun().truth.contacts[0], 0).up // 0
 */
export function forceAt(contact: TrueContact, time: Seconds): Vector {
  const since = requireNumber("time", time) - contact.initialContact;
  return vectorOf((direction) => stanceForce(contact.stance, direction, since));
}
