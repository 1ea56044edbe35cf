import { lowPass } from "../filters/index.js";
import type { Hertz, Newtons, Samples, Seconds } from "../units/index.js";
import { type Flight, flightMeans } from "./baseline.js";

/** Cutoff of the copy that flights are looked for on, Hz. Common practice; values tried on an open treadmill recording. */
export const FLIGHT_CUTOFF: Hertz = 20;
/** A flight lies below this share of the vertical force's range above the running baseline. */
export const FLIGHT_LEVEL = 0.05;
/** The running baseline is the least force within this many seconds on either side. */
export const FLIGHT_BASELINE_REACH = 1;
/** A baseline above zero by more than this share of the range is no unloaded level (walking on one plate, standing). */
export const FLIGHT_BASELINE_LIMIT = 0.25;
/** Least range of vertical force that can hold a contact, N. */
export const FLIGHT_LEAST_RANGE: Newtons = 100;
/**
 * Shortest gap that holds a flight, s; one that the recording's ends cut must last three times as long. In shorter ones
 * the middle third still holds the toes of the contacts: 0.5 N of the forward force at a median gap of 60 ms, 3 N at 51,
 * 5 N at 45 (synthetic runs without noise), which would be taken off as offset.
 */
export const SHORTEST_FLIGHT_GAP: Seconds = 0.06;
/** A gap that lasts longer than this and lies higher than the lowest one by {@link STANDING_LEVEL} is somebody standing. */
const LONG_GAP = 0.6;
/** N; less than any runner weighs, more than drift within a recording. */
const STANDING_LEVEL = 100;

/**
 * Finds the stretches in which nobody stands on the ground, by a rough rule that needs no offset and survives drift.
 *
 * Formula: the vertical force, low-passed at 20 Hz, lies below 5 % of its range above a running baseline; of each such
 * gap the middle third counts, clear of the filter's leak from the contacts on either side.
 * Units: N and Hz in; sample numbers out.
 * Limits: none found where the baseline is no unloaded level (walking on one plate, standing), and none in flights so short
 * that the gap lasts less than 60 ms.
 * Source: rule of this library, tried on the open recording of Fukuchi, Fukuchi & Duarte (2017), PeerJ 5:e3298.
 * @param up - Vertical force, unfiltered.
 * @param sampleRate - Above 40 Hz, else no flight can be told.
 * @returns The middle thirds, in order of time.
 * @example
 * findFlights(ground.force.up, ground.sampleRate).length > 70 // true
 */
export function findFlights(up: Samples<"N">, sampleRate: Hertz): Flight[] {
  if (up.length < 32 || sampleRate <= 2 * FLIGHT_CUTOFF) return [];
  const smooth = lowPass(up, { cutoff: FLIGHT_CUTOFF, sampleRate });
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < smooth.length; i++) {
    const value = smooth[i] as number;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const range = most - least;
  if (!(range >= FLIGHT_LEAST_RANGE)) return [];
  const baseline = runningMinimum(smooth, Math.round(FLIGHT_BASELINE_REACH * sampleRate));
  const flights: Flight[] = [];
  let start = -1;
  for (let i = 0; i <= smooth.length; i++) {
    const base = i < smooth.length ? (baseline[i] as number) : 0;
    const unloaded =
      i < smooth.length &&
      base <= FLIGHT_BASELINE_LIMIT * range &&
      (smooth[i] as number) < base + FLIGHT_LEVEL * range;
    if (unloaded && start < 0) start = i;
    if (!unloaded && start >= 0) {
      const length = i - start;
      const cut = start === 0 || i === smooth.length;
      if (length >= (cut ? 3 : 1) * SHORTEST_FLIGHT_GAP * sampleRate) {
        flights.push({ from: start + Math.floor(length / 3), to: start + Math.ceil((2 * length) / 3) });
      }
      start = -1;
    }
  }
  return withoutStanding(flights, smooth, sampleRate);
}

/** The flights without long stretches in which the force is well above that of the lowest one. */
function withoutStanding(flights: readonly Flight[], smooth: Float64Array, sampleRate: Hertz): Flight[] {
  const levels = flightMeans(smooth, flights);
  const lowest = levels.reduce((least, level) => Math.min(least, level), Number.POSITIVE_INFINITY);
  return flights.filter(
    ({ from, to }, k) =>
      3 * (to - from) <= LONG_GAP * sampleRate || (levels[k] as number) <= lowest + STANDING_LEVEL,
  );
}

/** Least value within `reach` samples on either side of each sample, in one pass over a queue of rising values. */
function runningMinimum(values: Float64Array, reach: number): Float64Array {
  const minimum = new Float64Array(values.length);
  const queue = new Int32Array(values.length);
  let head = 0;
  let tail = 0;
  let next = 0;
  for (let i = 0; i < values.length; i++) {
    for (; next < values.length && next <= i + reach; next++) {
      while (tail > head && (values[queue[tail - 1] as number] as number) >= (values[next] as number)) tail--;
      queue[tail++] = next;
    }
    while ((queue[head] as number) < i - reach) head++;
    minimum[i] = values[queue[head] as number] as number;
  }
  return minimum;
}
