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
  const first = from * sampleRate;
  const end = to * sampleRate;
  const last = Math.ceil(end) - 1;
  const crossingBehind = (place: number, value: number): number => {
    const next = Math.floor(place) + 1;
    const [laterAt, later] =
      next > last ? [end, valueAt(forward, sampleRate, to)] : [next, forward[next] as number];
    return (place + ((laterAt - place) * value) / (value - later)) / sampleRate;
  };
  // Backwards from the end: the first negative force met behind a positive one marks the last crossing.
  let positiveMet = valueAt(forward, sampleRate, to) > 0;
  for (let i = last; i > first; i--) {
    const value = forward[i] as number;
    if (value < 0 && positiveMet) return crossingBehind(i, value);
    if (value !== 0) positiveMet = value > 0;
  }
  const value = valueAt(forward, sampleRate, from);
  return value < 0 && positiveMet ? crossingBehind(first, value) : null;
}
