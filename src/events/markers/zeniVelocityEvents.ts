import { derivative } from "../../filters/index.js";
import type { MarkerSet, Surface } from "../../recording/index.js";
import { type Complete, fail, requireOneOf, withDefaults } from "../../units/index.js";
import { firstRise, lastRise, negated } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerChoice, MarkerFilterOptions } from "./kinematicEvents.js";
import { eventsFrom, minus, readLeg, swingsOfLeg } from "./readMarkers.js";
import { afterSwings, beforeSwings } from "./swings.js";

/** How {@link zeniVelocityEvents} smooths markers, and what the foot lands on. */
export interface ZeniVelocityOptions extends MarkerFilterOptions {
  /** On a belt the foot's own speed is read, on the ground that relative to the pelvis; `null`: as on the ground. */
  readonly surface?: Surface | null | undefined;
}

/** A cutoff for the positions of markers in walking and slow running. Common practice. */
export const ZENI_VELOCITY_DEFAULTS: Complete<ZeniVelocityOptions> = { cutoff: 10, order: 4, surface: null };

/**
 * Finds initial contact and toe-off where the forward velocity of heel and toe changes its sign.
 *
 * Formula: initial contact at the first fall through zero of the heel's velocity after mid-swing, toe-off at the last rise
 * through zero of the toe's before it, linear between frames. On a belt the velocity in the room, on the ground that relative
 * to the pelvis, which crosses zero where {@link zeniCoordinateEvents} finds its extremes.
 * Units: m in; s from the first frame out.
 * Limits: as {@link zeniCoordinateEvents}: for walking, and early at initial contact in running. On a belt a runner who
 * drifts along it moves nothing but the events by that share of the belt's speed.
 * Source: Zeni JA, Richards JG, Higginson JS 2008, Gait Posture 27:710 (abstract): change of sign of the heel's and toe's
 * velocity; that it is relative to the pelvis on the ground is from memory.
 * @param markers - Heel and toe, and the pelvis on the ground, without gaps, at 50 Hz or more.
 * @param leg - Their names; `pelvis` may be left out where the surface is a belt.
 * @param options - Smoothing and surface; {@link ZENI_VELOCITY_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-value`: no name, or no pelvis and no belt; otherwise as {@link zeniCoordinateEvents}.
 * @example
 * const way = Float64Array.from({ length: 400 }, (_, i) => -Math.cos((2 * Math.PI * i) / 100) / 3)
 * const still = new Float64Array(400)
 * const marker = (name, forward) => ({ name, forward, up: still, right: still })
 * const markers = { sampleRate: 100, startTime: 0, markers: [marker("heel", way), marker("toe", way)] }
 * zeniVelocityEvents(markers, { heel: "heel", toe: "toe" }, { surface: "belt" }).initialContacts.length // 4
 */
export function zeniVelocityEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "toe" | "side"> & { readonly pelvis?: MarkerChoice | undefined },
  options: ZeniVelocityOptions = {},
): KinematicEvents {
  const { surface, ...filter } = withDefaults<ZeniVelocityOptions>(ZENI_VELOCITY_DEFAULTS, options);
  if (surface !== null) requireOneOf("surface", surface, ["ground", "belt"]);
  const pelvis = surface === "belt" ? null : leg.pelvis;
  if (pelvis === undefined) {
    fail(
      "missing-value",
      'without a pelvis marker the surface must be stated as "belt": on the ground the velocity relative to the pelvis is read',
      { argument: "pelvis" },
    );
  }
  const reader = readLeg(markers, filter);
  const velocity = (part: "heel" | "toe") => {
    const foot = reader.series(part, leg[part], "forward");
    const relative = pelvis === null ? foot : minus(foot, reader.series("pelvis", pelvis, "forward"));
    return derivative(relative, reader.sampleRate);
  };
  const backward = negated(velocity("heel"));
  const toe = velocity("toe");
  const swings = swingsOfLeg(reader, leg.heel, pelvis);
  return eventsFrom("Zeni velocity", reader, leg.side, swings, {
    contacts: afterSwings(swings, toe.length, "peak").map(({ first, last }) =>
      firstRise(backward, first, last),
    ),
    toeOffs: beforeSwings(swings).map(({ first, last }) => lastRise(toe, first, last)),
  });
}
