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

/** Variance of the samples about their flight's mean: pooled within flights, so that drift does not count. */
export function flightVariance(
  samples: Float64Array,
  flights: readonly Flight[],
  means: Float64Array,
): number {
  let squares = 0;
  flights.forEach(({ from, to }, k) => {
    for (let i = from; i < to; i++) squares += ((samples[i] as number) - (means[k] as number)) ** 2;
  });
  const freedom = samplesIn(flights) - flights.length;
  return freedom > 0 ? squares / freedom : 0;
}

/** Standard error of a flight's mean that noise alone makes. */
export function flightMeanError(
  samples: Float64Array,
  flights: readonly Flight[],
  means: Float64Array,
): number {
  const count = samplesIn(flights);
  return count > 0 ? Math.sqrt((flightVariance(samples, flights, means) * flights.length) / count) : 0;
}

function samplesIn(flights: readonly Flight[]): number {
  return flights.reduce((sum, { from, to }) => sum + to - from, 0);
}

/**
 * Each flight's level replaced by the median of itself and its two neighbours, so that one odd flight does not speak; at an
 * end the missing neighbour is the line through the next two, where the flights there are about evenly spaced.
 */
export function medianOfThree(levels: Float64Array, flights: readonly Flight[]): Float64Array {
  const result = levels.slice();
  const last = levels.length - 1;
  for (let i = 1; i < last; i++) {
    result[i] = median3(levels[i - 1] as number, levels[i] as number, levels[i + 1] as number);
  }
  const start = (i: number) => flights[i]?.from ?? Number.NaN;
  const end = (at: number, next: number, third: number) => {
    const outer = Math.abs(start(next) - start(at));
    if (outer > EVEN * Math.abs(start(third) - start(next))) return;
    const [near, far] = [result[next] as number, result[third] as number];
    result[at] = median3(levels[at] as number, near, 2 * near - far);
  };
  if (last >= 3) {
    end(0, 1, 2);
    end(last, last - 1, last - 2);
  }
  return result;
}

/** Flights are evenly spaced where the distance to the last one is at most this many times the one before. */
const EVEN = 2;

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
