/** An unloaded stretch: samples from `from` up to, not including, `to`. */
export interface Flight {
  readonly from: number;
  readonly to: number;
}

/** Mean of the samples of each flight. */
export function flightMeans(samples: Float64Array, flights: readonly Flight[]): Float64Array {
  return Float64Array.from(flights, ({ from, to }) => {
    let sum = 0;
    for (let i = from; i < to; i++) sum += samples[i] as number;
    return sum / (to - from);
  });
}

/** Standard error of a flight's mean that noise alone makes: pooled within flights, so that drift does not count. */
export function flightMeanError(
  samples: Float64Array,
  flights: readonly Flight[],
  means: Float64Array,
): number {
  let squares = 0;
  let count = 0;
  flights.forEach(({ from, to }, k) => {
    for (let i = from; i < to; i++) squares += ((samples[i] as number) - (means[k] as number)) ** 2;
    count += to - from;
  });
  const freedom = count - flights.length;
  return freedom > 0 ? Math.sqrt(((squares / freedom) * flights.length) / count) : 0;
}

/**
 * Each value replaced by the median of itself and its two neighbours, so that one odd flight does not speak; at an end the
 * missing neighbour is the line through the next two.
 */
export function medianOfThree(values: Float64Array): Float64Array {
  const result = values.slice();
  const last = values.length - 1;
  for (let i = 1; i < last; i++) {
    result[i] = median3(values[i - 1] as number, values[i] as number, values[i + 1] as number);
  }
  if (last >= 3) {
    const at = (i: number) => result[i] as number;
    result[0] = median3(values[0] as number, at(1), 2 * at(1) - at(2));
    result[last] = median3(values[last] as number, at(last - 1), 2 * at(last - 1) - at(last - 2));
  }
  return result;
}

function median3(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
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
