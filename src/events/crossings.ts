import type { Hertz, Seconds } from "../units/index.js";

/** The level, its hysteresis and the shortest durations that make a contact. */
export interface CrossingRule {
  /** Rise level, at which both events are read, N. */
  readonly threshold: number;
  /** Level that the force must have fallen below before a contact can have ended, N. */
  readonly fallLevel: number;
  /** A fall that is followed by a rise within this time is no toe-off, s. */
  readonly shortestFlight: Seconds;
  /** What is shorter is no contact, s. */
  readonly shortestContact: Seconds;
}

/**
 * A stretch of contact; `cut` where the recording's start or end cuts it, and its time there is the
 * recording's own end.
 */
export interface Stretch {
  readonly initialContact: Seconds;
  readonly toeOff: Seconds;
  readonly cut: boolean;
  /** How far the force falls away between two loads that a contact each would bear; absent where it does not. */
  readonly drop?: "whole" | "partial";
  /** It holds the contacts of both feet, which could not be parted. */
  readonly untold?: true;
  /** Index of the plate it was found on, where plates are kept apart. */
  readonly plate?: number;
  /** One foot's part of a stretch in which both feet loaded the plate. */
  readonly shared?: true;
  /** Level that its events are read at, where that is not the rule's, N. */
  readonly level?: number;
}

/**
 * Finds the stretches above a threshold. A sample on the threshold counts as above; times are linear between
 * samples. One pass, no allocation but the stretches found.
 */
export function findStretches(up: Float64Array, sampleRate: Hertz, rule: CrossingRule): Stretch[] {
  const { threshold, fallLevel, shortestFlight, shortestContact } = rule;
  const stretches: Stretch[] = [];
  let inside = up.length > 0 && (up[0] as number) >= threshold;
  let cut = inside;
  let start = 0;
  /**
   * Time of the last downward crossing since which the force has stayed below the threshold; −1 while above.
   */
  let fell = -1;
  let belowFallLevel = false;
  const close = (end: number, cutAtEnd: boolean) => {
    if (cut || cutAtEnd || end - start >= shortestContact) {
      stretches.push({ initialContact: start, toeOff: end, cut: cut || cutAtEnd });
    }
    inside = false;
    cut = false;
  };
  for (let i = 1; i < up.length; i++) {
    const before = up[i - 1] as number;
    const now = up[i] as number;
    if (before < threshold && now >= threshold) {
      const rise = (i - 1 + (threshold - before) / (now - before)) / sampleRate;
      if (inside && belowFallLevel && rise - fell >= shortestFlight) close(fell, false);
      if (!inside) {
        inside = true;
        start = rise;
      }
      fell = -1;
      belowFallLevel = false;
    } else if (before >= threshold && now < threshold) {
      fell = (i - 1 + (threshold - before) / (now - before)) / sampleRate;
      belowFallLevel = now < fallLevel;
    } else if (fell >= 0 && now < fallLevel) belowFallLevel = true;
  }
  if (inside) {
    const last = (up.length - 1) / sampleRate;
    if (fell >= 0 && belowFallLevel) close(fell, false);
    else close(last, true);
  }
  return stretches;
}
