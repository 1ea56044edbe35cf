/** A loaded plate: this much of its largest vertical force, and of its largest channel where no force is known. */
const LOADED = 0.2;
/** A centre of pressure beyond this many half sides of the plate is none: the moment is in other units. */
const FARTHEST = 5;

/** Series of vertical force and of the two horizontal moments. */
export interface Loads {
  readonly vertical: (sample: number) => number;
  readonly moments: (sample: number) => readonly [number, number];
  readonly samples: number;
}

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
  let largest = 0;
  for (let i = 0; i < loads.samples; i++) {
    const size = Math.abs(loads.vertical(i));
    if (size > largest) largest = size;
  }
  if (!(largest >= least) || largest === Number.POSITIVE_INFINITY) return null;
  const distances: number[] = [];
  // A few hundred loaded samples, spread over the recording, show it as well as all of them.
  const step = Math.max(1, Math.floor(loads.samples / 4096));
  for (let i = 0; i < loads.samples; i += step) {
    const force = Math.abs(loads.vertical(i));
    if (!(force >= LOADED * largest)) continue;
    const [x, y] = loads.moments(i);
    const distance = Math.max(Math.abs(x), Math.abs(y)) / force;
    if (Number.isFinite(distance)) distances.push(distance);
  }
  distances.sort((one, two) => one - two);
  const distance = distances[Math.floor(distances.length / 2)];
  return distance === undefined ? null : { toSi: distance > FARTHEST * halfSide ? 0.001 : 1, distance };
}
