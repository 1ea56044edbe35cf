import { integralBetween } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Fraction } from "../../units/index.js";
import type { Stretch } from "../crossings.js";
import { LONGEST_WALKING_CONTACT } from "../gait/gait.js";

/** Share of the body weight that two feet bear at least on average; one foot bears some 0.8 over its contact. A judgement. */
export const BOTH_FEET_SHARE: Fraction = 0.9;
/** One foot's force rises above its mean twice, before and after the middle of stance. Common practice. */
const PEAKS_OF_ONE_FOOT = 2;
/** A rise above the mean, and a fall below it, that counts, as a share of the mean. A judgement. */
const CLEAR: Fraction = 0.05;

/**
 * Whether a stretch of contact on one plate holds more than the contact of one walking foot: it lasts too long, or bears the
 * stated body weight on average; where no mass is stated, it rises above its mean more often than under one foot.
 */
export function holdsBothFeet(plate: GroundReaction, { initialContact, toeOff }: Stretch): boolean {
  const time = toeOff - initialContact;
  if (time > LONGEST_WALKING_CONTACT) return true;
  const { force, sampleRate, subject, gravity, grade = 0 } = plate;
  const mean = integralBetween(force.up, sampleRate, initialContact, toeOff) / time;
  if (subject.mass !== undefined) {
    return mean >= (BOTH_FEET_SHARE * subject.mass * gravity) / Math.hypot(1, grade);
  }
  let peaks = 0;
  let above = false;
  const last = Math.min(force.up.length - 1, Math.floor(toeOff * sampleRate));
  for (let i = Math.ceil(initialContact * sampleRate); i <= last; i++) {
    const value = force.up[i] as number;
    if (!above && value > (1 + CLEAR) * mean) {
      above = true;
      peaks++;
    } else if (value < (1 - CLEAR) * mean) above = false;
  }
  return peaks > PEAKS_OF_ONE_FOOT;
}
