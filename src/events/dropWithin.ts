import type { Fraction, Hertz } from "../units/index.js";
import type { CrossingRule, Stretch } from "./crossings.js";

/** Share of the largest force of a stretch that a second contact in it reaches too, and falls below in between. A judgement. */
const LOADED: Fraction = 0.5;

/**
 * Tells how far the force falls away within a stretch between two loads of like size, with room for a contact before and
 * behind: below the fall level (`whole`), as in a flight that was too short to end a contact, or less far (`partial`), as in
 * one whose force is too high. The dip behind the impact of a heel comes too early for that, noise bears too little.
 */
export function dropWithin(
  up: Float64Array,
  sampleRate: Hertz,
  { initialContact, toeOff }: Stretch,
  { fallLevel, shortestContact }: CrossingRule,
): Stretch["drop"] | null {
  if (toeOff - initialContact < 2 * shortestContact) return null;
  const first = Math.max(0, Math.ceil(initialContact * sampleRate));
  const last = Math.min(up.length - 1, Math.floor(toeOff * sampleRate));
  const level = LOADED * largest(up, first, last);
  let loaded = false;
  let lowest = Number.POSITIVE_INFINITY;
  let at = first;
  let drop: Stretch["drop"] | null = null;
  for (let i = first; i <= last; i++) {
    const value = up[i] as number;
    if (value < level) {
      if (loaded && value < lowest) {
        lowest = value;
        at = i;
      }
      continue;
    }
    const before = at / sampleRate - initialContact;
    const behind = toeOff - at / sampleRate;
    if (lowest < level && before >= shortestContact && behind >= shortestContact) {
      if (lowest < fallLevel) return "whole";
      drop = "partial";
    }
    loaded = true;
    lowest = Number.POSITIVE_INFINITY;
  }
  return drop;
}

function largest(up: Float64Array, first: number, last: number): number {
  let most = 0;
  for (let i = first; i <= last; i++) if ((up[i] as number) > most) most = up[i] as number;
  return most;
}
