import {
  type Complete,
  fail,
  type Kilograms,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type Newtons,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";
import { startAxis } from "../axisState.js";
import type { ForceRecord } from "../forceRecord.js";
import { gravityOnSlope } from "../gravityOnSlope.js";
import { massFromForce } from "../massFromForce.js";
import { requireSpan } from "../requireSpan.js";
import { sampleAt } from "../sampleAt.js";
import { velocityAfter } from "../velocityAfter.js";

/** What {@link pushAndBrakeTimes} needs beside the force. */
export interface PushAndBrakeTimesOptions {
  /** Mass to integrate with; `null` for the one by force over the same stride. */
  readonly mass?: Kilograms | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
  /** Air drag, a constant force backward. */
  readonly drag?: Newtons | undefined;
}

/** Mass by force, standard gravity, level, still air. Source: common practice. */
export const PUSH_AND_BRAKE_TIMES_DEFAULTS: Complete<PushAndBrakeTimesOptions> = {
  mass: null,
  gravity: STANDARD_GRAVITY,
  grade: 0,
  drag: 0,
};

/** How long in a contact the external energy of the centre of mass rises, and how long it falls. */
export interface PushAndBrakeTimes {
  /** Rising: positive external work. */
  readonly push: Seconds;
  /** Falling: negative external work. */
  readonly brake: Seconds;
}

/**
 * Gives how long in a contact the external energy of the centre of mass rises and falls.
 *
 * Formula: times in contact in which dE_ext/dt is above and below 0, E_ext as in {@link externalWork}; its zeros on straight lines
 * between samples.
 * Units: N, s, kg and m/s in; s out.
 * Limits: `from` to `to` must be a whole stride of steady gait. All rises and all falls count, also those of an impact, so
 * the two add up to the contact time. In runners the push lasts longer than the brake up to 14 km/h and about as long above.
 * Source: Cavagna 2006, J Exp Biol 209:4051 (abstract).
 * @param record - Force in the library's frame, with `forward`.
 * @param from - Initial contact, from the first sample: the start of the stride.
 * @param toeOff - End of the contact, above `from`, not behind `to`.
 * @param to - End of the stride: the next contact of the same foot.
 * @param speed - Mean forward velocity over the surface.
 * @param options - Mass, gravity, grade, drag; {@link PUSH_AND_BRAKE_TIMES_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no forward force; `out-of-range`, `wrong-type`, `not-finite`: times that do not
 * rise within the samples, an option out of bounds.
 * @example
 * const force = { up: new Float64Array([0, 700, 1400, 700, 0, 700, 1400, 700, 0]), forward: new Float64Array(9) };
 * pushAndBrakeTimes({ sampleRate: 10, force }, 0, 0.4, 0.8, 3, { mass: 70 }).push; // 0.2
 */
export function pushAndBrakeTimes(
  record: ForceRecord,
  from: Seconds,
  toeOff: Seconds,
  to: Seconds,
  speed: MetresPerSecond,
  options: PushAndBrakeTimesOptions = PUSH_AND_BRAKE_TIMES_DEFAULTS,
): PushAndBrakeTimes {
  const settings = withDefaults(PUSH_AND_BRAKE_TIMES_DEFAULTS, options);
  const { gravity, grade, drag } = settings;
  const { sampleRate, force } = record;
  if (force.forward === undefined) {
    fail("missing-channel", "the external energy needs the forward force", { argument: "record" });
  }
  requireSpan(force.up, sampleRate, from, to);
  requireNumber("toeOff", toeOff, { above: from, to, unit: "s" });
  requireNumber("speed", speed, { unit: "m/s" });
  requireNumber("drag", drag, { unit: "N" });
  const mass = settings.mass ?? massFromForce(force.up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  const { normal, along } = gravityOnSlope(gravity, grade);
  const backward = along + drag / mass;
  const forward = startAxis(force.forward, sampleRate, from, to, mass, speed);
  const up = startAxis(force.up, sampleRate, from, to, mass, 0);
  let { acceleration: af, velocity: vf } = forward;
  let { acceleration: au, velocity: vu } = up;
  const { perMass } = up;
  const interval = 1 / sampleRate;
  const end = toeOff * sampleRate;
  const forwardAtEnd = (sampleAt(force.forward, end) - forward.meanForce) * perMass;
  const upAtEnd = (sampleAt(force.up, end) - up.meanForce) * perMass;
  let place = from * sampleRate;
  // Rate of the energy over mass: (a + g) v along each axis.
  let before = (af + backward) * vf + (au + normal) * vu;
  let push = 0;
  for (let i = Math.floor(place) + 1; place < end; i++) {
    const next = Math.min(i, end);
    const duration = (next - place) * interval;
    const nextForward =
      i < end ? ((forward.samples[i] as number) - forward.meanForce) * perMass : forwardAtEnd;
    const nextUp = i < end ? ((up.samples[i] as number) - up.meanForce) * perMass : upAtEnd;
    vf = velocityAfter(vf, af, nextForward, duration);
    vu = velocityAfter(vu, au, nextUp, duration);
    af = nextForward;
    au = nextUp;
    const after = (af + backward) * vf + (au + normal) * vu;
    push += duration * positiveShare(before, after);
    before = after;
    place = next;
  }
  return { push, brake: toeOff - from - push };
}

/** Share of a straight piece that lies above 0. */
function positiveShare(a: number, b: number): number {
  if (a > 0 === b > 0) return a > 0 ? 1 : 0;
  return Math.max(a, b) / Math.abs(a - b);
}
