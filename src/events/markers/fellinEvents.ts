import { derivative } from "../../filters/index.js";
import type { MarkerSet } from "../../recording/index.js";
import { type Complete, requireOneOf, withDefaults } from "../../units/index.js";
import { firstRise, largestBetween, negated } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerFilterOptions } from "./kinematicEvents.js";
import { kneeFlexion } from "./kneeFlexion.js";
import { eventsFrom, readLeg, swingsOfLeg } from "./readMarkers.js";
import { afterSwings, lateStances } from "./swings.js";

/** How {@link fellinEvents} smooths markers and which feature of the heel it takes for initial contact. */
export interface FellinOptions extends MarkerFilterOptions {
  /** The heel's lowest place, or the first change of its vertical velocity from downward to upward after the swing. */
  readonly contactFeature?: "lowest heel" | "upward velocity" | undefined;
}

/** Cutoff for markers in running: common practice. The velocity's first change comes before the lowest place, never after. */
export const FELLIN_DEFAULTS: Complete<FellinOptions> = {
  cutoff: 12,
  order: 4,
  contactFeature: "upward velocity",
};

/**
 * Finds a runner's initial contact from the height of the heel, and toe-off where the knee is most extended.
 *
 * Formula: initial contact where the heel is lowest, or where its vertical velocity first rises through zero after the
 * swing; toe-off at the largest knee extension between the middle of the time between two swings and the first half of the rise of the next swing's speed.
 * Units: m in; s from the first frame out.
 * Limits: for running; in walking the knee bends long before toe-off. After a landing on the forefoot the heel is lowest in
 * mid-stance, and contact is late. Without thigh and shank there are no toe-offs.
 * Source: Fellin et al. 2010, J. Sci. Med. Sport 13:646 (abstract): at 3.35 m/s the two contact
 * features differ by 22.4 to 24.6 ms from force, toe-off from peak knee extension by 4.9 ms on the ground and 5.2 ms on a
 * treadmill. The windows are this library's.
 * @param markers - Heel, and two points on thigh and shank, without gaps, at 50 Hz or more.
 * @param leg - Their names; `thigh` and `shank` may be left out together.
 * @param options - Smoothing and feature; {@link FELLIN_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: no such feature; otherwise as {@link zeniCoordinateEvents}.
 * @example
 * const turn = (i) => (2 * Math.PI * i) / 100
 * const forward = Float64Array.from({ length: 400 }, (_, i) => -Math.cos(turn(i)) / 3)
 * const up = Float64Array.from({ length: 400 }, (_, i) => 0.1 + Math.sin(turn(i)) / 10)
 * const markers = { sampleRate: 100, startTime: 0, markers: [{ name: "heel", forward, up, right: up }] }
 * fellinEvents(markers, { heel: "heel" }).initialContacts.length // 4
 */
export function fellinEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "side"> & Partial<Pick<LegMarkers, "thigh" | "shank">>,
  options: FellinOptions = {},
): KinematicEvents {
  const { contactFeature, ...filter } = withDefaults<FellinOptions>(FELLIN_DEFAULTS, options);
  requireOneOf("contactFeature", contactFeature, ["lowest heel", "upward velocity"]);
  const reader = readLeg(markers, filter);
  const heel = reader.series("heel", leg.heel, "up");
  const swings = swingsOfLeg(reader, leg.heel, null);
  const depth = negated(heel);
  const upward = derivative(heel, reader.sampleRate);
  const { thigh, shank } = leg;
  const extension =
    thigh === undefined || shank === undefined ? null : negated(kneeFlexion(reader, thigh, shank));
  return eventsFrom("Fellin heel and knee", reader, leg.side, swings, {
    contacts: afterSwings(swings, heel.length, "to").map(({ first, last }) =>
      contactFeature === "lowest heel" ? largestBetween(depth, first, last) : firstRise(upward, first, last),
    ),
    toeOffs:
      extension === null
        ? []
        : lateStances(swings, 0.5).map(({ first, last }) => largestBetween(extension, first, last)),
  });
}
