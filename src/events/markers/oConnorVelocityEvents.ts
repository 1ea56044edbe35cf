import { derivative } from "../../filters/index.js";
import type { MarkerSet } from "../../recording/index.js";
import { type Complete, type Fraction, requireNumber, withDefaults } from "../../units/index.js";
import { largestBetween, negated } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerFilterOptions } from "./kinematicEvents.js";
import { eventsFrom, readLeg, swingsOfLeg } from "./readMarkers.js";
import { afterSwings, beforeSwings, type Region } from "./swings.js";

/** How {@link oConnorVelocityEvents} smooths markers and how high the heel may be at initial contact. */
export interface OConnorVelocityOptions extends MarkerFilterOptions {
  /** Initial contact only where the heel is below this share of its range of height. */
  readonly heelShare?: Fraction | undefined;
}

/** Cutoff and share as in the publication, from memory. */
export const O_CONNOR_VELOCITY_DEFAULTS: Complete<OConnorVelocityOptions> = {
  cutoff: 7,
  order: 4,
  heelShare: 0.35,
};

/**
 * Finds initial contact and toe-off from the vertical velocity of the middle of the foot, half-way between heel and toe.
 *
 * Formula: toe-off where the velocity is largest between the end of one swing and the middle of the next; initial contact where it is
 * smallest after the middle of the swing, while the heel is below a share of its range of height; on the parabola
 * through three frames.
 * Units: m in; s from the first frame out.
 * Limits: for walking. In running the slap of the forefoot after a heel strike may be faster than the landing, and
 * contact is then late; heights are along `up`, so a slope of the walkway must be taken out.
 * Source: O'Connor et al. 2007, Gait Posture 25:469 (abstract): features of the foot's vertical
 * velocity from heel and toe markers; 54 children walking, contact 16 ± 15 ms and toe-off 9 ± 15 ms from force. That the
 * features are these extremes, and share and cutoff, are from memory.
 * @param markers - Heel and toe without gaps, at 50 Hz or more.
 * @param leg - Their names.
 * @param options - Smoothing and share; {@link O_CONNOR_VELOCITY_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: share outside 0 to 1; otherwise as {@link zeniCoordinateEvents}.
 * @example
 * const turn = (i) => (2 * Math.PI * i) / 100
 * const forward = Float64Array.from({ length: 400 }, (_, i) => -Math.cos(turn(i)) / 3)
 * const up = Float64Array.from({ length: 400 }, (_, i) => 0.1 + Math.sin(turn(i)) / 10)
 * const heel = { name: "heel", forward, up, right: up }
 * const markers = { sampleRate: 100, startTime: 0, markers: [heel, { ...heel, name: "toe" }] }
 * oConnorVelocityEvents(markers, { heel: "heel", toe: "toe" }, { heelShare: 0.6 }).initialContacts.length // 4
 */
export function oConnorVelocityEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "toe" | "side">,
  options: OConnorVelocityOptions = {},
): KinematicEvents {
  const { heelShare, ...filter } = withDefaults<OConnorVelocityOptions>(O_CONNOR_VELOCITY_DEFAULTS, options);
  requireNumber("heelShare", heelShare, { above: 0, to: 1 });
  const reader = readLeg(markers, filter);
  const heel = reader.series("heel", leg.heel, "up");
  const toe = reader.series("toe", leg.toe, "up");
  const middle = heel.map((height, i) => (height + (toe[i] as number)) / 2);
  const upward = derivative(middle, reader.sampleRate);
  const downward = negated(upward);
  const low = lowUntil(heel, heelShare);
  const swings = swingsOfLeg(reader, leg.heel, null);
  return eventsFrom("O'Connor velocity", reader, leg.side, swings, {
    contacts: afterSwings(swings, heel.length, "peak").map((window) => {
      const { first, last } = low(window);
      return largestBetween(downward, first, last);
    }),
    toeOffs: beforeSwings(swings).map(({ first, last }) => largestBetween(upward, first, last)),
  });
}

/** Narrows a window to its first stretch in which the heel is below the share of its range. */
function lowUntil(heel: Float64Array, share: number): (window: Region) => Region {
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (const height of heel) {
    lowest = Math.min(lowest, height);
    highest = Math.max(highest, height);
  }
  const level = lowest + share * (highest - lowest);
  return ({ first, last }) => {
    let from = first;
    while (from < last && (heel[from] as number) > level) from++;
    let to = from;
    while (to < last && (heel[to + 1] as number) <= level) to++;
    return { first: from, last: to };
  };
}
