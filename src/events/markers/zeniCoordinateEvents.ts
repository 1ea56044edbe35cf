import type { MarkerSet } from "../../recording/index.js";
import { type Complete, withDefaults } from "../../units/index.js";
import { largestBetween, negated } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerFilterOptions } from "./kinematicEvents.js";
import { eventsFrom, minus, readLeg, swingsOfLeg } from "./readMarkers.js";
import { afterSwings, beforeSwings } from "./swings.js";

/** A cutoff for the positions of markers in walking and slow running. Common practice. */
export const ZENI_COORDINATE_DEFAULTS: Complete<MarkerFilterOptions> = { cutoff: 10, order: 4 };

/**
 * Finds initial contact and toe-off where heel and toe are farthest ahead of and behind the pelvis.
 *
 * Formula: initial contact at the largest heel − pelvis, toe-off at the smallest toe − pelvis along `forward`, once a
 * stride, on the parabola through three frames. The same on the ground and on a belt.
 * Units: m in; s from the first frame out.
 * Limits: for walking. A runner's foot is drawn back before it lands, so initial contact is early there, and the
 * toe goes on backward after it has left the ground: 42 ms early and 77 ms late on an open recording at 2.5 m/s. The whole recording in one direction, which is `forward`.
 * Source: Zeni JA, Richards JG, Higginson JS 2008, Gait Posture 27:710 (abstract): extremes of heel and toe from the sacrum;
 * in healthy treadmill walking 94 % of events within 16.7 ms of those by force.
 * @param markers - Heel, toe and pelvis without gaps, at 50 Hz or more.
 * @param leg - Names of the three.
 * @param options - The smoothing; {@link ZENI_COORDINATE_DEFAULTS} where left out.
 * @throws GaitKineticsError `gap`: a marker not seen in a frame; `missing-channel`: a name that the set does not hold;
 * `missing-value`: no name; `unequal-lengths`; `too-short`; `out-of-range`: rate below 50 Hz, cutoff not between 0 and half the
 * rate; `unknown-option`.
 * @example
 * const way = Float64Array.from({ length: 400 }, (_, i) => -Math.cos((2 * Math.PI * i) / 100) / 3)
 * const still = new Float64Array(400)
 * const marker = (name, forward) => ({ name, forward, up: still, right: still })
 * const markers = { sampleRate: 100, startTime: 0, markers: [marker("heel", way), marker("toe", way), marker("sacrum", still)] }
 * zeniCoordinateEvents(markers, { heel: "heel", toe: "toe", pelvis: "sacrum" }).initialContacts.length // 4
 */
export function zeniCoordinateEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "toe" | "pelvis" | "side">,
  options: MarkerFilterOptions = {},
): KinematicEvents {
  const reader = readLeg(markers, withDefaults<MarkerFilterOptions>(ZENI_COORDINATE_DEFAULTS, options));
  const pelvis = reader.series("pelvis", leg.pelvis, "forward");
  const ahead = minus(reader.series("heel", leg.heel, "forward"), pelvis);
  const behind = negated(minus(reader.series("toe", leg.toe, "forward"), pelvis));
  const swings = swingsOfLeg(reader, leg.heel, leg.pelvis);
  return eventsFrom("Zeni coordinate", reader, leg.side, swings, {
    contacts: afterSwings(swings, ahead.length, "peak").map(({ first, last }) =>
      largestBetween(ahead, first, last),
    ),
    toeOffs: beforeSwings(swings).map(({ first, last }) => largestBetween(behind, first, last)),
  });
}
