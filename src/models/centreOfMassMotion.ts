import type {
  Complete,
  Kilograms,
  MetresPerSecond,
  MetresPerSecondSquared,
  Samples,
  Seconds,
} from "../units/index.js";
import { requireNumber, STANDARD_GRAVITY, withDefaults } from "../units/index.js";
import { advanceAxis } from "./advanceAxis.js";
import { type AxisState, startAxis } from "./axisState.js";
import type { ForceRecord } from "./forceRecord.js";
import { massFromForce } from "./massFromForce.js";
import { requireSpan } from "./requireSpan.js";
import { sampleAt } from "./sampleAt.js";

/** What {@link centreOfMassMotion} needs beside the force. */
export interface CentreOfMassMotionOptions {
  /** Mass to divide by; `null` for the one by force over the same span, which leaves no drift. */
  readonly mass?: Kilograms | null | undefined;
  /** Mean forward velocity over the span, relative to the surface. */
  readonly speed?: MetresPerSecond | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
}

/** Mass by force, motion about the mean forward velocity, standard gravity, level. Source: common practice. */
export const CENTRE_OF_MASS_MOTION_DEFAULTS: Complete<CentreOfMassMotionOptions> = {
  mass: null,
  speed: 0,
  gravity: STANDARD_GRAVITY,
  grade: 0,
};

/** Motion of the centre of mass along one axis. */
export interface AxisMotion {
  readonly acceleration: Samples<"m/s^2">;
  readonly velocity: Samples<"m/s">;
  /** From its place at the start of the span. */
  readonly position: Samples<"m">;
}

/** Motion of the centre of mass over a span, along every axis whose force was recorded. */
export interface CentreOfMassMotion {
  /** From the first sample of the record: the start of the span, every sample within, its end. */
  readonly time: Samples<"s">;
  readonly mass: Kilograms;
  readonly forward?: AxisMotion;
  readonly up: AxisMotion;
  readonly right?: AxisMotion;
}

/**
 * Integrates the force of the ground to the motion of the centre of mass over one or more whole strides.
 *
 * Formula: a = (F − F̄)/m, v = ∫a dt + v₀, x = ∫v dt, exact on the straight lines between samples; v₀ such that the mean
 * velocity is 0 upward and rightward, and the stated speed forward. Ends of the span may lie between samples.
 * Units: N, s, kg and m/s in; m/s², m/s and m out.
 * Limits: the span must be whole strides of steady gait, where velocity returns; the mean force, gravity and any
 * constant offset with it, is taken off. A mass that is 1 % wrong changes every excursion by 1 %.
 * Source: law (Newton's second); the mean taken off over whole strides is common practice.
 * @param record - Force in the library's frame.
 * @param from - Start of the span, from the first sample.
 * @param to - End of the span, above `from`, within the samples.
 * @param options - Mass, speed, gravity, grade; {@link CENTRE_OF_MASS_MOTION_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: the span does not rise within the samples, or an option is out of bounds.
 * @example
 * const force = { up: new Float64Array([0, 70, 0, -70, 0]) };
 * centreOfMassMotion({ sampleRate: 5, force }, 0, 0.8, { mass: 70 }).up.velocity; // [0, 0, 0, 0, 0]
 */
export function centreOfMassMotion(
  record: ForceRecord,
  from: Seconds,
  to: Seconds,
  options: CentreOfMassMotionOptions = CENTRE_OF_MASS_MOTION_DEFAULTS,
): CentreOfMassMotion {
  const { mass: stated, speed, gravity, grade } = withDefaults(CENTRE_OF_MASS_MOTION_DEFAULTS, options);
  const { sampleRate, force } = record;
  requireSpan(force.up, sampleRate, from, to);
  requireNumber("speed", speed, { unit: "m/s" });
  const mass = stated ?? massFromForce(force.up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  const places = knotPlaces(sampleRate, from, to);
  const along = (samples: Float64Array, meanVelocity: number): AxisMotion =>
    axisMotion(startAxis(samples, sampleRate, from, to, mass, meanVelocity), sampleRate, places);
  return {
    time: places.map((place) => place / sampleRate),
    mass,
    ...(force.forward === undefined ? {} : { forward: along(force.forward, speed) }),
    up: along(force.up, 0),
    ...(force.right === undefined ? {} : { right: along(force.right, 0) }),
  };
}

/** The start of the span, every sample within it and its end, in sample numbers. */
function knotPlaces(sampleRate: number, from: number, to: number): Float64Array {
  const first = Math.floor(from * sampleRate) + 1;
  const behind = Math.ceil(to * sampleRate);
  const places = Float64Array.from({ length: behind - first + 2 }, (_, knot) => first + knot - 1);
  places[0] = from * sampleRate;
  places[places.length - 1] = to * sampleRate;
  return places;
}

function axisMotion(axis: AxisState, sampleRate: number, places: Float64Array): AxisMotion {
  const acceleration = new Float64Array(places.length);
  const velocity = new Float64Array(places.length);
  const position = new Float64Array(places.length);
  const interval = 1 / sampleRate;
  for (let knot = 0; knot < places.length; knot++) {
    const place = places[knot] as number;
    if (knot > 0) {
      advanceAxis(axis, sampleAt(axis.samples, place), (place - (places[knot - 1] as number)) * interval);
    }
    acceleration[knot] = axis.acceleration;
    velocity[knot] = axis.velocity;
    position[knot] = axis.position;
  }
  return { acceleration, velocity, position };
}
