import { derivative, secondDerivative } from "../../filters/index.js";
import type { MarkerSet } from "../../recording/index.js";
import { type Complete, withDefaults } from "../../units/index.js";
import { largestBetween } from "./extremes.js";
import type { KinematicEvents, LegMarkers, MarkerFilterOptions } from "./kinematicEvents.js";
import { eventsFrom, readLeg, swingsOfLeg } from "./readMarkers.js";
import { earlyStances, lateStances } from "./swings.js";

/**
 * Chosen on an open running recording at 150 Hz: from 20 to 70 Hz contact moves by 2 ms, above 40 Hz single toe-offs are lost,
 * and 20 Hz bears more noise than 30 Hz.
 */
export const HANDSAKER_ACCELERATION_DEFAULTS: Complete<MarkerFilterOptions> = { cutoff: 20, order: 4 };

/** Acceleration and jerk within this time of the recording's ends are the smoothing's own, s. */
const END_MARGIN = 0.04;

/**
 * Finds a runner's initial contact and toe-off from vertical acceleration and jerk of the foot's markers.
 *
 * Formula: initial contact at the peak of the vertical acceleration of heel or toe, whichever comes first, between the end
 * of a swing and half-way to the next; toe-off at the peak of the toe's vertical jerk between three quarters of that way and
 * the first half of the rise of the next swing's speed; on the parabola through three frames.
 * Units: m in; s from the first frame out.
 * Limits: for running. Acceleration and jerk need 150 Hz or more and little smoothing. Toe-off was published for a marker on the
 * hallux; read on the first metatarsal of an open recording at 2.5 m/s it comes 29 ms late, and 0.5 mm of noise hides it.
 * Source: Handsaker et al. 2016, J. Biomech., doi:10.1016/j.jbiomech.2016.10.013
 * (abstract): first peak of vertical acceleration of heel or first metatarsal, peak of the hallux' vertical jerk; over foot
 * strikes and speeds contact +3.1 ms (−11.8 to +18.1), toe-off +2.1 ms (−8.1 to +12.2). The windows are this library's.
 * @param markers - Heel and toe without gaps, at 50 Hz or more.
 * @param leg - Their names; `toe` is the hallux, or the first metatarsal where there is none.
 * @param options - The smoothing; {@link HANDSAKER_ACCELERATION_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link zeniCoordinateEvents}.
 * @example
 * const turn = (i) => (2 * Math.PI * i) / 100
 * const forward = Float64Array.from({ length: 400 }, (_, i) => -Math.cos(turn(i)) / 3)
 * const up = Float64Array.from({ length: 400 }, (_, i) => 0.1 + Math.sin(turn(i)) / 10)
 * const heel = { name: "heel", forward, up, right: up }
 * const markers = { sampleRate: 100, startTime: 0, markers: [heel, { ...heel, name: "toe" }] }
 * handsakerAccelerationEvents(markers, { heel: "heel", toe: "toe" }).method // "Handsaker acceleration"
 */
export function handsakerAccelerationEvents(
  markers: MarkerSet,
  leg: Pick<LegMarkers, "heel" | "toe" | "side">,
  options: MarkerFilterOptions = {},
): KinematicEvents {
  const reader = readLeg(
    markers,
    withDefaults<MarkerFilterOptions>(HANDSAKER_ACCELERATION_DEFAULTS, options),
  );
  const { sampleRate } = reader;
  const acceleration = (part: "heel" | "toe") =>
    secondDerivative(reader.series(part, leg[part], "up"), sampleRate);
  const heel = acceleration("heel");
  const toe = acceleration("toe");
  const jerk = derivative(toe, sampleRate);
  const margin = Math.ceil(END_MARGIN * sampleRate);
  const inside = (samples: Float64Array, first: number, last: number) =>
    largestBetween(samples, Math.max(first, margin), Math.min(last, samples.length - 1 - margin));
  const swings = swingsOfLeg(reader, leg.heel, null);
  return eventsFrom("Handsaker acceleration", reader, leg.side, swings, {
    contacts: earlyStances(swings, heel.length, 0.5).map(({ first, last }) => {
      const peaks = [inside(heel, first, last), inside(toe, first, last)].filter((place) => place !== null);
      return peaks.length === 0 ? null : Math.min(...peaks);
    }),
    toeOffs: lateStances(swings, 0.25).map(({ first, last }) => inside(jerk, first, last)),
  });
}
