import type { Flight } from "./findFlights.js";

/** Mean of the samples of each flight. */
export function flightMeans(samples: Float64Array, flights: readonly Flight[]): Float64Array {
  return Float64Array.from(flights, ({ from, to }) => {
    let sum = 0;
    for (let i = from; i < to; i++) sum += samples[i] as number;
    return sum / (to - from);
  });
}

/** Each value replaced by the median of itself and its two neighbours, so that one odd flight does not speak; ends are kept. */
export function medianOfThree(values: Float64Array): Float64Array {
  return values.map((value, i) => {
    const before = values[i - 1];
    const after = values[i + 1];
    if (before === undefined || after === undefined) return value;
    return Math.max(Math.min(before, value), Math.min(Math.max(before, value), after));
  });
}

/** Largest minus smallest; 0 for none. */
export function rangeOf(values: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return values.length === 0 ? 0 : most - least;
}

/** A copy with one constant taken off. */
export function withoutOffset(samples: Float64Array, offset: number): Float64Array {
  const result = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++) result[i] = (samples[i] as number) - offset;
  return result;
}

/** A copy with a line from flight to flight taken off, held before the first and after the last. */
export function withoutDrift(
  samples: Float64Array,
  flights: readonly Flight[],
  levels: Float64Array,
): Float64Array {
  const result = new Float64Array(samples.length);
  const middle = (flight: Flight) => (flight.from + flight.to - 1) / 2;
  let k = 0;
  for (let i = 0; i < samples.length; i++) {
    while (k + 1 < flights.length && middle(flights[k + 1] as Flight) <= i) k++;
    const here = middle(flights[k] as Flight);
    const level = levels[k] as number;
    let baseline = level;
    if (k + 1 < flights.length && i > here) {
      const share = (i - here) / (middle(flights[k + 1] as Flight) - here);
      baseline = level + share * ((levels[k + 1] as number) - level);
    }
    result[i] = (samples[i] as number) - baseline;
  }
  return result;
}
