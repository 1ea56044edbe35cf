/** A loaded plate: this much of its largest vertical force. */
const LOADED = 0.2;
/** A few hundred loaded samples, spread over the recording, show the distance as well as all of them. */
const SAMPLES = 4096;

/** Series of vertical force and of the two horizontal moments. */
export interface Loads {
  readonly vertical: (sample: number) => number;
  readonly moments: (sample: number) => readonly [number, number];
  readonly samples: number;
}

/**
 * The median distance of the loads from the transducer: moment ÷ vertical force, in the moments' unit for each newton.
 *
 * @param least - Vertical force below which a plate counts as unloaded throughout.
 * @returns `null` where no load shows it.
 */
export function loadedDistance(loads: Loads, least: number): number | null {
  let largest = 0;
  for (let i = 0; i < loads.samples; i++) {
    const size = Math.abs(loads.vertical(i));
    if (size > largest) largest = size;
  }
  if (!(largest >= least) || largest === Number.POSITIVE_INFINITY) return null;
  const distances: number[] = [];
  const step = Math.max(1, Math.floor(loads.samples / SAMPLES));
  for (let i = 0; i < loads.samples; i += step) {
    const force = Math.abs(loads.vertical(i));
    if (!(force >= LOADED * largest)) continue;
    const [x, y] = loads.moments(i);
    const distance = Math.max(Math.abs(x), Math.abs(y)) / force;
    if (Number.isFinite(distance)) distances.push(distance);
  }
  distances.sort((one, two) => one - two);
  return distances[Math.floor(distances.length / 2)] ?? null;
}
