import type { MarkerSet } from "../../recording/index.js";
import { type Complete, withDefaults } from "../../units/index.js";
import { largestBetween, negated } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerFilterOptions } from "./kinematicEvents.js";
import { kneeFlexion } from "./kneeFlexion.js";
import { eventsFrom, readLeg, swingsOfLeg } from "./readMarkers.js";
import { earlyStances, lateStances, type Swing } from "./swings.js";

/** A cutoff for the positions of markers in walking and slow running. Common practice. */
export const DINGWELL_KNEE_EXTENSION_DEFAULTS: Complete<MarkerFilterOptions> = { cutoff: 10, order: 4 };

/**
 * Finds initial contact and toe-off where the knee is most extended, at the end of the swing and before the next.
 *
 * Formula: initial contact at the largest knee extension between the middle of a swing and a quarter of the way from its
 * end to the next swing; toe-off at the largest between half that way and the first half of the rise of the next swing's speed.
 * Units: m in; s from the first frame out.
 * Limits: initial contact for walking, before the knee bends under load; it is early, the more so in running
 * (44 ms on an open recording at 2.5 m/s). Toe-off for running
 * alone: in walking the knee is straightest at heel-off, a fifth of the stride before toe-off.
 * Source: Dingwell et al. 2001, J. Biomech. Eng. 123:27; that its events are peaks of knee
 * extension, and the windows, are from memory.
 * @param markers - Heel, which tells the swings, and two points on thigh and shank, without gaps, at 50 Hz or more.
 * @param leg - Their names.
 * @param options - The smoothing; {@link DINGWELL_KNEE_EXTENSION_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link zeniCoordinateEvents}.
 * @example
 * const wave = (size, lag) => Float64Array.from({ length: 400 }, (_, i) => -size * Math.cos((2 * Math.PI * (i - lag)) / 100))
 * const marker = (name, forward, height) => ({ name, forward, up: new Float64Array(400).fill(height), right: forward })
 * const still = wave(0, 0)
 * const points = [marker("hip", still, 0.9), marker("knee", still, 0.5), marker("ankle", wave(0.2, 0), 0.1), marker("heel", wave(0.3, 0), 0.05)]
 * const leg = { heel: "heel", thigh: { upper: "hip", lower: "knee" }, shank: { upper: "knee", lower: "ankle" } }
 * dingwellKneeExtensionEvents({ sampleRate: 100, startTime: 0, markers: points }, leg).initialContacts.length // 4
 */
export function dingwellKneeExtensionEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "thigh" | "shank" | "side">,
  options: MarkerFilterOptions = {},
): KinematicEvents {
  const reader = readLeg(
    markers,
    withDefaults<MarkerFilterOptions>(DINGWELL_KNEE_EXTENSION_DEFAULTS, options),
  );
  const extension = negated(kneeFlexion(reader, leg.thigh, leg.shank));
  const swings = swingsOfLeg(reader, leg.heel, null);
  return eventsFrom("Dingwell knee extension", reader, leg.side, swings, {
    contacts: earlyStances(swings, extension.length, 0.25).map(({ last }, k) =>
      largestBetween(extension, (swings[k] as Swing).peak, last),
    ),
    toeOffs: lateStances(swings, 0.5).map(({ first, last }) => largestBetween(extension, first, last)),
  });
}
