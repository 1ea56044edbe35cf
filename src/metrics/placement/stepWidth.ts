import type { Step } from "../../events/index.js";
import { type GroundReaction, meanCentreOfPressure } from "../../force/index.js";
import { type Complete, type Fraction, type Metres, withDefaults } from "../../units/index.js";
import { loneFoot } from "../common/loneFoot.js";
import { medialSign } from "../common/medialSign.js";
import { requireContact } from "../common/requireContact.js";
import { requireMoment } from "../common/requireMoment.js";
import { requireSlopeWindow } from "../common/requireSlopeWindow.js";
import { timeToContact } from "../common/timeToContact.js";

/** The part of each contact in which the place of the foot is read, as fractions of contact time. */
export interface StepWidthOptions {
  readonly from?: Fraction | undefined;
  readonly to?: Fraction | undefined;
}

/** The middle half: clear of the touches, and in walking of double support. This library's rule. */
export const STEP_WIDTH_DEFAULTS: Complete<StepWidthOptions> = { from: 0.25, to: 0.75 };

/**
 * Gives how far apart sideways two successive feet stand, by their centres of pressure.
 *
 * Formula: c_right of the right foot − c_right of the left foot, c the mean centre of pressure over the middle half of the
 * contact (of feet that share a plate, its part in single support), weighted by the vertical force; this contact and the next.
 * Units: N, N·m and s in; m out, below 0 where the feet cross the midline.
 * Limits: `null` without a next contact and where the sides are not known. Across the frame's `forward`, not across the line of
 * progression: a path at an angle adds its sideways travel in a step to one side and takes it from the other, and strides
 * are free of it. The centre of pressure is no marker: it rolls sideways within the foot by a centimetre or two. The same
 * on ground and belt, which moves no foot sideways.
 * Source: common practice; centre of pressure and middle half are this library's rule.
 * @param ground - Force and moment in the library's frame.
 * @param step - The step to measure; its contact and the next one are used.
 * @param options - Part of the contact; {@link STEP_WIDTH_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no centre of pressure along `right`; `out-of-range`: window not
 * rising within 0 to 1, contacts not in order within the recording.
 * @example
 * const force = { up: new Float64Array(9).fill(700) };
 * const moment = { forward: new Float64Array([0, -70, -70, 0, 0, 0, -14, -14, 0]) };
 * const right = { ...contact, side: "right", initialContact: 0, toeOff: 0.3 };
 * const next = { ...contact, side: "left", initialContact: 0.5, toeOff: 0.8 };
 * stepWidth({ ...ground, sampleRate: 10, force, moment }, { contact: right, next }); // 0.08
 */
export function stepWidth(
  ground: GroundReaction,
  step: Step,
  options: StepWidthOptions = STEP_WIDTH_DEFAULTS,
): Metres | null {
  const { from, to } = withDefaults(STEP_WIDTH_DEFAULTS, options);
  requireSlopeWindow({ from, to });
  requireMoment(ground, "forward", "stepWidth");
  const here = requireContact(ground, step);
  const { next } = step;
  const sign = medialSign(here);
  if (next === undefined || sign === null) return null;
  timeToContact(here, next, "next");
  const places = [step, { contact: next }].map((each) => {
    const { initialContact, toeOff } = requireContact(ground, each);
    const lone = loneFoot(ground, each);
    const time = toeOff - initialContact;
    return lone === null
      ? null
      : meanCentreOfPressure(
          lone.foot,
          "right",
          Math.max(lone.from, initialContact + from * time),
          Math.min(lone.to, initialContact + to * time),
        );
  });
  const [own, other] = places as [number | null, number | null];
  return own === null || other === null ? null : sign * (other - own);
}
