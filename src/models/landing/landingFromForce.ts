import { fail } from "../../units/index.js";
import { gravityOnSlope } from "../gravityOnSlope.js";
import { requireSpan } from "../requireSpan.js";
import {
  type ContactSpan,
  type LandingFromForce,
  type LandingRecord,
  type LandingRefused,
  refuse,
} from "./landing.js";
import { landingAt } from "./landingAt.js";
import { centreOfMassHeight, landingMargin } from "./landingMargin.js";
import { type LandingOptions, landingSettings } from "./options.js";
import { type StrideWindows, strideLaw, strideMeans } from "./strideLaw.js";
import { touchesOf } from "./touchesOf.js";

/** Mean forward force of a stride beyond the grade, as a share of the vertical, above which the stride is not steady. */
export const LANDING_BALANCE_LIMIT = 0.01;
/** Drift of a runner on a belt above which the recording is none of a belt, m/s. */
const LARGEST_DRIFT = 0.5;
/** How far the speed found on the ground may be from the stated one. */
const SPEED_TOLERANCE = 0.15;
/** Bounds of what a centre of pressure can travel under a foot, noise at 250 N included, m. */
const TRAVEL = { least: -0.15, most: 0.45 } as const;

/**
 * Gives where a foot lands and leaves relative to the centre of mass, from force and centre of pressure alone.
 *
 * Formula: over a stride of steady gait angular momentum about the centre of mass returns, and the same foot's two contacts
 * change it alike: ∫ (c − x) F_up dt + ∫ h F_forward dt = 0, c the centre of pressure, h = 0.55 body height and the bounce,
 * x = x₀ + v₀ t + ∬ F_forward/m; both laws give x₀ and v₀. One instant for both points: first touch, where the rise of the
 * unfiltered vertical force from the threshold to the foot level leaves zero; the foot's place is the centre of pressure at
 * the foot level, carried back with the belt. Take-off likewise, at last touch.
 * Units: N, N·m, s and m in; m and s out.
 * Limits: running with flights, whole strides, at a steady speed, on the level or a stated grade, nothing held and nobody
 * pulled. A forward force beyond the grade that is none, or does not change the speed, moves the touchdown by 1.4 mm a newton
 * where `balance` takes it off and 2.6 mm where not, which the margin holds; above 1 % of the vertical force over the stride
 * the contact is refused. It cannot see
 * weight taken by hands: 1 % of it, taken 0.4 m ahead, moves them by 4 mm. A foot that rolls at once reads behind by its roll up to the
 * foot level. Values belong to the centre of mass and the centre of pressure: distances to a hip or an ankle are others.
 * Source: conservation of angular momentum; the rules are held against runs whose truth is known and against markers.
 * @param record - Unfiltered force with offset taken off, and moment, in the library's frame.
 * @param contact - The contact to measure.
 * @param nextSameSide - The same foot's next one: the stride's end.
 * @param options - Surface, speed, levels; {@link LANDING_DEFAULTS} where left out.
 * @returns The distances, or the reason why there are none.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: an option out of bounds, a contact outside the
 * recording, contacts not in order.
 * @example
 * const belt = { surface: "belt", speed: 3, height: 1.75 } as const;
 * const first = landingFromForce(ground, contact, steps[0].nextSameSide, belt);
 * first.touchdown < first.takeOff // true
 */
