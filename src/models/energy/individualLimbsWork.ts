import {
  type Complete,
  fail,
  type Kilograms,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";
import { advanceAxis } from "../advanceAxis.js";
import { type AxisState, startAxis } from "../axisState.js";
import type { WorkParts } from "../externalWork.js";
import type { ForceRecord } from "../forceRecord.js";
import { massFromForce } from "../massFromForce.js";
import { requireSpan } from "../requireSpan.js";
import { sampleAt } from "../sampleAt.js";

/** The force under each foot, on the same samples. */
export interface LimbRecords {
  readonly left: ForceRecord;
  readonly right: ForceRecord;
}

/** What {@link individualLimbsWork} needs beside the forces. */
export interface IndividualLimbsWorkOptions {
  /** Mass to integrate with; `null` for the one by force over the same stride. */
  readonly mass?: Kilograms | null | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | undefined;
  /** Where to begin adding up, such as the start of a double support; `null` for the start of the span. */
  readonly since?: Seconds | null | undefined;
  /** Where to stop adding up; `null` for the end of the span. */
  readonly until?: Seconds | null | undefined;
}

/** Mass by force, standard gravity, level, work over the whole span. Source: common practice. */
export const INDIVIDUAL_LIMBS_WORK_DEFAULTS: Complete<IndividualLimbsWorkOptions> = {
  mass: null,
  gravity: STANDARD_GRAVITY,
  grade: 0,
  since: null,
  until: null,
};

/** Work of each leg on the centre of mass, and of both taken as one. */
export interface IndividualLimbsWork {
  readonly left: WorkParts;
  readonly right: WorkParts;
  /** Of the sum of both forces: what one leg does while the other undoes it cancels. */
  readonly combined: WorkParts;
}

/**
 * Gives the work that each leg does on the centre of mass while both are on the ground: the individual limbs method.
 *
 * Formula: P_i = F_i · v, v the velocity of the centre of mass from the sum of the forces as in {@link centreOfMassMotion};
 * positive and negative power of each leg is integrated before anything is added. Power lies on straight lines between samples.
 * Units: N, s, kg and m/s in; J out.
 * Limits: `from` to `to` must be whole strides of steady gait. The sideways force counts where both records have it. In
 * walking the combined work is about a third less than that of the legs. It is work on the centre of mass alone: legs that
 * swing and joints that work against each other are not in it.
 * Source: Donelan, Kram & Kuo 2002, J Biomech 35:117 (abstract).
 * @param limbs - Force under each foot, both with `forward`, of one rate and length.
 * @param from - Start of the stride, from the first sample.
 * @param to - End of the stride, above `from`, within the samples.
 * @param speed - Mean forward velocity over the surface.
 * @param options - Mass, gravity, grade, where to add up; {@link INDIVIDUAL_LIMBS_WORK_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no forward force; `unequal-lengths`: records of different length or rate;
 * `out-of-range`, `wrong-type`, `not-finite`: times that do not rise within the samples, an option out of bounds.
 * @example
 * const one = { sampleRate: 10, force: { up: new Float64Array([0, 1400, 0, 1400, 0]), forward: new Float64Array(5) } };
 * const none = { sampleRate: 10, force: { up: new Float64Array(5), forward: new Float64Array(5) } };
 * individualLimbsWork({ left: one, right: none }, 0, 0.4, 3, { mass: 70 }).right.positive; // 0
 */
export function individualLimbsWork(
  limbs: LimbRecords,
  from: Seconds,
  to: Seconds,
  speed: MetresPerSecond,
  options: IndividualLimbsWorkOptions = INDIVIDUAL_LIMBS_WORK_DEFAULTS,
): IndividualLimbsWork {
  const settings = withDefaults(INDIVIDUAL_LIMBS_WORK_DEFAULTS, options);
  const { gravity, grade } = settings;
  const axes = pairsOf(limbs);
  const { sampleRate } = limbs.left;
  const total = axes.map(([left, right]) => left.map((force, i) => force + (right[i] as number)));
  const up = total[0] as Float64Array;
  requireSpan(up, sampleRate, from, to);
  requireNumber("speed", speed, { unit: "m/s" });
  const since = requireNumber("since", settings.since ?? from, { from, below: to, unit: "s" });
  const until = requireNumber("until", settings.until ?? to, { above: since, to, unit: "s" });
  const mass = settings.mass ?? massFromForce(up, sampleRate, from, to, { gravity, grade });
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  // Up, forward and, where recorded, right.
  const motion = total.map((samples, axis) =>
    startAxis(samples, sampleRate, from, to, mass, axis === 1 ? speed : 0),
  );
  const left = tally();
  const right = tally();
  const combined = tally();
  const powers = (place: number): void => {
    left.next = 0;
    right.next = 0;
    for (let axis = 0; axis < motion.length; axis++) {
      const [ofLeft, ofRight] = axes[axis] as Pair;
      const { velocity } = motion[axis] as AxisState;
      left.next += sampleAt(ofLeft, place) * velocity;
      right.next += sampleAt(ofRight, place) * velocity;
    }
    combined.next = left.next + right.next;
  };
  const begin = since * sampleRate;
  const end = until * sampleRate;
  const tallies = [left, right, combined];
  let place = from * sampleRate;
  powers(place);
  while (place < end) {
    const sample = Math.floor(place) + 1;
    const next = Math.min(place < begin && begin < sample ? begin : sample, end);
    const duration = (next - place) / sampleRate;
    for (const axis of motion) advanceAxis(axis, sampleAt(axis.samples, next), duration);
    for (const limb of tallies) limb.power = limb.next;
    powers(next);
    if (place >= begin) for (const limb of tallies) add(limb, duration);
    place = next;
  }
  return { left: partsOf(left), right: partsOf(right), combined: partsOf(combined) };
}

type Pair = readonly [left: Float64Array, right: Float64Array];

/** Left and right samples of each axis that both have, `up` and `forward` first. */
function pairsOf({ left, right }: LimbRecords): readonly Pair[] {
  if (left.force.forward === undefined || right.force.forward === undefined) {
    fail("missing-channel", "the work of each leg needs the forward force under both feet", {
      argument: "limbs",
    });
  }
  if (left.sampleRate !== right.sampleRate || left.force.up.length !== right.force.up.length) {
    fail(
      "unequal-lengths",
      `left has ${left.force.up.length} samples at ${left.sampleRate} Hz, right ${right.force.up.length} at ${right.sampleRate} Hz; both must be alike`,
      { argument: "limbs" },
    );
  }
  const pairs: Pair[] = [
    [left.force.up, right.force.up],
    [left.force.forward, right.force.forward],
  ];
  if (left.force.right !== undefined && right.force.right !== undefined) {
    pairs.push([left.force.right, right.force.right]);
  }
  return pairs;
}

/** Power of one leg on its way; changed in place. */
interface Tally {
  power: number;
  next: number;
  positive: number;
  negative: number;
}

function tally(): Tally {
  return { power: 0, next: 0, positive: 0, negative: 0 };
}

/** Adds a straight piece of power, split at its zero. */
function add(limb: Tally, duration: number): void {
  const { power: a, next: b } = limb;
  const work = (duration * (a + b)) / 2;
  if (a >= 0 === b >= 0) {
    if (work > 0) limb.positive += work;
    else limb.negative += work;
    return;
  }
  const height = Math.max(a, b);
  const positive = (duration * height * height) / (2 * Math.abs(a - b));
  limb.positive += positive;
  limb.negative += work - positive;
}

function partsOf({ positive, negative }: Tally): WorkParts {
  return { positive, negative };
}
