import { type Loads, loadedDistance } from "./loadedDistance.js";

/** A centre of pressure beyond this many half sides of the plate is none: the moment is in other units. A judgement. */
export const FARTHEST: number = 5;

/**
 * Tells from the loads whether moments are in N m or in N mm: moment ÷ vertical force is the distance of the centre
 * of pressure from the transducer, and lies on the plate in the right unit only.
 *
 * @param halfSide - Half of the plate's longest side, m.
 * @param least - Vertical force below which a plate counts as unloaded throughout.
 * @returns The factor to N m, and the median distance in the unit as stored; `null` where no load shows it.
 */
export function momentUnit(
  loads: Loads,
  halfSide: number,
  least: number,
): { readonly toSi: 1 | 0.001; readonly distance: number } | null {
  const distance = loadedDistance(loads, least);
  return distance === null ? null : { toSi: distance > FARTHEST * halfSide ? 0.001 : 1, distance };
}