export function landingFromForce(
  record: LandingRecord,
  contact: ContactSpan,
  nextSameSide: ContactSpan,
  options: LandingOptions = {},
): LandingFromForce | LandingRefused {
  const settings = landingSettings(options);
  const { sampleRate } = record;
  const { up, forward } = record.force;
  requireSpan(up, sampleRate, contact.initialContact, contact.toeOff);
  requireSpan(up, sampleRate, nextSameSide.initialContact, nextSameSide.toeOff);
  if (!(nextSameSide.initialContact > contact.toeOff)) {
    fail(
      "out-of-range",
      `nextSameSide begins at ${nextSameSide.initialContact} s; it must begin after the contact's end, ${contact.toeOff} s`,
      { argument: "nextSameSide" },
    );
  }
  const { normal } = gravityOnSlope(settings.gravity, settings.grade);
  const moment = record.moment?.right;
  if (forward === undefined) return refuse("missing-channel", "the forward force was not recorded");
  if (moment === undefined) return refuse("missing-channel", "the centre of pressure was not recorded");
  const { surface, speed, threshold, grade, toe } = settings;
  if (surface === "belt" && !(speed !== null && speed > 0)) {
    return refuse("missing-speed", "the speed of the belt is not stated");
  }

  const sampleFrom = (time: number) => Math.max(0, Math.ceil(time * sampleRate));
  const { footLevel: asked } = settings;
  const footLevel =
    typeof asked === "number"
      ? asked
      : asked.bodyWeights *
        meanOf(up, sampleFrom(contact.initialContact), sampleFrom(nextSameSide.initialContact));
  if (!(footLevel > threshold)) {
    return refuse(
      "foot-level",
      `the foot level of ${footLevel} N is not above the threshold of ${threshold} N`,
    );
  }
  const touches = touchesOf(up, sampleRate, contact, threshold, footLevel, toe);
  if (touches.refused !== undefined) return touches;
  const next = touchesOf(up, sampleRate, nextSameSide, threshold, footLevel, toe);
  if (next.refused !== undefined) return next;

  const windows: StrideWindows = {
    start: sampleFrom(touches.first),
    lastTouch: touches.last * sampleRate,
    next: sampleFrom(next.first),
    end: Math.min(up.length - 1, sampleFrom(next.last)),
    duration: next.first - touches.first,
  };
  const means = strideMeans(up, forward, sampleRate, windows);
  const forwardBalance = means.forward / means.up - grade;
  if (!(Math.abs(forwardBalance) <= LANDING_BALANCE_LIMIT)) {
    return refuse(
      "forward-unbalanced",
      `over the stride the forward force is ${(100 * forwardBalance).toFixed(1)} % of the vertical beyond the grade: the runner speeds up, slows down or is pulled, or the grade is not the stated one`,
    );
  }
  const motion = strideLaw(up, forward, moment, sampleRate, windows, means, {
    along: grade * means.up,
    balance: settings.balance,
    mass: means.up / normal,
    height: centreOfMassHeight(settings.height),
  });
  const { meanVelocity: velocity } = motion;
  const disagrees = frameProblem(surface, speed, velocity);
  if (disagrees !== null) return disagrees;
  // Between first touch and the first sample nothing has pushed yet.
  const atFirst = motion.place - motion.velocity * (windows.start / sampleRate - touches.first);
  const landing = landingAt(
    record,
    touches,
    atFirst,
    motion.atLastTouch,
    surface === "belt" ? (speed ?? 0) : 0,
  );
  if (landing.copTravel < TRAVEL.least || landing.copTravel > TRAVEL.most) {
    return refuse(
      "surface-disagrees",
      `the centre of pressure travels ${landing.copTravel.toFixed(2)} m under the foot, which no foot does: is the surface "${surface}"${surface === "belt" ? `, its speed ${speed} m/s` : ""}?`,
    );
  }
  const margin = landingMargin(forwardBalance - settings.balance, windows.duration, settings);
  return { ...landing, velocity, forwardBalance, margin };
}

/** A runner's mean velocity in the frame of the centre of pressure that the stated surface does not have. */
function frameProblem(surface: string, speed: number | null, velocity: number): LandingRefused | null {
  if (surface === "belt") {
    if (Math.abs(velocity) <= LARGEST_DRIFT) return null;
    return refuse(
      "surface-disagrees",
      `the feet move on by ${velocity.toFixed(2)} m/s from stride to stride: on a belt they stay in place`,
    );
  }
  const wanted = speed === null ? null : Math.abs(velocity / speed - 1) <= SPEED_TOLERANCE;
  if (wanted ?? velocity > LARGEST_DRIFT) return null;
  return refuse(
    "surface-disagrees",
    `the feet move on by ${velocity.toFixed(2)} m/s from stride to stride${speed === null ? ": on the ground they move on with the runner" : `; the stated speed is ${speed} m/s`}`,
  );
}

function meanOf(samples: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i] as number;
  return sum / (to - from);
}
