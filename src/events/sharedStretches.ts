import { integralBetween } from "../filters/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Caution, Fraction } from "../units/index.js";
import type { Stretch } from "./crossings.js";
import { underFoot } from "./underFoot.js";

/**
 * Two plates loaded together for more than this share of the shorter time carry one foot: two feet of a walk
 * share about a fifth. Common practice.
 */
const ONE_FOOT: Fraction = 0.5;
/**
 * A touch with no more than this share of the impulse of both, as by crosstalk or the tip of the shoe, leaves the
 * contact on the other plate a whole one. A judgement.
 */
const LIGHT: Fraction = 0.02;

/** The stretches that stand on two plates at once as one foot does. */
export interface SharedStretches {
  /** Indices of the stretches that hold a part of a foot's force only. */
  readonly parts: ReadonlySet<number>;
  /** For the lesser of two: the index of the greater one, whose foot it is. */
  readonly lesser: ReadonlyMap<number, number>;
  /** Whether some of them cannot be two feet: both plates are of one side, or one is hardly loaded. */
  readonly sure: boolean;
  readonly cautions: readonly Caution[];
}

/**
 * Finds contacts of one foot across two plates that are kept apart: each of the two holds a part of the force
 * and is no contact to measure.
 * @param stretches - In order of initial contact.
 */
export function sharedStretches(ground: GroundReaction, stretches: readonly Stretch[]): SharedStretches {
  const parts = new Set<number>();
  const lesser = new Map<number, number>();
  const times: number[] = [];
  let light = 0;
  let sure = false;
  stretches.forEach((one, k) => {
    for (let m = k + 1; m < stretches.length; m++) {
      const other = stretches[m] as Stretch;
      if (other.initialContact >= one.toeOff) break;
      if (other.plate === one.plate || !oneFoot(one, other)) continue;
      const side = underFoot(ground, one).side;
      if (side !== undefined && side === underFoot(ground, other).side) sure = true;
      const [a, b] = [impulse(ground, one), impulse(ground, other)];
      const [small, large] = a < b ? [k, m] : [m, k];
      lesser.set(small, large);
      parts.add(small);
      if (Math.min(a, b) <= LIGHT * (a + b)) {
        light++;
        sure = true;
      } else {
        parts.add(large);
        times.push(other.initialContact);
      }
    }
  });
  return { parts, lesser, sure, cautions: cautionsOf(times, light) };
}

function oneFoot(one: Stretch, other: Stretch): boolean {
  const shared = Math.min(one.toeOff, other.toeOff) - other.initialContact;
  const shorter = one.toeOff - one.initialContact < other.toeOff - other.initialContact ? one : other;
  // How long a contact lasts that an end of the recording cuts is not known.
  return !shorter.cut && shared > ONE_FOOT * (shorter.toeOff - shorter.initialContact);
}

function impulse(ground: GroundReaction, stretch: Stretch): number {
  const { up } = underFoot(ground, stretch).force;
  return integralBetween(up, ground.sampleRate, stretch.initialContact, stretch.toeOff);
}

function cautionsOf(times: readonly number[], light: number): Caution[] {
  const cautions: Caution[] = [];
  const [first] = times;
  if (first !== undefined) {
    cautions.push({
      code: "contacts-on-two-plates",
      message: `two plates carried one contact at once ${times.length === 1 ? "once" : `${times.length} times`}, first ${first.toFixed(2)} s after the first sample: its two parts are counted as partial contacts, not as complete ones; take the plates together, or one of them alone, to measure it`,
      values: { contacts: times.length, first },
    });
  }
  if (light > 0) {
    cautions.push({
      code: "touches-left-out",
      message: `${light === 1 ? "1 light touch" : `${light} light touches`} of another plate during a contact, with at most ${100 * LIGHT} % of its impulse, ${light === 1 ? "is" : "are"} no contact of ${light === 1 ? "its" : "their"} own`,
      values: { touches: light },
    });
  }
  return cautions;
}
