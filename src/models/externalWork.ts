import {
  type Complete,
  type Joules,
  type Kilograms,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../units/index.js";
import { advanceAxis } from "./advanceAxis.js";
import { type AxisState, startAxis } from "./axisState.js";
import type { ForceRecord } from "./forceRecord.js";
import { gravityOnSlope } from "./gravityOnSlope.js";
import { massFromForce } from "./massFromForce.js";
import { requireSpan } from "./requireSpan.js";
import { sampleAt } from "./sampleAt.js";

/** What {@link externalWork} needs beside the force. */
export interface ExternalWorkOptions {
  /** Mass to integrate with; `null` for the one by force over the same span. */
  readonly mass?: Kilograms | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
  /** Where to stop adding increments, such as the next contact; `null` for the end of the span. */
  readonly until?: Seconds | null | undefined;
}

/** Mass by force, standard gravity, level, increments over the whole span. Source: common practice. */
export const EXTERNAL_WORK_DEFAULTS: Complete<ExternalWorkOptions> = {
  mass: null,
  gravity: STANDARD_GRAVITY,
  grade: 0,
  until: null,
};

/** Sums of the rises and of the falls of an energy, J. */
export interface WorkParts {
  readonly positive: Joules;
  readonly negative: Joules;
}

/** Work done on the centre of mass over a span. An axis whose force was not recorded is `null`. */
export interface ExternalWork {
  /** Of forward and vertical energy together: E_ext; `null` without a forward force. */
  readonly external: WorkParts | null;
  readonly forward: WorkParts | null;
  readonly vertical: WorkParts;
  readonly lateral: WorkParts | null;
}

/** One energy on its way; changed in place. */
interface Tally {
  energy: number;
  positive: number;
  negative: number;
}

/**
 * Adds up the rises and the falls of the mechanical energy of the centre of mass.
 *
 * Formula: E_f = m v_f²/2 + m g x_f sin θ, E_v = m v_u²/2 + m g x_u cos θ, E_ext = E_f + E_v, E_l = m v_r²/2; positive
 * work is the sum of the rises of each from sample to sample, negative work that of the falls. Motion as in
 * {@link centreOfMassMotion} over `from` to `to`; on the level θ = 0.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `from` to `to` must be whole strides of steady gait. The forward velocity is that over the surface: on a belt
 * without the belt's speed the forward work all but vanishes. Mechanical work of the centre of mass is no oxygen uptake
 * and holds nothing of limbs that move against each other.
 * Source: law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param record - Force in the library's frame.
 * @param from - Start of the stride, from the first sample.
 * @param to - End of the stride, above `from`, within the samples.
 * @param speed - Mean forward velocity over the surface.
 * @param options - Mass, gravity, grade, end of counting; {@link EXTERNAL_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: the span does not rise within the samples, `until` outside it, or an option
 * out of bounds.
 * @example
 * const force = { up: new Float64Array([0, 1400, 0, 1400, 0]) };
 * externalWork({ sampleRate: 10, force }, 0, 0.4, 3, { mass: 70 }).vertical.positive; // 22.882
 */
export function externalWork(
  record: ForceRecord,
  from: Seconds,
  to: Seconds,
  speed: MetresPerSecond,
  options: ExternalWorkOptions = EXTERNAL_WORK_DEFAULTS,
): ExternalWork {
  const settings = withDefaults(EXTERNAL_WORK_DEFAULTS, options);
  const { sampleRate, force } = record;
  requireSpan(force.up, sampleRate, from, to);
  const { gravity, grade } = settings;
  const until = settings.until ?? to;
  requireNumber("until", until, { above: from, to, unit: "s" });
  requireNumber("speed", speed, { unit: "m/s" });
  const mass = settings.mass ?? massFromForce(force.up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  const { normal, along } = gravityOnSlope(gravity, grade);

  const start = (samples: Float64Array | undefined, meanVelocity: number): AxisState | null =>
    samples === undefined ? null : startAxis(samples, sampleRate, from, to, mass, meanVelocity);
  const forward = start(force.forward, speed);
  const up = start(force.up, 0) as AxisState;
  const right = start(force.right, 0);
  const forwardTally = tallyAt(forward === null ? 0 : energyOf(forward, along));
  const upTally = tallyAt(energyOf(up, normal));
  const rightTally = tallyAt(right === null ? 0 : energyOf(right, 0));
  const externalTally = tallyAt(forwardTally.energy + upTally.energy);
  const end = until * sampleRate;
  let before = from * sampleRate;
  for (let i = Math.floor(before) + 1; before < end; i++) {
    const place = Math.min(i, end);
    const duration = (place - before) / sampleRate;
    advanceAxis(up, sampleAt(up.samples, place), duration);
    count(upTally, energyOf(up, normal));
    if (forward !== null) {
      advanceAxis(forward, sampleAt(forward.samples, place), duration);
      count(forwardTally, energyOf(forward, along));
      count(externalTally, forwardTally.energy + upTally.energy);
    }
    if (right !== null) {
      advanceAxis(right, sampleAt(right.samples, place), duration);
      count(rightTally, energyOf(right, 0));
    }
    before = place;
  }
  return {
    external: forward === null ? null : partsOf(externalTally),
    forward: forward === null ? null : partsOf(forwardTally),
    vertical: partsOf(upTally),
    lateral: right === null ? null : partsOf(rightTally),
  };
}

function energyOf({ mass, velocity, position }: AxisState, gravity: number): number {
  return mass * ((velocity * velocity) / 2 + gravity * position);
}

function tallyAt(energy: number): Tally {
  return { energy, positive: 0, negative: 0 };
}

function count(tally: Tally, energy: number): void {
  const change = energy - tally.energy;
  if (change > 0) tally.positive += change;
  else tally.negative += change;
  tally.energy = energy;
}

function partsOf({ positive, negative }: Tally): WorkParts {
  return { positive, negative };
}
