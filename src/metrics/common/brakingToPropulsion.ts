import { valueAt } from "../../filters/index.js";

/**
 * Finds the last time between two times at which a force turns from backward to forward, on the straight lines between
 * samples; `null` where it never does.
 *
 * @param forward - Forward force, N.
 * @param sampleRate - Hz.
 * @param from - s from the first sample.
 * @param to - s, within the samples.
 */
export function brakingToPropulsion(
  forward: Float64Array,
  sampleRate: number,
  from: number,
  to: number,
): number | null {
  // Backwards from the end: the first negative force met behind a positive one marks the last crossing.
  let later = valueAt(forward, sampleRate, to);
  let laterAt = to * sampleRate;
  let positiveMet = later > 0;
  const first = from * sampleRate;
  for (let i = Math.ceil(laterAt) - 1; i > first - 1; i--) {
    const at = Math.max(i, first);
    const value = i > first ? (forward[i] as number) : valueAt(forward, sampleRate, from);
    if (value < 0 && positiveMet) return (at + ((laterAt - at) * value) / (value - later)) / sampleRate;
    if (value > 0) positiveMet = true;
    else if (value < 0) positiveMet = false;
    later = value;
    laterAt = at;
  }
  return null;
}
