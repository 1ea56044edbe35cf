import type { Newtons } from "../units/index.js";
import { findFlights } from "./findFlights.js";
import type { GroundReaction } from "./groundReaction.js";

/** Level and scatter of the vertical force while nobody is on the ground. */
export interface FlightNoise {
  readonly mean: Newtons;
  /** Pooled within flights, so that slow drift does not count as noise. */
  readonly sd: Newtons;
  readonly flights: number;
}

/**
 * Measures the vertical force in the flight phases: what a contact threshold must stay above.
 *
 * Formula: mean of the flights' means, so that a long stretch does not outweigh the flights between contacts; SD = √(Σ (F − mean of its flight)² ÷ Σ (n − 1)).
 * Units: N.
 * Limits: `null` where no flight phase is found.
 * Source: definition of the pooled standard deviation.
 * @param ground - The copy that events are read from: filtered, offset and drift removed.
 * @example
 * flightNoise(ground) !== null // true
 */
export function flightNoise(ground: GroundReaction): FlightNoise | null {
  const { up } = ground.force;
  const flights = findFlights(up, ground.sampleRate);
  if (flights.length === 0) return null;
  let means = 0;
  let count = 0;
  let squares = 0;
  for (const { from, to } of flights) {
    let part = 0;
    for (let i = from; i < to; i++) part += up[i] as number;
    const mean = part / (to - from);
    for (let i = from; i < to; i++) squares += ((up[i] as number) - mean) ** 2;
    means += mean;
    count += to - from;
  }
  const freedom = count - flights.length;
  return {
    mean: means / flights.length,
    sd: freedom > 0 ? Math.sqrt(squares / freedom) : 0,
    flights: flights.length,
  };
}
