import type { Fraction, Newtons } from "../../units/index.js";
import { type Flight, flightMeans, flightVariance, medianOfThree, withoutDrift } from "../baseline.js";

/** Standard deviations in flight that a sample lies below the flights' level before it counts as below it. */
const NOISE_FACTOR = 5;
/** And newtons: a plate that rings after toe-off swings about its level. A judgement. */
const LEAST_DEPTH: Newtons = 10;

/** How much of the vertical force lies below the level of the flights. */
export interface BelowFlights {
  readonly share: Fraction;
  /** Of the sample that lies farthest below it; 0 or less. */
  readonly lowest: Newtons;
}

/**
 * Measures how much of the vertical force lies clearly below the level of the flights, a line from flight to flight. The
 * ground can only push: a level that the force falls below for long is not that of a free plate.
 */
export function belowFlights(up: Float64Array, flights: readonly Flight[]): BelowFlights {
  const means = flightMeans(up, flights);
  const left = withoutDrift(up, flights, medianOfThree(means, flights));
  const limit = -Math.max(LEAST_DEPTH, NOISE_FACTOR * Math.sqrt(flightVariance(up, flights, means)));
  let below = 0;
  let lowest = 0;
  for (const value of left) {
    if (value < limit) below++;
    if (value < lowest) lowest = value;
  }
  return { share: below / left.length, lowest };
}
