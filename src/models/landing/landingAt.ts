import type { Landing, LandingRecord } from "./landing.js";
import type { Touches } from "./touchesOf.js";

/**
 * Puts the foot's place beside the centre of mass at first and last touch.
 *
 * @param record - With the moment about the right axis.
 * @param touches - Of the contact.
 * @param atFirst - Centre of mass at first touch, m.
 * @param atLast - Centre of mass at last touch, m.
 * @param beltSpeed - At which the surface moves backward, m/s.
 */
export function landingAt(
  { sampleRate, force, moment }: LandingRecord,
  { first, loaded, unloading, last }: Touches,
  atFirst: number,
  atLast: number,
  beltSpeed: number,
): Landing {
  // Places on the surface, as they were at first touch.
  const placeAt = (time: number) =>
    copOnSurface(force.up, moment?.right as Float64Array, sampleRate, time, first, beltSpeed);
  const landed = placeAt(loaded);
  const left = placeAt(unloading);
  const gone = atLast + beltSpeed * (last - first);
  return {
    touchdown: landed - atFirst,
    takeOff: gone - left,
    copTravel: left - landed,
    bodyTravel: gone - atFirst,
    bodyPlace: atFirst,
    firstTouch: first,
    lastTouch: last,
    loading: loaded - first,
    unloading: last - unloading,
  };
}

/**
 * Centre of pressure at a time on the surface, m: moment and force on straight lines between samples, each sample's point
 * carried back with the belt.
 */
function copOnSurface(
  up: Float64Array,
  moment: Float64Array,
  sampleRate: number,
  time: number,
  since: number,
  beltSpeed: number,
): number {
  const before = Math.floor(time * sampleRate);
  const part = time * sampleRate - before;
  const [here, there] = [(1 - part) * (up[before] as number), part * (up[before + 1] ?? 0)];
  const turning = (1 - part) * (moment[before] as number) + part * (moment[before + 1] ?? 0);
  const weighted = (before + there / (here + there)) / sampleRate;
  return turning / (here + there) + beltSpeed * (weighted - since);
}
