import {
  type Complete,
  type Joules,
  type Kilograms,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type Newtons,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../units/index.js";
import { type AxisState, startAxis } from "./axisState.js";
import type { ForceRecord } from "./forceRecord.js";
import { gravityOnSlope } from "./gravityOnSlope.js";
import { massFromForce } from "./massFromForce.js";
import { placeAfter } from "./placeAfter.js";
import { requireSpan } from "./requireSpan.js";
import { sampleAt } from "./sampleAt.js";
import { velocityAfter } from "./velocityAfter.js";

/** What {@link externalWork} needs beside the force. */
export interface ExternalWorkOptions {
  /** Mass to integrate with; `null` for the one by force over the same span. */
  readonly mass?: Kilograms | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
  /** Air drag, a constant force backward; negative with a wind from behind that outruns the runner. */
  readonly drag?: Newtons | undefined;
  /** Where to stop adding increments, such as the next contact; `null` for the end of the span. */
  readonly until?: Seconds | null | undefined;
}

/** Mass by force, standard gravity, level, still air, increments over the whole span. Source: common practice. */
export const EXTERNAL_WORK_DEFAULTS: Complete<ExternalWorkOptions> = {
  mass: null,
  gravity: STANDARD_GRAVITY,
  grade: 0,
  drag: 0,
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

/**
 * Adds up the rises and the falls of the mechanical energy of the centre of mass.
 *
 * Formula: E_f = m v_f²/2 + (m g sin θ + D) x_f, E_v = m v_u²/2 + m g x_u cos θ, E_ext = E_f + E_v, E_l = m v_r²/2; positive
 * work is the sum of the rises of each from sample to sample, negative work that of the falls. Motion as in
 * {@link centreOfMassMotion} over `from` to `to`; on the level θ = 0, and D is the air drag.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `from` to `to` must be whole strides of steady gait. The forward velocity is that over the surface: on a belt
 * without the belt's speed the forward work all but vanishes. Over ground above 3.5 m/s the drag counts: see {@link airDrag}.
 * Mechanical work of the centre of mass is no oxygen uptake
 * and holds nothing of limbs that move against each other.
 * Source: law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J Physiol 262:639 (abstract).
 * @param record - Force in the library's frame.
 * @param from - Start of the stride, from the first sample.
 * @param to - End of the stride, above `from`, within the samples.
 * @param speed - Mean forward velocity over the surface.
 * @param options - Mass, gravity, grade, drag, end of counting; {@link EXTERNAL_WORK_DEFAULTS} where left out.
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
  const { gravity, grade, drag } = settings;
  requireNumber("drag", drag, { unit: "N" });
  const until = settings.until ?? to;
  requireNumber("until", until, { above: from, to, unit: "s" });
  requireNumber("speed", speed, { unit: "m/s" });
  const mass = settings.mass ?? massFromForce(force.up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  const { normal, along } = gravityOnSlope(gravity, grade);
  const backward = along + drag / mass;

  const start = (samples: Float64Array, meanVelocity: number): AxisState =>
    startAxis(samples, sampleRate, from, to, mass, meanVelocity);
  const span = { from: from * sampleRate, to: until * sampleRate, interval: 1 / sampleRate };
  const up = start(force.up, 0);
  const both =
    force.forward === undefined
      ? null
      : workTogether(start(force.forward, speed), backward, up, normal, span);
  return {
    external: both?.together ?? null,
    forward: both?.first ?? null,
    vertical: both?.second ?? workAlong(up, normal, span),
    lateral: force.right === undefined ? null : workAlong(start(force.right, 0), 0, span),
  };
}

/** Where energy is counted, in samples, and the time between them, s. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly interval: number;
}

/** Rises and falls of the energy along one axis; plain numbers in the loop, so that it allocates nothing. */
function workAlong(axis: AxisState, gravity: number, { from, to, interval }: Span): WorkParts {
  const { samples, mass, perMass, meanForce } = axis;
  let { acceleration: a, velocity: v, position: x } = axis;
  const atEnd = (sampleAt(samples, to) - meanForce) * perMass;
  let energy = energyOf(mass, v, gravity, x);
  let positive = 0;
  let negative = 0;
  let before = from;
  for (let i = Math.floor(from) + 1; before < to; i++) {
    const place = Math.min(i, to);
    const duration = (place - before) * interval;
    const next = i < to ? ((samples[i] as number) - meanForce) * perMass : atEnd;
    x = placeAfter(x, v, a, next, duration);
    v = velocityAfter(v, a, next, duration);
    a = next;
    const nextEnergy = energyOf(mass, v, gravity, x);
    const change = nextEnergy - energy;
    if (change > 0) positive += change;
    else negative += change;
    energy = nextEnergy;
    before = place;
  }
  return { positive, negative };
}

/** Rises and falls of the energies along two axes and of their sum. */
function workTogether(
  one: AxisState,
  gravityOne: number,
  two: AxisState,
  gravityTwo: number,
  { from, to, interval }: Span,
): { readonly first: WorkParts; readonly second: WorkParts; readonly together: WorkParts } {
  const { mass, perMass, samples: samples1, meanForce: mean1 } = one;
  const { samples: samples2, meanForce: mean2 } = two;
  const atEnd1 = (sampleAt(samples1, to) - mean1) * perMass;
  const atEnd2 = (sampleAt(samples2, to) - mean2) * perMass;
  let { acceleration: a1, velocity: v1, position: x1 } = one;
  let { acceleration: a2, velocity: v2, position: x2 } = two;
  let energy1 = energyOf(mass, v1, gravityOne, x1);
  let energy2 = energyOf(mass, v2, gravityTwo, x2);
  let energy = energy1 + energy2;
  let positive1 = 0;
  let negative1 = 0;
  let positive2 = 0;
  let negative2 = 0;
  let positive = 0;
  let negative = 0;
  let before = from;
  for (let i = Math.floor(from) + 1; before < to; i++) {
    const place = Math.min(i, to);
    const duration = (place - before) * interval;
    const next1 = i < to ? ((samples1[i] as number) - mean1) * perMass : atEnd1;
    const next2 = i < to ? ((samples2[i] as number) - mean2) * perMass : atEnd2;
    x1 = placeAfter(x1, v1, a1, next1, duration);
    x2 = placeAfter(x2, v2, a2, next2, duration);
    v1 = velocityAfter(v1, a1, next1, duration);
    v2 = velocityAfter(v2, a2, next2, duration);
    a1 = next1;
    a2 = next2;
    const nextEnergy1 = energyOf(mass, v1, gravityOne, x1);
    const nextEnergy2 = energyOf(mass, v2, gravityTwo, x2);
    const change1 = nextEnergy1 - energy1;
    const change2 = nextEnergy2 - energy2;
    const change = nextEnergy1 + nextEnergy2 - energy;
    if (change1 > 0) positive1 += change1;
    else negative1 += change1;
    if (change2 > 0) positive2 += change2;
    else negative2 += change2;
    if (change > 0) positive += change;
    else negative += change;
    energy1 = nextEnergy1;
    energy2 = nextEnergy2;
    energy = nextEnergy1 + nextEnergy2;
    before = place;
  }
  return {
    first: { positive: positive1, negative: negative1 },
    second: { positive: positive2, negative: negative2 },
    together: { positive, negative },
  };
}

function energyOf(mass: number, velocity: number, gravity: number, position: number): number {
  return mass * ((velocity * velocity) / 2 + gravity * position);
}
