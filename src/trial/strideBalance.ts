import type { Step } from "../events/index.js";
import { integralBetween } from "../filters/index.js";
import type { GroundReaction } from "../force/index.js";
import { type Interval, ratioInterval } from "../statistics/index.js";
import type { Fraction } from "../units/index.js";

/** Mean of one horizontal component over whole strides, as a share of the vertical force. */
export interface Balance {
  readonly share: Fraction;
  /** 95 % interval between strides; `null` with fewer than two, or where they do not tell. */
  readonly interval: Interval | null;
}

/** Both horizontal components; one that was not recorded is absent. */
export interface StrideBalance {
  /** Beyond what the grade explains. */
  readonly forward?: Balance;
  readonly right?: Balance;
}

/** What the intervals are meant to cover. */
const LEVEL = 0.95;

/**
 * Mean horizontal over mean vertical force, over whole strides that do not overlap; `null` without one. Both vanish for a
 * runner who keeps speed and course: the forward one is the slope.
 */
export function strideBalance(ground: GroundReaction, steps: readonly Step[]): StrideBalance | null {
  const { grade = 0 } = ground;
  const { forward, up, right } = ground.force;
  const along = { forward: [] as number[], up: [] as number[], right: [] as number[] };
  let until = Number.NEGATIVE_INFINITY;
  for (const { contact, nextSameSide } of steps) {
    if (nextSameSide === undefined || contact.initialContact < until) continue;
    const from = contact.initialContact;
    until = nextSameSide.initialContact;
    const impulse = (samples: Float64Array) => integralBetween(samples, ground.sampleRate, from, until);
    const support = impulse(up);
    along.up.push(support);
    if (forward !== undefined) along.forward.push(impulse(forward) - grade * support);
    if (right !== undefined) along.right.push(impulse(right));
  }
  const total = sum(along.up);
  if (!(total > 0)) return null;
  const balance = (impulses: readonly number[]): Balance => ({
    share: sum(impulses) / total,
    interval: impulses.length < 2 ? null : ratioInterval(impulses, along.up, LEVEL).interval,
  });
  return {
    ...(forward !== undefined && { forward: balance(along.forward) }),
    ...(right !== undefined && { right: balance(along.right) }),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
